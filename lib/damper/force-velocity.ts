import { requireCount, requireEach, requireFinite, requirePositive } from '../base/checks.js';
import { pressureOfGas } from '../gas/gas-state.js';
import { requireModel, requirePosition } from './damper.js';
import { wholeForce } from './damper-force.js';
import type { DamperModel } from './damper-model.js';
import type { DamperForce } from './force-point.js';

/**
 * Force against shaft speed at one position, in both directions.
 *
 * @public
 */
export type ForceVelocityCurve = readonly DamperForce[];

/**
 * Evenly spaced speeds from full rebound to full compression [m/s], zero among them.
 *
 * @param fastest - largest speed in either direction [m/s], above 0
 * @param stepsEachWay - points on each side of zero, 1 or more
 * @throws InputError for a speed or a count outside its range
 * @example
 * ```ts
 * const speeds = symmetricSpeeds(0.5, 2); // −0.5, −0.25, 0, 0.25 and 0.5 m/s
 * speeds.length; // 5: two each way, and zero
 * speeds[1]; // -0.25: one of two steps
 * ```
 * @public
 */
export function symmetricSpeeds(fastest: number, stepsEachWay: number): readonly number[] {
  requirePositive(fastest, 'fastest', 'm/s');
  requireCount(stepsEachWay, 'stepsEachWay');
  return Array.from(
    { length: 2 * stepsEachWay + 1 },
    (_, index) => (fastest * (index - stepsEachWay)) / stepsEachWay,
  );
}

/**
 * Force-velocity curve of whole oil: one `damperForce` per speed.
 *
 * @param model - from {@link damperModel}
 * @param speeds - shaft speeds [m/s], compression positive
 * @param position - how far the shaft is pushed in [m], 0 to the stroke
 * @throws InputError where a speed is not finite or the position is outside the stroke
 * @example
 * ```ts
 * // model: of the example of damperModel
 * forceVelocityCurve(model, [-0.02, 0, 0.02], 0.014)[0]?.dampingForce; // -3.635: 181.7 N·s/m times −20 mm/s
 * ```
 * @public
 */
export function forceVelocityCurve(
  model: DamperModel,
  speeds: readonly number[],
  position: number,
): ForceVelocityCurve {
  requireModel(model);
  requireEach(speeds, 'speeds', (speed, field) => requireFinite(speed, field, 'm/s'));
  requirePosition(position, model.damper.stroke);
  const gas = pressureOfGas(model.gas, model.shaftArea * position);
  return speeds.map((speed) => wholeForce(model, speed, gas));
}
