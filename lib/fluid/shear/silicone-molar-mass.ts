import { requirePositive, requireWithin } from '../../base/checks.js';
import { fromSquareMillimetres, toSquareMillimetres } from '../viscosity/square-millimetres.js';

/** Molar mass [kg/mol] from which Barry's relation is stated. */
export const lowestBarryMolarMass = 2.5;

/** Slope over the root of the molar mass in g/mol. Barry 1946, from memory. */
const slope = 0.0123;

/**
 * Molar mass [kg/mol] of a silicone, from `log₁₀ ν₂₅ = 1 + 0.0123 √M` with ν in mm²/s and M in g/mol.
 *
 * @param viscosityAt25Celsius - kinematic viscosity at 25 °C [m²/s], 11e-6 to 20; stated above 41e-6 (2.5 kg/mol)
 * @throws InputError outside that range
 * @see Barry, J. Appl. Phys. 17 (1946) 1020; constants from memory
 * @public
 */
export function siliconeMolarMass(viscosityAt25Celsius: number): number {
  requireWithin(viscosityAt25Celsius, 11e-6, 20, 'viscosityAt25Celsius', 'm²/s');
  const root = (Math.log10(toSquareMillimetres(viscosityAt25Celsius)) - 1) / slope;
  return root ** 2 / 1000;
}

/**
 * Kinematic viscosity [m²/s] at 25 °C of a silicone of a molar mass: the inverse of {@link siliconeMolarMass}.
 *
 * @param molarMass - molar mass [kg/mol], above 0; stated above 2.5
 * @throws InputError outside that range
 * @see Barry, J. Appl. Phys. 17 (1946) 1020; constants from memory
 * @public
 */
export function siliconeViscosityOfMolarMass(molarMass: number): number {
  requireWithin(molarMass, 0, 1e5, 'molarMass', 'kg/mol');
  requirePositive(molarMass, 'molarMass', 'kg/mol');
  return fromSquareMillimetres(10 ** (1 + slope * Math.sqrt(1000 * molarMass)));
}
