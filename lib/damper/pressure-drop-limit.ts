import type { DamperModel } from './damper-model.js';
import { gasPressure } from './gas.js';

/**
 * Largest pressure drop over the piston before the oil behind it tears [Pa]; `Infinity` where the gas stands behind the piston.
 *
 * @param model - from `damperModel`
 * @param position - how far the shaft is pushed in [m]
 * @param sign - 1 for compression, −1 for rebound
 */
export function pressureDropLimit(model: DamperModel, position: number, sign: number): number {
  const { damper, blindShare, shaftArea } = model;
  const behind = sign > 0 ? blindShare : 1 - blindShare;
  if (behind === 0) return Number.POSITIVE_INFINITY;
  const gas = gasPressure(damper.gas, shaftArea * position);
  return (gas - (damper.gas.airReleasePressure ?? 0)) / behind;
}
