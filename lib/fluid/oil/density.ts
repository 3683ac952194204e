import { requireWithin, requireWord } from '../../base/checks.js';
import type { OilBase } from './oil-definition.js';

const fifteenCelsius = 288.15;
const zeroCelsius = 273.15;

/** Expansion of silicone [1/K] and density at 0 °C [kg/m³]: Tait fit of polydimethylsiloxane at zero pressure. */
const siliconeExpansion = 9.121e-4;
const siliconeDensityAtZero = 1 / 1.0079e-3;

/** Constant K₀ of ASTM D1250 table 54D (lubricating oils) [kg/m³ per K]; K₁ is 0. */
const petroleumExpansion = 0.6278;

/** Typical density at 15 °C [kg/m³]: silicone by the Tait fit, petroleum from memory (mineral hydraulic oil 850 to 890). */
export const typicalDensityAt15Celsius: Readonly<Record<OilBase, number>> = {
  silicone: siliconeDensityAtZero * Math.exp(-siliconeExpansion * (fifteenCelsius - zeroCelsius)),
  petroleum: 870,
};

/**
 * Density of an oil [kg/m³] at atmospheric pressure.
 *
 * Silicone: `ρ = ρ₁₅ exp(−9.121e-4 (t − 15))`. Petroleum: `ρ = ρ₁₅ exp(−α Δt (1 + 0.8 α Δt))`, `α = 0.6278 / ρ₁₅`, `Δt = t − 15`.
 *
 * @param base - chemical family
 * @param temperature - temperature [K], 200 to 600; the fits are stated for about 273 to 420
 * @param densityAt15Celsius - density at 15 °C [kg/m³], 600 to 1300; by default typical of the base
 * @throws InputError outside these
 * @see Silicone: Dee, Ougizawa & Walsh, Polymer 33 (1992) 3462, constants from memory. Petroleum: API MPMS 11.1 (ASTM D1250-80), table 54D
 * @public
 */
export function oilDensity(
  base: OilBase,
  temperature: number,
  densityAt15Celsius: number = typicalDensityAt15Celsius[base],
): number {
  requireInputs(base, temperature, densityAt15Celsius);
  const difference = temperature - fifteenCelsius;
  if (base === 'silicone') return densityAt15Celsius * Math.exp(-siliconeExpansion * difference);
  const x = (petroleumExpansion / densityAt15Celsius) * difference;
  return densityAt15Celsius * Math.exp(-x * (1 + 0.8 * x));
}

/**
 * Coefficient of thermal expansion [1/K], `−(1/ρ) dρ/dT`, the exact derivative of {@link oilDensity}.
 *
 * @param base - chemical family
 * @param temperature - temperature [K], 200 to 600
 * @param densityAt15Celsius - density at 15 °C [kg/m³], 600 to 1300; by default typical of the base
 * @throws InputError outside these
 * @see Sources of {@link oilDensity}
 * @public
 */
export function thermalExpansionCoefficient(
  base: OilBase,
  temperature: number,
  densityAt15Celsius: number = typicalDensityAt15Celsius[base],
): number {
  requireInputs(base, temperature, densityAt15Celsius);
  if (base === 'silicone') return siliconeExpansion;
  const alpha = petroleumExpansion / densityAt15Celsius;
  return alpha * (1 + 1.6 * alpha * (temperature - fifteenCelsius));
}

function requireInputs(base: OilBase, temperature: number, densityAt15Celsius: number): void {
  requireWord(base, Object.keys(typicalDensityAt15Celsius), 'base');
  requireWithin(temperature, 200, 600, 'temperature', 'K');
  requireWithin(densityAt15Celsius, 600, 1300, 'densityAt15Celsius', 'kg/m³');
}
