import { requireWithin } from '../../base/checks.js';
import { fromSquareMillimetres, toSquareMillimetres } from './square-millimetres.js';
import { type ReferenceOils, referenceOils } from './viscosity-index-references.js';

/** Temperatures [K] of the two viscosities of the index: 40 °C and 100 °C. */
export const viscosityIndexTemperatures = { cold: 313.15, hot: 373.15 } as const;

/** Viscosities at 100 °C [m²/s] for which the index is defined; the upper end is ours, beyond any oil. */
export const viscosityIndexRange = { lowest: 2e-6, highest: 2e-3 } as const;

/**
 * Viscosity index, a pure number not rounded (the standard reports the nearest whole number).
 *
 * Up to 100 (procedure A) `VI = 100 (L − U) / (L − H)`, above (procedure B) `VI = 100 + (10ᴺ − 1) / 0.00715`, `N = lg(H/U) / lg Y`.
 *
 * @param viscosityAt40Celsius - kinematic viscosity U at 40 °C [m²/s], from the one at 100 °C to 20
 * @param viscosityAt100Celsius - kinematic viscosity Y at 100 °C [m²/s], 2e-6 to 2e-3
 * @throws InputError outside these
 * @see ASTM D2270-10 (ISO 2909), equations 1 to 6 and table 1
 * @public
 */
export function viscosityIndex(viscosityAt40Celsius: number, viscosityAt100Celsius: number): number {
  const { index0, index100 } = requireReferenceOils(viscosityAt100Celsius);
  requireWithin(viscosityAt40Celsius, viscosityAt100Celsius, 20, 'viscosityAt40Celsius', 'm²/s');
  const u = toSquareMillimetres(viscosityAt40Celsius);
  if (u > index100) return (100 * (index0 - u)) / (index0 - index100);
  const exponent = Math.log(index100 / u) / Math.log(toSquareMillimetres(viscosityAt100Celsius));
  return 100 + (10 ** exponent - 1) / 0.007_15;
}

/**
 * Kinematic viscosity at 40 °C [m²/s] of the oil that has a viscosity index and a viscosity at 100 °C: the standard's equations
 * solved for U.
 *
 * @param index - viscosity index, -200 to 500
 * @param viscosityAt100Celsius - kinematic viscosity at 100 °C [m²/s], 2e-6 to 2e-3
 * @throws InputError outside these
 * @see ASTM D2270-10 (ISO 2909), equations 3 and 5
 */
export function viscosityAt40Celsius(index: number, viscosityAt100Celsius: number): number {
  requireWithin(index, -200, 500, 'viscosityIndex', '');
  const { index0, index100 } = requireReferenceOils(viscosityAt100Celsius);
  if (index <= 100) return fromSquareMillimetres(index0 - (index / 100) * (index0 - index100));
  const exponent = Math.log10(1 + 0.007_15 * (index - 100));
  return fromSquareMillimetres(index100 / toSquareMillimetres(viscosityAt100Celsius) ** exponent);
}

function requireReferenceOils(viscosityAt100Celsius: number): ReferenceOils {
  const { lowest, highest } = viscosityIndexRange;
  requireWithin(viscosityAt100Celsius, lowest, highest, 'viscosityAt100Celsius', 'm²/s');
  return referenceOils(toSquareMillimetres(viscosityAt100Celsius));
}
