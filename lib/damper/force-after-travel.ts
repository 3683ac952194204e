import {
  refuse,
  requireFinite,
  requireList,
  requireNotNegative,
  requirePositive,
  requireRecord,
} from '../base/checks.js';
import { pressureOfGas } from '../gas/gas-state.js';
import { bracketedRoot } from '../numeric/root-finding.js';
import { cavitiesAlongTravel } from './cavity-along-travel.js';
import { cavityDrop, forceOfCavity } from './cavity-force.js';
import { canCavitate } from './chamber-pressures.js';
import { requireModel, requirePosition, type ShaftMotion } from './damper.js';
import { damperForce } from './damper-force.js';
import type { DamperModel } from './damper-model.js';
import type { DamperForce } from './force-point.js';

/**
 * Force after a travel at constant speed, begun from rest with whole oil: what a cavity that opens on the way has made of it. At the start it is the force of
 * the onset; it tends to that of oil that fills the cavity again, with the gas squeezed until it drives a flow of `A_m |v|` through the piston in compression,
 * `(A_m − A_s) |v|` in rebound. In compression that is more than the `A |v|` of whole oil: the shaft coming in needs the room of the cavity. Once it is full, the oil is whole.
 *
 * @param model - from `damperModel`
 * @param start - speed [m/s], not 0; position at which the travel begins [m], 0 to the stroke
 * @param travel - length of the way [m], 0 or more, within the stroke
 * @throws InputError for a value outside its range, or a travel that leaves the stroke
 * @throws IntegrationError where the gas has no room for shaft and cavity on the way, or a valve snaps open and shut without end
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
 * @throws IntegrationError where the gas has no room for shaft and cavity on the way, or a valve snaps open and shut without end
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
  const { damper } = model;
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

  const cavities = cavitiesAlongTravel(model, start, opening, travels);
  return travels.map((travel, index) => {
    const cavity = cavities[index];
    return cavity === undefined ? damperForce(model, at(travel)) : forceOfCavity(model, at(travel), cavity);
  });
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
