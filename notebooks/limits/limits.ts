import { cavitationLimit } from '../../lib/damper/cavitation-limit.js';
import type { Damper } from '../../lib/damper/damper.js';
import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';

/** Directions in the words of the page. */
export type Direction = 'compression' | 'rebound';

/** The same damper with another gas pressure at full extension [Pa]. */
export function withPressure(model: DamperModel, pressure: number): DamperModel {
  const { damper, fluid } = model;
  return damperModel({ ...damper, gas: { ...damper.gas, pressure } }, fluid);
}

/** The first direction in which the oil can tear, with its limit at full extension, where the gas is weakest. */
export function weakest(model: DamperModel): {
  readonly direction: Direction;
  readonly speed: number;
  readonly force: number;
} {
  const limit = cavitationLimit(model, 'compression', 0) ?? cavitationLimit(model, 'rebound', 0);
  if (limit === undefined) throw new Error('the gas stands behind both sides of the piston');
  return { direction: limit.direction, speed: limit.speed, force: limit.force };
}

/**
 * Largest force that a shock of a bore and a shaft can push back with in compression [N], by the pressure on its faces alone:
 * `(A − A_s)(p − p_release) + A_s (p − p_ambient)` with the gas on the blind side.
 */
export function capOf(bore: number, shaftDiameter: number, gas: Damper['gas'], pressure: number): number {
  const area = (Math.PI / 4) * bore ** 2;
  const shaft = (Math.PI / 4) * shaftDiameter ** 2;
  return (
    (area - shaft) * (pressure - (gas.airReleasePressure ?? 0)) + shaft * (pressure - gas.ambientPressure)
  );
}
