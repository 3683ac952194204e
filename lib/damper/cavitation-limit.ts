import { requireFinite } from '../base/checks.js';
import { InputError } from '../base/input-error.js';
import { requirePosition } from './damper.js';
import type { DamperModel } from './damper-model.js';
import { gasPressure } from './gas.js';
import { oilForce } from './oil-force.js';
import { pressureDropLimit } from './pressure-drop-limit.js';

/**
 * Where a damper stops pushing back harder, because the oil behind the piston tears.
 *
 * @public
 */
export interface CavitationLimit {
  readonly direction: 'compression' | 'rebound';
  /** Largest pressure drop over the piston [Pa], above 0. */
  readonly pressureDrop: number;
  /** Shaft speed at which it begins [m/s], with its sign. */
  readonly speed: number;
  /**
   * The cap [N], with the sign of the force: that pressure drop on the damping area plus the gas on the shaft. The force itself is less by
   * the recoil of the jets, and more by the drag of rim and seals; that of the rim still grows with speed.
   */
  readonly force: number;
}

/**
 * The cavitation limit in one direction, or `undefined` where the gas stands behind the piston and none exists:
 * `F = (A_m − A_s)(p_gas − p_r) + A_s (p_gas − p_ambient)` in compression with the gas on the blind side.
 *
 * @param model - from `damperModel`
 * @param direction - `compression` or `rebound`
 * @param position - how far the shaft is pushed in [m], 0 to the stroke
 * @throws InputError where the position is outside the stroke, or the gas has no room left
 * @public
 */
export function cavitationLimit(
  model: DamperModel,
  direction: 'compression' | 'rebound',
  position: number,
): CavitationLimit | undefined {
  const { damper, dampingArea, pistonFlow, shaftArea } = model;
  requirePosition(position, damper.stroke);
  const sign = direction === 'compression' ? 1 : -1;
  const pressureDrop = pressureDropLimit(model, position, sign);
  if (pressureDrop === Number.POSITIVE_INFINITY) return undefined;
  const gasForce = shaftArea * (gasPressure(damper.gas, shaftArea * position) - damper.gas.ambientPressure);
  return {
    direction,
    pressureDrop,
    speed: pistonFlow.flow(sign * pressureDrop) / dampingArea,
    force: sign * dampingArea * pressureDrop + gasForce,
  };
}

/**
 * Absolute gas pressure at full extension that keeps the oil whole up to a shaft speed [Pa].
 *
 * @param model - from `damperModel`; its own gas pressure does not count
 * @param speed - shaft speed [m/s], either sign, 0 excluded
 * @param position - how far the shaft is pushed in [m], 0 to the stroke
 * @throws InputError where the oil cannot tear in this direction, or the position is outside the stroke
 * @public
 */
export function gasPressureAgainstCavitation(model: DamperModel, speed: number, position: number): number {
  const { damper, blindShare, shaftArea } = model;
  requireFinite(speed, 'speed', 'm/s');
  requirePosition(position, damper.stroke);
  const behind = speed > 0 ? blindShare : 1 - blindShare;
  if (behind === 0 || speed === 0) {
    throw new InputError({
      field: 'speed',
      value: speed,
      unit: 'm/s',
      accepted: 'in the direction in which the oil can tear',
    });
  }
  const needed =
    behind * Math.abs(oilForce(model, speed).pressureDrop) + (damper.gas.airReleasePressure ?? 0);
  const growth = gasPressure(damper.gas, shaftArea * position) / damper.gas.pressure;
  return needed / growth;
}
