import type { DifferentialEquation } from '../../numeric/integrator/differential-equation.js';
import type { Event } from '../../numeric/integrator/events.js';
import { type Chambers, emptyPressures } from '../shock/chambers.js';
import { LockedOil } from '../shock/locked-oil.js';
import type { MovingShock, Passage } from '../shock/moving-shock.js';
import { type OilCavity, turnCavity } from '../shock/oil-cavity.js';
import { oilEnthalpy } from '../shock/oil-volume.js';
import { pressureForce, writePassageSlopes } from '../shock/shock-force.js';
import type { Piece, Place } from './stroke.js';

/** Places of the quantities that a stroke records. */
export const recorded = {
  force: 0,
  blindPressure: 1,
  shaftPressure: 2,
  cavity: 3,
  pressureDrop: 4,
  speed: 5,
  acceleration: 6,
  /** Those before are watched for peaks. */
  peaks: 7,
  power: 7,
  holePower: 8,
  recoilPower: 9,
  rimPower: 10,
  sealPower: 11,
  forceTimesTravel: 12,
  count: 13,
} as const;

/** The hydraulic state of a shock whose shaft is led along a piece of a stroke. */
export interface StrokeEquation {
  readonly equation: DifferentialEquation;
  readonly events: readonly Event[];
  /** Writes what {@link recorded} names. */
  readonly write: (time: number, state: Float64Array, values: Float64Array) => void;
}

/** Binds shock, piece and mode. */
export function strokeEquation(
  shock: MovingShock,
  chambers: Chambers,
  piece: Piece,
  oil: OilCavity,
): StrokeEquation {
  const { farArea, sense } = chambers;
  const place: Place = { travel: 0, speed: 0, acceleration: 0 };
  const pressures = emptyPressures();
  const passage: Passage = { flow: 0, recoil: 0 };
  const slopes: Passage = { flow: 0, recoil: 0 };

  const equation: DifferentialEquation = {
    size: 1,
    rates: (time, state, rates) => {
      piece.evaluate(time, place);
      chambers.evaluate(place.travel, state[0] as number, oil.isOpen, pressures);
      shock.passage(sense * (pressures.near - pressures.far), passage);
      rates[0] = farArea * place.speed - sense * passage.flow;
    },
    slopes: (time, state, overState, overTime) => {
      piece.evaluate(time, place);
      chambers.evaluateWithSlopes(place.travel, state[0] as number, oil.isOpen, pressures);
      writePassageSlopes(shock, sense * (pressures.near - pressures.far), slopes);
      overState[0] = -slopes.flow * (pressures.nearByRoom - pressures.farByRoom);
      overTime[0] =
        farArea * place.acceleration -
        slopes.flow * (pressures.nearByTravel - pressures.farByTravel) * place.speed;
    },
  };

  const cavity: Event = {
    value: (time, state) => {
      piece.evaluate(time, place);
      return chambers.cavity(place.travel, state[0] as number);
    },
    direction: () => (oil.isOpen ? -1 : 1),
    happens: (time) => {
      turnCavity(oil, time);
      return 'restart';
    },
  };
  const lock: Event = {
    value: (time, state) => {
      piece.evaluate(time, place);
      return chambers.gasRoomLeft(place.travel, state[0] as number);
    },
    direction: () => -1,
    happens: (time, state) => {
      piece.evaluate(time, place);
      throw new LockedOil(shock, time, place.travel, state[0] as number);
    },
  };

  function write(time: number, state: Float64Array, values: Float64Array): void {
    piece.evaluate(time, place);
    const { travel, speed, acceleration } = place;
    const room = state[0] as number;
    chambers.evaluate(travel, room, oil.isOpen, pressures);
    const drop = sense * (pressures.near - pressures.far);
    shock.passage(drop, passage);
    const rim = shock.rimDrag(speed);
    const seal = shock.sealForce(speed);
    const force = pressureForce(shock, sense, pressures, passage.recoil) + rim + seal;
    const lost = oilEnthalpy(shock.oil, pressures.near) - oilEnthalpy(shock.oil, pressures.far);
    values[recorded.force] = force;
    values[recorded.blindPressure] = sense === 1 ? pressures.near : pressures.far;
    values[recorded.shaftPressure] = sense === 1 ? pressures.far : pressures.near;
    values[recorded.cavity] = oil.isOpen ? Math.max(0, chambers.cavity(travel, room)) : 0;
    values[recorded.power] = force * speed;
    values[recorded.holePower] = passage.flow * sense * lost;
    values[recorded.recoilPower] = -passage.recoil * speed;
    values[recorded.rimPower] = rim * speed;
    values[recorded.sealPower] = seal * speed;
    values[recorded.forceTimesTravel] = force * travel;
    values[recorded.pressureDrop] = drop;
    values[recorded.speed] = speed;
    values[recorded.acceleration] = acceleration;
  }

  // Without a room for gas there is nothing to lock.
  return { equation, events: shock.layout === 'mixed' ? [cavity] : [cavity, lock], write };
}
