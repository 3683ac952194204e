import type { DamperModel } from './damper-model.js';
import { compressedGasPressure } from './gas.js';

/**
 * Largest pressure drop over the piston before the oil behind it tears [Pa]; `Infinity` where the gas stands behind the piston.
 *
 * @param model - from `damperModel`
 * @param position - how far the shaft is pushed in [m]
 * @param sign - 1 for compression, −1 for rebound
 */
export function pressureDropLimit(model: DamperModel, position: number, sign: number): number {
  const { damper, shaftArea } = model;
  return pressureDropLimitAt(model, compressedGasPressure(damper.gas, shaftArea * position), sign);
}

/** {@link pressureDropLimit} where the gas pressure [Pa] is known. */
export function pressureDropLimitAt(model: DamperModel, gasPressure: number, sign: number): number {
  const behind = sign > 0 ? model.blindShare : 1 - model.blindShare;
  if (behind === 0) return Number.POSITIVE_INFINITY;
  return (gasPressure - (model.damper.gas.airReleasePressure ?? 0)) / behind;
}
