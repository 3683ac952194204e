import { refuse, requireFinite, requireWord } from '../base/checks.js';
import { pressureOfGas } from '../gas/gas-state.js';
import { canCavitate } from './chamber-pressures.js';
import { requireModel, requirePosition } from './damper.js';
import { wholeForce } from './damper-force.js';
import type { DamperModel } from './damper-model.js';

/**
 * Where a cavity begins to open behind the piston. It is no limit of the force: with travel the cavity squeezes the gas, and the force grows on.
 *
 * @public
 */
export interface CavitationOnset {
  readonly direction: 'compression' | 'rebound';
  /** Pressure drop over the piston [Pa], 0 or more: gas pressure less air-release pressure. */
  readonly pressureDrop: number;
  /** Shaft speed [m/s], with its sign. */
  readonly speed: number;
  /** Force of the shaft there [N]: damping, gas and seals. */
  readonly force: number;
  /** Part of it that the oil makes [N]. */
  readonly dampingForce: number;
}

/**
 * Onset of cavitation in one direction, or `undefined` where none exists: the gas stands behind the piston, or is mixed through the oil, where its bubbles grow and
 * the pressure tends to a part of the gas pressure instead of vacuum.
 *
 * @param model - from `damperModel`
 * @param direction - `compression` or `rebound`
 * @param position - how far the shaft is pushed in [m], 0 to the stroke
 * @throws InputError where the position is outside the stroke, or the gas has no room left
 * @example
 * ```ts
 * // model: of the example of damperModel
 * cavitationOnset(model, 'compression', 0.014)?.speed; // 0.06547: absolute gas pressure over the pressure drop of 1 m/s, A/G, by hand
 * cavitationOnset(model, 'rebound', 0.014)?.speed; // undefined: the gas stands behind the piston
 * ```
 * @public
 */
export function cavitationOnset(
  model: DamperModel,
  direction: 'compression' | 'rebound',
  position: number,
): CavitationOnset | undefined {
  requireModel(model);
  requireWord(direction, ['compression', 'rebound'], 'direction');
  const { damper, dampingArea, pistonFlow, shaftArea } = model;
  requirePosition(position, damper.stroke);
  const sign = direction === 'compression' ? 1 : -1;
  if (!canCavitate(damper.gas.layout, sign)) return undefined;
  const gas = pressureOfGas(model.gas, shaftArea * position);
  const pressureDrop = Math.max(gas - damper.gas.airReleasePressure, 0);
  const speed = pistonFlow.flow(sign * pressureDrop) / dampingArea;
  const { force, dampingForce } = wholeForce(model, speed, gas);
  return { direction, pressureDrop, speed, force, dampingForce };
}

/**
 * Absolute gas pressure at a position that keeps the oil whole up to a shaft speed [Pa].
 *
 * @param model - from `damperModel`; its own gas pressure does not count
 * @param speed - shaft speed [m/s], either sign, 0 excluded
 * @throws InputError where no cavity can open in this direction
 * @example
 * ```ts
 * // model: of the example of damperModel
 * gasPressureAgainstCavitation(model, 0.02); // 3.582e4: the pressure drop at that speed, v A/G, by hand
 * ```
 * @public
 */
export function gasPressureAgainstCavitation(model: DamperModel, speed: number): number {
  requireModel(model);
  requireFinite(speed, 'speed', 'm/s');
  const { layout, airReleasePressure } = model.damper.gas;
  if (speed === 0 || !canCavitate(layout, speed)) {
    refuse(speed, 'speed', 'm/s', 'in the direction in which a cavity can open');
  }
  return Math.abs(model.pistonFlow.pressureDrop(model.dampingArea * speed).pressureDrop) + airReleasePressure;
}
