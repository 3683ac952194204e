import type { GasLayout } from '../gas/gas.js';
import type { DamperModel } from './damper-model.js';

const stepLimit = 60;

/**
 * Pressure on the low side of an emulsion over the gas pressure at rest, at a pressure drop over that pressure.
 *
 * Both sides hold as much gas, and what one gives up the other takes: `p_h^(−1/n) + p_l^(−1/n) = 2 p₀^(−1/n)`. So the low side tends to `p₀/2^n`,
 * half the gas pressure for slow movement, and never to vacuum.
 */
function emulsionLowSide(relativeDrop: number, exponent: number): number {
  const power = -1 / exponent;
  // Part of the gas pressure to which it tends: as much gas again expands into twice the room.
  let low = 2 ** -exponent;
  // The sum falls with the pressure and bends upward: Newton from the left never passes the root.
  for (let step = 0; step < stepLimit; step++) {
    const high = low + relativeDrop;
    const [atLow, atHigh] = [low ** power, high ** power];
    const slope = power * (atLow / low + atHigh / high);
    const change = (2 - atLow - atHigh) / slope;
    low += change;
    if (Math.abs(change) <= 1e-14 * low) break;
  }
  return low;
}

/**
 * Absolute pressure of the oil on the shaft side of the piston [Pa].
 *
 * @param model - from `damperModel`
 * @param gasPressure - absolute pressure of the gas [Pa]
 * @param pressureDrop - pressure on the blind side less that on the shaft side [Pa], either sign
 */
export function shaftSidePressure(model: DamperModel, gasPressure: number, pressureDrop: number): number {
  const { layout, polytropicExponent } = model.damper.gas;
  if (layout === 'blind-side') return gasPressure - pressureDrop;
  if (layout === 'shaft-side' || pressureDrop === 0) return gasPressure;
  const low = gasPressure * emulsionLowSide(Math.abs(pressureDrop) / gasPressure, polytropicExponent);
  return pressureDrop > 0 ? low : low - pressureDrop;
}

/** Whether a motion in a direction (1 compression, −1 rebound) draws on the side away from the gas, where a cavity can open. */
export function canCavitate(layout: GasLayout, direction: number): boolean {
  return layout === (direction > 0 ? 'blind-side' : 'shaft-side');
}
