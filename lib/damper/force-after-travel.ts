import {
  refuse,
  requireFinite,
  requireList,
  requireNotNegative,
  requirePositive,
  requireRecord,
} from '../base/checks.js';
import { pressureOfGas } from '../gas/gas-state.js';
import { stateWithin } from '../numeric/integrator/dense-output.js';
import { integrate } from '../numeric/integrator/integrate.js';
import { bracketedRoot } from '../numeric/root-finding.js';
import { cavityDrop, forceWithCavity } from './cavity-force.js';
import { canCavitate } from './chamber-pressures.js';
import { requireModel, requirePosition, type ShaftMotion } from './damper.js';
import { damperForce } from './damper-force.js';
import type { DamperModel } from './damper-model.js';
import type { DamperForce } from './force-point.js';

/** Errors of the cavity volume, against itself and against the volume that the piston sweeps on its way. */
const relativeError = 1e-8;
const sweptError = 1e-10;

/** Part of the gas of which rounding leaves its pressure no better than to the relative error. */
const usedUp = 1e-8;

/** Part of the stroke below which a way is none. */
const leastWay = 1e-12;

/**
 * Force after a travel at constant speed, begun from rest with whole oil: what a cavity that opens on the way has made of it. At the start it is the force of
 * the onset; it tends to that of oil that fills the cavity again, with the gas squeezed until it drives a flow of `A_m |v|` through the piston in compression,
 * `(A_m − A_s) |v|` in rebound. In compression that is more than the `A |v|` of whole oil: the shaft coming in needs the room of the cavity. Once it is full, the oil is whole.
 *
 * @param model - from `damperModel`
 * @param start - speed [m/s], not 0; position at which the travel begins [m], 0 to the stroke
 * @param travel - length of the way [m], 0 or more, within the stroke
 * @throws InputError for a value outside its range, or a travel that leaves the stroke
 * @example
 * ```ts
 * // model: of the example of damperModel
 * forceAfterTravel(model, { speed: 0.02, position: 0.01 }, 0.004).force; // 3.747: slower than the onset no cavity opens, as damperForce at 14 mm
 * ```
 * @public
 */
export function forceAfterTravel(model: DamperModel, start: ShaftMotion, travel: number): DamperForce {
  requireNotNegative(travel, 'travel', 'm');
  return forcesAlongTravel(model, start, [travel])[0] as DamperForce;
}

/**
 * {@link forceAfterTravel} at several places of one way.
 *
 * With the gas on one side and a cavity on the other, `dV_c/dt = A |v| − Q(p_g − p_r)`, and the gas gives `A_s x + V_c`.
 *
 * @param model - from `damperModel`
 * @param start - speed [m/s], not 0; position at which the travel begins [m], 0 to the stroke
 * @param travels - lengths of way [m], 0 or more, rising, within the stroke
 * @throws InputError for a value outside its range, or a travel that leaves the stroke
 * @example
 * ```ts
 * // model: of the example of damperModel
 * forcesAlongTravel(model, { speed: 0.02, position: 0.01 }, [0, 0.004])[1]?.force; // 3.747: slower than the onset no cavity opens, as damperForce at 14 mm
 * ```
 * @public
 */
