import { requireCount, requireFinite, requirePositive } from '../base/checks.js';
import { requirePosition } from './damper.js';
import { assembleForce, type DamperForce, type Standing } from './damper-force.js';
import type { DamperModel } from './damper-model.js';
import { compressedGasPressure } from './gas.js';
import { oilForce, type Tear, tearAt, tornOilForce } from './oil-force.js';
import { pressureDropLimitAt } from './pressure-drop-limit.js';

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
 * Force-velocity curve: one `damperForce` per speed.
 *
 * @param model - from {@link damperModel}
 * @param speeds - shaft speeds [m/s], compression positive
 * @param position - how far the shaft is pushed in [m], 0 to the stroke
 * @throws InputError where a speed is not finite or the position is outside the stroke
 * @public
 */
export function forceVelocityCurve(
  model: DamperModel,
  speeds: readonly number[],
  position: number,
): ForceVelocityCurve {
  requirePosition(position, model.damper.stroke);
  const gas = compressedGasPressure(model.damper.gas, model.shaftArea * position);
  const compression = half(model, gas, 1);
  const rebound = half(model, gas, -1);
  return speeds.map((speed) => {
    requireFinite(speed, 'speed', 'm/s');
    const { standing, tear } = speed > 0 ? compression : rebound;
    const torn = tear !== undefined && Math.abs(model.dampingArea * speed) > Math.abs(tear.through);
    return assembleForce(
      model,
      speed,
      standing,
      torn ? tornOilForce(model, speed, tear) : oilForce(model, speed),
    );
  });
}

/** What all points of one direction share: the pressure drop at which the oil tears is found once, not once a point. */
function half(
  model: DamperModel,
  gas: number,
  sign: number,
): { readonly standing: Standing; readonly tear: Tear | undefined } {
  const largestDrop = pressureDropLimitAt(model, gas, sign);
  return {
    standing: { gas, largestDrop },
    tear: largestDrop === Number.POSITIVE_INFINITY ? undefined : tearAt(model, sign * largestDrop),
  };
}
