import { requirePositive, requireRecord, requireWithin } from '../../base/checks.js';
import type { Shape } from '../../base/shape.js';

/**
 * Oil with free air in it, at a reference pressure.
 *
 * @public
 */
export interface AiryOil {
  /** Isothermal bulk modulus of the oil without air [Pa], above 0. */
  readonly liquidBulkModulus: number;
  /** Volume of free air over volume of the mixture at the reference pressure, 0 to 0.999. */
  readonly airFraction: number;
  /** Absolute reference pressure [Pa], 1 to 1e8. */
  readonly referencePressure: number;
  /** Polytropic exponent of the air, 1 (fine bubbles, isothermal) to 1.4 (a pocket, fast). */
  readonly polytropicExponent: number;
}

/** Form of {@link AiryOil}. */
export const airyOilShape: Shape = {
  liquidBulkModulus: 'Pa',
  airFraction: '',
  referencePressure: 'Pa',
  polytropicExponent: '',
};

/**
 * Oil with free air in it, compressed.
 *
 * @public
 */
export interface CompressedAiryOil {
  /** Volume over the volume at the reference pressure. */
  readonly relativeVolume: number;
  /** Volume of free air over volume of the mixture, at this pressure. */
  readonly airFraction: number;
  /** Tangent bulk modulus of the mixture `−V dp/dV` [Pa]. */
  readonly bulkModulus: number;
}

/**
 * Volume, air share and stiffness of oil with free air at a pressure; the masses of both stay as they are.
 *
 * `V_l = (1 − α₀) exp(−(p − p₀)/K₀)`, `V_g = α₀ (p₀/p)^(1/n)`, `K = (V_l + V_g) / (V_l/K₀ + V_g/(n p))`. No air dissolves: right
 * within a stroke, since that takes seconds to minutes.
 *
 * @param oil - oil and air at the reference pressure
 * @param pressure - absolute pressure [Pa], 1 to 1e8
 * @throws InputError outside these
 * @see Cho, Lee & Oh, Int. J. Automot. Technol. 3 (2002) 57; Gholizadeh, Burton & Schoenau, Int. J. Fluid Power 13 (2012) 7
 * @public
 */
export function compressAiryOil(oil: AiryOil, pressure: number): CompressedAiryOil {
  requireRecord(oil, 'oil');
  const { liquidBulkModulus, airFraction, referencePressure, polytropicExponent } = oil;
  requirePositive(liquidBulkModulus, 'liquidBulkModulus', 'Pa');
  requireWithin(liquidBulkModulus, 1e7, 1e12, 'liquidBulkModulus', 'Pa');
  requireWithin(airFraction, 0, 0.999, 'airFraction', '');
  requireWithin(referencePressure, 1, 1e8, 'referencePressure', 'Pa');
  requireWithin(polytropicExponent, 1, 1.4, 'polytropicExponent', '');
  requireWithin(pressure, 1, 1e8, 'pressure', 'Pa');
  const liquid = (1 - airFraction) * Math.exp((referencePressure - pressure) / liquidBulkModulus);
  const air = airFraction * (referencePressure / pressure) ** (1 / polytropicExponent);
  const relativeVolume = liquid + air;
  const compliance = liquid / liquidBulkModulus + air / (polytropicExponent * pressure);
  return { relativeVolume, airFraction: air / relativeVolume, bulkModulus: relativeVolume / compliance };
}
