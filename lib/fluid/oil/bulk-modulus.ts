import { requireWithin } from '../../base/checks.js';

/**
 * Isothermal bulk modulus [Pa] of silicone at zero pressure, `K = B / C`, `B = 89.4 MPa · exp(−5.701e-3 t)`, `C = 0.0894`.
 *
 * Mineral oil has 1.4e9 to 1.8e9 near 30 °C (from memory). For silicone, sound speeds give about 7 % less at 25 °C; take 0.85 ± 0.08 GPa there.
 *
 * @param temperature - temperature [K], 233.15 to 473.15
 * @throws InputError outside that range
 * @see Tait fit, Dee, Ougizawa & Walsh, Polymer 33 (1992) 3462; constants from memory
 * @public
 */
export function siliconeBulkModulus(temperature: number): number {
  requireWithin(temperature, 233.15, 473.15, 'temperature', 'K');
  return (89.4e6 / 0.0894) * Math.exp(-5.701e-3 * (temperature - 273.15));
}

/**
 * Factor by which pressure raises the dynamic viscosity, `exp(α p)`; 2 % at 1 MPa, so it is seldom needed here.
 *
 * @param coefficient - pressure-viscosity coefficient [1/Pa], 0 to 1e-7; silicone about 1.0e-8 to 1.6e-8, mineral oil 1.5e-8 to 2.5e-8 (from memory)
 * @param gaugePressure - pressure above the one of the known viscosity [Pa], 0 to 1e8
 * @throws InputError outside these
 * @see Barus, Am. J. Sci. 45 (1893) 87
 * @public
 */
export function barusViscosityRatio(coefficient: number, gaugePressure: number): number {
  requireWithin(coefficient, 0, 1e-7, 'coefficient', '1/Pa');
  requireWithin(gaugePressure, 0, 1e8, 'gaugePressure', 'Pa');
  return Math.exp(coefficient * gaugePressure);
}
