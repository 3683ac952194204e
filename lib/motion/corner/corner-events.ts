import type { Event } from '../../numeric/integrator/events.js';
import { emptyChamber } from '../shock/empty-chamber.js';
import { LockedOil } from '../shock/locked-oil.js';
import { turnCavity } from '../shock/oil-cavity.js';
import { contactEvents, type Pressing } from './contact.js';
import { type BoundCorner, unknown } from './corner-equation.js';

/**
 * When wheel, stops and chassis touched and left.
 *
 * @public
 */
export interface CornerHistory {
  /** Times at which the tyre ceases to push, at which the wheel leaves the ground, and at which it is back [s]. */
  readonly tyreUnloads: number[];
  readonly liftOffs: number[];
  readonly touchDowns: number[];
  /** When the bump stop was touched, and the shaft speed then. */
  readonly bottomings: { readonly time: number; readonly speed: number }[];
  /** When the chassis touched flat ground, and how fast the body fell then. */
  readonly slaps: { readonly time: number; readonly speed: number }[];
}

/** All events of a corner. */
export function cornerEvents(bound: BoundCorner, history: CornerHistory): readonly Event[] {
  const { shock, chambers, corner, ground, modes } = bound;
  const { oil } = modes;
  const travelOf = (state: Float64Array): number =>
    corner.motionRatio * ((state[unknown.wheel] as number) - (state[unknown.body] as number));
  const speedOf = (state: Float64Array): number =>
    corner.motionRatio * ((state[unknown.wheelSpeed] as number) - (state[unknown.bodySpeed] as number));

  const cavity: Event = {
    value: (_time, state) => chambers.cavity(travelOf(state), state[unknown.room] as number),
    direction: () => (oil.isOpen ? -1 : 1),
    happens: (time) => {
      turnCavity(oil, time);
      return 'restart';
    },
  };
  const lock: Event = {
    value: (_time, state) => chambers.gasRoomLeft(travelOf(state), state[unknown.room] as number),
    direction: () => -1,
    happens: (time, state) => {
      throw new LockedOil(shock, time, travelOf(state), state[unknown.room] as number);
    },
  };
  const empty: Event = {
    value: (_time, state) => chambers.oilLeft(travelOf(state), state[unknown.room] as number),
    direction: () => -1,
    happens: (time, state) => {
      throw emptyChamber(shock, time, travelOf(state));
    },
  };
  // One object, filled and read within one evaluation, since six events are evaluated four times a step.
  const pressed = { depth: 0, speed: 0 };
  const onGround: Pressing = (time, state) => {
    ground.evaluate(time);
    pressed.depth = ground.height - (state[unknown.wheel] as number);
    pressed.speed = ground.slope - (state[unknown.wheelSpeed] as number);
    return pressed;
  };
  const onBump: Pressing = (_time, state) => {
    pressed.depth = travelOf(state) - corner.bumpStop.from;
    pressed.speed = speedOf(state);
    return pressed;
  };
  const onDroop: Pressing = (_time, state) => {
    pressed.depth = -travelOf(state);
    pressed.speed = -speedOf(state);
    return pressed;
  };
  const events: Event[] = [
    cavity,
    empty,
    ...contactEvents(modes.tyre, onGround, {
      touches: (time) => history.touchDowns.push(time),
      leaves: (time) => history.liftOffs.push(time),
      pushEnds: (time) => history.tyreUnloads.push(time),
    }),
    ...contactEvents(modes.bump, onBump, {
      touches: (time, speed) => history.bottomings.push({ time, speed }),
    }),
    ...contactEvents(modes.droop, onDroop, {}),
  ];
  // Without a room for gas there is nothing to lock.
  if (shock.layout !== 'mixed') events.push(lock);
  const { clearance } = corner;
  if (clearance !== undefined) {
    events.push({
      value: (_time, state) => (state[unknown.body] as number) + clearance,
      direction: () => -1,
      happens: (time, state) => {
        history.slaps.push({ time, speed: -(state[unknown.bodySpeed] as number) });
        return 'restart';
      },
    });
  }
  return events;
}
