import type { ValvePath } from '../flow/valve/valve-path.js';
import { pressureOfGas } from '../gas/gas-state.js';
import { stateWithin } from '../numeric/integrator/dense-output.js';
import type { Event } from '../numeric/integrator/events.js';
import { integrate } from '../numeric/integrator/integrate.js';
import { type Cavity, cavityDrop } from './cavity-force.js';
import type { ShaftMotion } from './damper.js';
import type { DamperModel } from './damper-model.js';
import { passageAt } from './oil-force.js';

/** Errors of the cavity volume, against itself and against the volume that the piston sweeps on its way. */
const relativeError = 1e-8;
const sweptError = 1e-10;

/** Part of the gas of which rounding leaves its pressure no better than to the relative error. */
const usedUp = 1e-8;

/** Part of the stroke below which a way is none. */
const leastWay = 1e-12;

/** A way takes some 200 steps; so many only where valves snap open and shut again and again. */
const mostSteps = 20_000;

/**
 * Cavity at each place of a way at constant speed on which it opens; undefined where the oil is whole.
 *
 * @param begin - speed [m/s], not 0; position at which the way begins [m]
 * @param from - travel at which the cavity opens [m]
 * @param places - lengths of way [m], rising
 * @throws IntegrationError where the gas is used up on the way, or a valve snaps without end
 */
export function cavitiesAlongTravel(
  model: DamperModel,
  begin: ShaftMotion,
  from: number,
  places: readonly number[],
): readonly (Cavity | undefined)[] {
  const { dampingArea, gas, pistonFlow, shaftArea } = model;
  const end = places.at(-1) ?? 0;
  const size = Math.abs(begin.speed);
  const direction = Math.sign(begin.speed);
  // On a way too short to be followed nothing opens yet.
  const shortest = leastWay * model.damper.stroke;
  const found: (Cavity | undefined)[] = places.map((place) =>
    place >= from && place - from <= shortest ? { volume: 0, lifted: [] } : undefined,
  );
  if (end - from <= shortest) return found;
  // Where the gas is nearly used up its pressure is all about the last of its room: the logarithm of the room is followed, in which that end is smooth.
  const room = gas.capacity - shaftArea * (begin.position + direction * from);
  const volumeAt = (travel: number, logRoom: number): number =>
    -room * Math.expm1(logRoom) - direction * shaftArea * (travel - from);
  const dropAt = (logRoom: number): number =>
    cavityDrop(model, pressureOfGas(gas, gas.capacity - room * Math.exp(logRoom)));
  // The gas first grows stronger and may then give way again, and a preloaded valve that it has lifted stays open longer than it stayed shut.
  let lifted: readonly ValvePath[] = [];
  const snaps = pistonFlow.valves
    .filter(({ leastOpenDrop, openingPressure }) => leastOpenDrop < openingPressure)
    .map((valve): Event => {
      const { opens, openingPressure, leastOpenDrop } = valve;
      const isLifted = (): boolean => lifted.includes(valve);
      if (opens * dropAt(0) > openingPressure) lifted = [...lifted, valve];
      return {
        value: (_, [logRoom = 0]) => opens * dropAt(logRoom) - (isLifted() ? leastOpenDrop : openingPressure),
        direction: () => (isLifted() ? -1 : 1),
        happens: () => {
          lifted = isLifted() ? lifted.filter((other) => other !== valve) : [...lifted, valve];
          return 'restart';
        },
      };
    });
  const absolute = [Math.min((sweptError * dampingArea * end) / room, relativeError)];
  const state = new Float64Array(1);
  integrate(
    {
      size: 1,
      rates: (_, [logRoom = 0], rates) => {
        const left = room * Math.exp(logRoom);
        // Where the gas is as good as used up, or has grown beyond all that it had, there is nothing: the step is tried shorter.
        rates[0] =
          left > usedUp * gas.capacity && left < 2 * gas.capacity
            ? (Math.abs(passageAt(model, dropAt(logRoom), lifted).flow) / size -
                dampingArea -
                direction * shaftArea) /
              left
            : Number.NaN;
      },
      scales: absolute,
    },
    {
      from,
      to: end,
      state: [0],
      relative: relativeError,
      absolute,
      stepLimit: mostSteps,
      events: [
        // The cavity is full again: from here on the oil is taken as whole, and its valves as at the same speed without a cavity.
        {
          value: (travel, [logRoom = 0]) => volumeAt(travel, logRoom),
          direction: () => -1,
          happens: () => 'stop',
        },
        ...snaps,
      ],
      onStep: (step) => {
        const last = step.time + step.covered * step.length;
        for (const [index, place] of places.entries()) {
          if (place <= step.time || place > last || place - from <= shortest) continue;
          stateWithin(step, (place - step.time) / step.length, state);
          found[index] = { volume: Math.max(volumeAt(place, state[0]!), 0), lifted };
        }
      },
    },
  );
  return found;
}
