import { requireFinite } from '../../base/checks.js';
import { madeWith, requireShape } from '../../base/shape.js';
import { totalGivenUp } from '../../gas/gas-state.js';
import type { ClosedShock } from './closed-shock.js';
import {
  conditionAtClosing,
  type FillCondition,
  fillConditionShape,
  gasOf,
  logPressureInside,
} from './pressure-inside.js';

/**
 * Force with which the gas pushes the resting shaft out [N]: the pressure inside less that outside, on the shaft's cross-section.
 * Negative where it sucks the shaft in. Seal friction is not in it.
 *
 * @param shock - from {@link closeShock}
 * @param position - how far the shaft is pushed in [m], 0 to the stroke
 * @param condition - exponent, temperature [K], oil expansion; as closed where left out
 * @throws HydraulicLock where the oil fills the shock before this position; InputError for a value outside its range
 * @public
 */
export function staticForce(
  shock: ClosedShock,
  position: number,
  condition: FillCondition = conditionAtClosing(shock),
): number {
  requireShape(
    { shock, position, condition },
    { shock: madeWith('chamber'), position: 'm', condition: fillConditionShape },
  );
  const pressureDifference =
    shock.closing.ambientPressure * Math.expm1(logPressureInside(shock, position, condition));
  return shock.shaftArea * pressureDifference;
}

/**
 * Position at which the static force has a value [m], the inverse of {@link staticForce}. It may lie outside the stroke.
 *
 * @param shock - from {@link closeShock}, with some gas in it
 * @param force - force that pushes the shaft out [N], either sign
 * @param condition - exponent, temperature [K], oil expansion; as closed where left out
 * @returns the position, or `undefined` where no position has this force: no pressure is below 0, and a shock without gas has no
 * force of its own
 * @throws InputError for a force that is not finite or a condition outside its range
 * @public
 */
export function positionAtForce(
  shock: ClosedShock,
  force: number,
  condition: FillCondition = conditionAtClosing(shock),
): number | undefined {
  requireShape({ shock, condition }, { shock: madeWith('chamber'), condition: fillConditionShape });
  requireFinite(force, 'force', 'N');
  const relative = force / shock.shaftArea / shock.closing.ambientPressure;
  if (!(relative > -1) || shock.gasVolume === 0) return undefined;
  const state = gasOf(shock, condition);
  const displaced = state.restDisplacement + totalGivenUp(state, Math.log1p(relative));
  // A vented bladder that is full leaves every higher pressure to the lock.
  if (displaced >= state.capacity) return undefined;
  return displaced / shock.shaftArea;
}
