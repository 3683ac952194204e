import { requireFinite, requireNotNegative, requireRecord } from '../base/checks.js';
import type { ValvePath } from '../flow/valve/valve-path.js';
import { pressureOfGas } from '../gas/gas-state.js';
import { requireModel, requirePosition, type ShaftMotion } from './damper.js';
import type { DamperModel } from './damper-model.js';
import { type DamperForce, forceOfFlow } from './force-point.js';
import { passageAt } from './oil-force.js';

/**
 * Pressure drop over a piston with an open cavity behind it [Pa]: gas against air-release pressure, positive where the cavity is on the shaft side.
 *
 * @param model - from `damperModel`, its gas on one side
 * @param gas - absolute pressure of the gas [Pa]
 */
export function cavityDrop({ blindShare, damper }: DamperModel, gas: number): number {
  const drop = gas - damper.gas.airReleasePressure;
  return blindShare === 1 ? drop : -drop;
}

/** A cavity on the side of the piston away from the gas. */
export interface Cavity {
  /** [m³], 0 or more. */
  readonly volume: number;
  /** Valves that stand open since a higher pressure has lifted them, down to the least that keeps them so. */
  readonly lifted: readonly ValvePath[];
}

/**
 * Force of a damper with an open cavity on the side of the piston away from its gas.
 *
 * Body and oil are stiff, so the cavity takes its volume out of the gas; the side of the cavity stands at the air-release pressure. On the way back the cavity still
 * fills while the shaft comes out, and the force still points outward.
 *
 * @param model - from `damperModel`, its gas on one side
 * @param motion - speed [m/s], either sign; position [m], 0 to the stroke
 * @param cavityVolume - [m³], 0 or more: 0 is a cavity just opening
 * @throws InputError for a value outside its range, or a shaft and cavity that leave the gas no room
 * @example
 * ```ts
 * // model: of the example of damperModel
 * forceWithCavity(model, { speed: 0.06547, position: 0.014 }, 0).force; // 12.01: at the onset what damperForce gives, 181.7 N·s/m and the gas
 * ```
 * @public
 */
export function forceWithCavity(model: DamperModel, motion: ShaftMotion, cavityVolume: number): DamperForce {
  requireModel(model);
  requireRecord(motion, 'motion');
  const { speed, position } = motion;
  requireFinite(speed, 'speed', 'm/s');
  requirePosition(position, model.damper.stroke);
  requireNotNegative(cavityVolume, 'cavityVolume', 'm³');
  return forceOfCavity(model, motion, { volume: cavityVolume, lifted: [] });
}

/** {@link forceWithCavity} of what was checked before, with the valves that a higher pressure has lifted on the way. */
export function forceOfCavity(
  model: DamperModel,
  { speed, position }: ShaftMotion,
  { volume, lifted }: Cavity,
): DamperForce {
  const gas = pressureOfGas(model.gas, model.shaftArea * position + volume);
  const passage = passageAt(model, cavityDrop(model, gas), lifted);
  const solved = { ...passage, iterations: 0, residual: 0 };
  return forceOfFlow(
    model,
    speed,
    gas,
    model.damper.gas.airReleasePressure,
    true,
    volume,
    passage.flow,
    solved,
  );
}
