import { requirePositive } from '../base/checks.js';

/** Ratio of specific heats of air near room temperature. */
const airHeatRatio = 1.4;

/** Thermal diffusivity of air at 25 °C and 1 bar [m²/s] (from memory). */
const airThermalDiffusivity = 2.2e-5;

/**
 * Polytropic exponent of a round bubble of air that is squeezed to and fro: 1 where the oil keeps it at its own temperature, 1.4 where heat
 * has no time to leave.
 *
 * `κ = Re Φ/3`, `Φ = 3γ / (1 − 3(γ − 1) i χ [√(i/χ) coth √(i/χ) − 1])`, `χ = D/(ω R²)`. A pocket of another shape is taken as a
 * bubble with the same ratio of volume to surface.
 *
 * @param radius - radius [m], above 0; three times volume over surface for a pocket
 * @param frequency - of the movement [Hz], above 0
 * @throws InputError for a value that is not above 0
 * @see Prosperetti, Crum & Commander, J. Acoust. Soc. Am. 83 (1988) 502; Chapman & Plesset, J. Basic Eng. 93 (1971) 373 (from memory)
 * @example
 * ```ts
 * polytropicExponent(1, 10); // 1.40: large and fast, adiabatic
 * polytropicExponent(1e-5, 1); // 1.00: small and slow, isothermal
 * ```
 * @public
 */
export function polytropicExponent(radius: number, frequency: number): number {
  requirePositive(radius, 'radius', 'm');
  requirePositive(frequency, 'frequency', 'Hz');
  const chi = airThermalDiffusivity / (2 * Math.PI * frequency * radius ** 2);
  const y = Math.sqrt(1 / (2 * chi));
  // z coth z − 1 with z = (1 + i) y. Below, its series z²/3 − z⁴/45; above 300 the exponentials would overflow.
  const [re, im] = y < 0.01 ? [(4 * y ** 4) / 45, (2 * y * y) / 3] : zCothZMinusOne(y);
  // 1 − 3(γ − 1) i χ (re + i im)
  const a = 1 + 3 * (airHeatRatio - 1) * chi * im;
  const b = -3 * (airHeatRatio - 1) * chi * re;
  return (airHeatRatio * a) / (a * a + b * b);
}

function zCothZMinusOne(y: number): readonly [number, number] {
  if (y > 300) return [y - 1, y];
  const denominator = Math.cosh(2 * y) - Math.cos(2 * y);
  return [
    (y * (Math.sinh(2 * y) + Math.sin(2 * y))) / denominator - 1,
    (y * (Math.sinh(2 * y) - Math.sin(2 * y))) / denominator,
  ];
}

/** Strokes per second at which the gas of a shock is taken to be squeezed: a small car bounces two to six times a second (common practice, no source). */
export const typicalStrokeRate = 4;

/**
 * Polytropic exponent of a pocket of air in a shock at work: that of a bubble of the same volume, squeezed four times a second unless said otherwise.
 * A flat pocket of the same volume sheds its heat more easily; the exponent is then a little too high.
 *
 * @param volume - volume of the gas [m³], above 0
 * @param strokeRate - strokes per second [Hz], above 0
 * @throws InputError for a value that is not above 0
 * @example
 * ```ts
 * pocketExponent(1); // 1.40: a cubic metre has no time to give its heat away
 * pocketExponent(1e-12); // 1.00: a tenth of a millimetre is always as warm as its oil
 * ```
 * @public
 */
export function pocketExponent(volume: number, strokeRate: number = typicalStrokeRate): number {
  requirePositive(volume, 'volume', 'm³');
  return polytropicExponent(Math.cbrt((3 * volume) / (4 * Math.PI)), strokeRate);
}