export function forcesAlongTravel(
  model: DamperModel,
  start: ShaftMotion,
  travels: readonly number[],
): readonly DamperForce[] {
  requireModel(model);
  requireRecord(start, 'start');
  requireList(travels, 'travels');
  const { speed, position } = start;
  const { damper, shaftArea } = model;
  requireFinite(speed, 'speed', 'm/s');
  requirePositive(Math.abs(speed), 'size of speed', 'm/s');
  requirePosition(position, damper.stroke);
  const direction = Math.sign(speed);
  const at = (travel: number): ShaftMotion => ({
    speed,
    position: inStroke(position + direction * travel, damper.stroke),
  });
  for (const [index, travel] of travels.entries()) {
    requireNotNegative(travel, `travels[${index}]`, 'm');
    const before = travels[index - 1] ?? 0;
    const room = direction > 0 ? damper.stroke - position : position;
    if (travel < before || travel > room * (1 + 1e-12))
      refuse(travel, `travels[${index}]`, 'm', `${before} to the ${room} that the stroke leaves`);
  }
  const opening = openingTravel(model, start, travels.at(-1) ?? 0);
  if (opening === undefined) return travels.map((travel) => damperForce(model, at(travel)));

  const volumes = cavityVolumes(model, start, opening, travels);
  return travels.map((travel, index) => {
    const volume = volumes[index];
    return volume === undefined
      ? damperForce(model, at(travel))
      : forceWithCavity(model, at(travel), Math.max(volume, 0));
  });

  /** Volume of the cavity at each travel; undefined where the oil is whole. */
  function cavityVolumes(
    { dampingArea, pistonFlow, gas }: DamperModel,
    begin: ShaftMotion,
    from: number,
    places: readonly number[],
  ): readonly (number | undefined)[] {
    const end = places.at(-1) ?? 0;
    // On a way too short to be followed nothing opens yet.
    const shortest = leastWay * model.damper.stroke;
    const found = places.map((place) => (place >= from && place - from <= shortest ? 0 : undefined)) as (
      | number
      | undefined
    )[];
    if (end - from <= shortest) return found;
    const size = Math.abs(begin.speed);
    // Where the gas is nearly used up its pressure is all about the last of its room: the logarithm of the room is followed, in which that end is smooth.
    const shaftAt = (travel: number): number => shaftArea * (begin.position + direction * travel);
    const room = gas.capacity - shaftAt(from);
    const volumeAt = (travel: number, logRoom: number): number =>
      -room * Math.expm1(logRoom) - direction * shaftArea * (travel - from);
    const absolute = [Math.min((sweptError * dampingArea * end) / room, relativeError)];
    const state = new Float64Array(1);
    integrate(
      {
        size: 1,
        scales: absolute,
        rates: (_, [logRoom = 0], rates) => {
          const left = room * Math.exp(logRoom);
          const displaced = gas.capacity - left;
          // Where the gas is as good as used up there is nothing: the step is tried shorter.
          rates[0] =
            left > usedUp * gas.capacity
              ? (Math.abs(pistonFlow.flow(cavityDrop(model, pressureOfGas(gas, displaced)))) / size -
                  dampingArea -
                  direction * shaftArea) /
                left
              : Number.NaN;
        },
      },
      {
        from,
        to: end,
        state: [0],
        relative: relativeError,
        absolute,
        // The cavity is full again: from here on the oil is whole, since the gas only grows stronger.
        events: [
          {
            value: (travel, [logRoom = 0]) => volumeAt(travel, logRoom),
            direction: () => -1,
            happens: () => 'stop',
          },
        ],
        onStep: (step) => {
          const last = step.time + step.covered * step.length;
          for (const [index, place] of places.entries()) {
            if (place <= step.time || place > last || place - from <= shortest) continue;
            stateWithin(step, (place - step.time) / step.length, state);
            found[index] = volumeAt(place, state[0]!);
          }
        },
      },
    );
    return found;
  }
}

/** Rounding may carry a position past the ends. */
function inStroke(position: number, stroke: number): number {
  return Math.min(Math.max(position, 0), stroke);
}

/** Travel after which a cavity opens [m], or `undefined` where the oil stays whole. */
function openingTravel(
  model: DamperModel,
  { speed, position }: ShaftMotion,
  travel: number,
): number | undefined {
  const { damper, dampingArea, gas, pistonFlow, shaftArea } = model;
  const direction = Math.sign(speed);
  if (!canCavitate(damper.gas.layout, direction)) return undefined;
  const swept = dampingArea * Math.abs(speed);
  // Flow that the gas drives through the piston, less what the piston sweeps.
  const reserve = (along: number): number => {
    const pressure = pressureOfGas(gas, shaftArea * inStroke(position + direction * along, damper.stroke));
    return Math.abs(pistonFlow.flow(cavityDrop(model, pressure))) - swept;
  };
  if (reserve(0) < 0) return 0;
  // The gas grows stronger on the way in, and weaker on the way out.
  if (direction > 0 || reserve(travel) >= 0) return undefined;
  return bracketedRoot(reserve, 0, travel, 'opening of a cavity').root;
}
