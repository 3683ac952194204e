import { requireWithin } from '../../base/checks.js';
import { fromSquareMillimetres, toSquareMillimetres } from './square-millimetres.js';

/** Above this viscosity [mm²/s] the low-viscosity terms are below the last binary digit of Z. */
const termsVanish = 15;

/** The six terms C to H of ASTM D341: sign, constant, and factor of the viscosity in mm²/s, in the exponent. */
const terms = [
  [1, -1.148_83, -2.658_68],
  [-1, -0.003_813_8, -12.5645],
  [1, 5.464_91, -37.6289],
  [-1, 13.0458, -74.6851],
  [1, 37.4619, -192.643],
  [-1, 80.4945, -400.468],
] as const;

/** Viscosities [m²/s] between which ASTM D341 gives its function Z. */
export const waltherRange = { lowest: 0.21e-6, highest: 20 } as const;

/** Values of Z [mm²/s] at the ends of that range. */
export const waltherZRange = {
  lowest: fullForm(toSquareMillimetres(waltherRange.lowest)),
  highest: fullForm(toSquareMillimetres(waltherRange.highest)),
} as const;

function requireViscosity(kinematicViscosity: number): void {
  requireWithin(kinematicViscosity, waltherRange.lowest, waltherRange.highest, 'kinematicViscosity', 'm²/s');
}

function fullForm(viscosity: number): number {
  let z = viscosity + 0.7;
  if (viscosity > termsVanish) return z;
  for (const [sign, constant, factor] of terms) z += sign * Math.exp(constant + factor * viscosity);
  return z;
}

/**
 * Walther function Z in mm²/s with all low-viscosity terms, `Z = ν + 0.7 + C − D + E − F + G − H`.
 *
 * The standard drops each term above a limit (C above 2 mm²/s, H above 0.24); here all are kept at every viscosity, so
 * that Z has no steps. Each is below 0.06 % of Z at its limit.
 *
 * @param kinematicViscosity - kinematic viscosity [m²/s], 0.21e-6 to 20
 * @throws InputError outside that range
 * @see ASTM D341-20, section 5; constants as in two public programs and in Menon, Liquid Pipeline Hydraulics (2004), eq. 2.16-2.18
 * @public
 */
export function waltherZ(kinematicViscosity: number): number {
  requireViscosity(kinematicViscosity);
  return fullForm(toSquareMillimetres(kinematicViscosity));
}

/**
 * Walther function Z in mm²/s in the short form of later editions, `Z = ν + 0.7 + exp(−1.47 − 1.84 ν − 0.51 ν²)`; within
 * 0.4 % of the full form.
 *
 * @param kinematicViscosity - kinematic viscosity [m²/s], 0.21e-6 to 20
 * @throws InputError outside that range
 * @see ASTM D341-20, section 5
 * @public
 */
export function waltherZShort(kinematicViscosity: number): number {
  requireViscosity(kinematicViscosity);
  const viscosity = toSquareMillimetres(kinematicViscosity);
  return viscosity + 0.7 + Math.exp(-1.47 - 1.84 * viscosity - 0.51 * viscosity ** 2);
}

/**
 * Kinematic viscosity [m²/s] of a Walther function in full form: the inverse of {@link waltherZ}, solved to the last digits.
 *
 * @param z - Walther function [mm²/s], 1.05901 to 2e7
 * @throws InputError outside that range
 * @see ASTM D341-20, section 5
 * @public
 */
export function kinematicViscosityOfZ(z: number): number {
  requireWithin(z, waltherZRange.lowest, waltherZRange.highest, 'z', 'mm²/s');
  let viscosity = z - 0.7;
  if (viscosity > termsVanish) return fromSquareMillimetres(viscosity);
  // Newton's steps: one or two for an oil, 20 in the worst case, near the lowest viscosity.
  for (let step = 0; step < 30; step++) {
    let value = viscosity + 0.7 - z;
    let slope = 1;
    for (const [sign, constant, factor] of terms) {
      const term = sign * Math.exp(constant + factor * viscosity);
      value += term;
      slope += factor * term;
    }
    viscosity -= value / slope;
    if (Math.abs(value / slope) <= 1e-9 * viscosity) break;
  }
  return fromSquareMillimetres(viscosity);
}

/**
 * Kinematic viscosity [m²/s] of a Walther function in short form, by the standard's own approximate inverse
 * `ν = z − exp(−0.7487 − 3.295 z + 0.6119 z² − 0.3193 z³)`, `z = Z − 0.7`; back and forth it returns to within 0.03 %.
 *
 * @param z - Walther function [mm²/s], 1.06 to 2e7
 * @throws InputError outside that range
 * @see ASTM D341-20, section 5
 * @public
 */
export function kinematicViscosityOfZShort(z: number): number {
  requireWithin(z, 1.06, waltherZRange.highest, 'z', 'mm²/s');
  const x = z - 0.7;
  return fromSquareMillimetres(x - Math.exp(-0.7487 - 3.295 * x + 0.6119 * x ** 2 - 0.3193 * x ** 3));
}
