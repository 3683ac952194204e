import { requireFinite, requirePositive, requireWithin } from '../../base/checks.js';

// Sizes of what the equations of motion leave out, so that a page can say how much it is.

/**
 * Inertance of round holes side by side [Pa·s²/m³] for changes so fast that the profile stays flat, as when a cavity closes: pressure that speeds up the oil
 * in them, per rate of the flow. For slow changes `apparentMassAtShaft` holds, a quarter to a third more.
 *
 * @param density - [kg/m³], above 0
 * @param length - [m], above 0
 * @param radius - [m], above 0
 * @param count - of the holes, 1 or more
 * @see Rayleigh's flanged ends, `8r/(3π)` each, in any acoustics textbook (from memory)
 * @public
 */
export function holeInertance(density: number, length: number, radius: number, count: number): number {
  requirePositive(density, 'density', 'kg/m³');
  requirePositive(length, 'length', 'm');
  requirePositive(radius, 'radius', 'm');
  requirePositive(count, 'count', '');
  return (density * (length + (16 * radius) / (3 * Math.PI))) / (count * Math.PI * radius ** 2);
}

/** First zero of the Bessel function J₀. */
const firstZero = 2.404825557695773;

/**
 * Slowest time constant in which flow in a tube follows its pressure drop [s], `r²/(j₀₁² ν)`.
 *
 * @param radius - [m], above 0
 * @param kinematicViscosity - [m²/s], above 0
 * @see Szymanski, J. Math. Pures Appl. 11 (1932) 67; White, Viscous Fluid Flow, sec. 3-4.1 (from memory)
 * @public
 */
export function tubeSettlingTime(radius: number, kinematicViscosity: number): number {
  requirePositive(radius, 'radius', 'm');
  requirePositive(kinematicViscosity, 'kinematicViscosity', 'm²/s');
  return radius ** 2 / (firstZero ** 2 * kinematicViscosity);
}

/**
 * How a pressure drop that swings differs from the steady one at equal flow in a tube.
 *
 * @param frequency - [Hz], above 0
 * @param radius - [m], above 0
 * @param kinematicViscosity - [m²/s], above 0
 * @returns ratio of the sizes, and how much the pressure drop leads the flow [rad]
 * @see Womersley, J. Physiol. 127 (1955) 553 (Bessel form from memory)
 * @public
 */
export function swingingTube(
  frequency: number,
  radius: number,
  kinematicViscosity: number,
): { readonly ratio: number; readonly lead: number } {
  requirePositive(frequency, 'frequency', 'Hz');
  requirePositive(radius, 'radius', 'm');
  requirePositive(kinematicViscosity, 'kinematicViscosity', 'm²/s');
  const womersleySquare = (2 * Math.PI * frequency * radius ** 2) / kinematicViscosity;
  requireWithin(womersleySquare, 1e-9, 1e3, 'frequency number 2π f r²/ν', '');
  // dp/dp_Poiseuille = i α²/8 / (1 − 2 J₁(z)/(z J₀(z))), z = i^(3/2) α; both series go in q = −z²/4 = i α²/4.
  const q = womersleySquare / 4;
  // J₀ = Σ (iq)^k/k!², 2 J₁/z = Σ (iq)^k/(k!(k+1)!); their difference Σ (iq)^k k/(k!(k+1)!) keeps its digits.
  let [zeroRe, zeroIm, restRe, restIm] = [0, 0, 0, 0];
  let term = 1;
  for (let k = 0; k < 200; k++) {
    const turn = k % 4;
    const sign = turn < 2 ? 1 : -1;
    const rest = (term * k) / (k + 1);
    if (turn % 2 === 0) {
      zeroRe += sign * term;
      restRe += sign * rest;
    } else {
      zeroIm += sign * term;
      restIm += sign * rest;
    }
    term *= q / (k + 1) ** 2;
    if (term < 1e-20 * Math.abs(zeroRe)) break;
  }
  // i α²/8 · J₀ / rest
  const size = restRe ** 2 + restIm ** 2;
  const re = (zeroRe * restRe + zeroIm * restIm) / size;
  const im = (zeroIm * restRe - zeroRe * restIm) / size;
  const scale = womersleySquare / 8;
  return { ratio: scale * Math.hypot(re, im), lead: Math.atan2(re, -im) };
}

/**
 * Pressure spike when a cavity closes [Pa], from the oil in the holes that has to stop: `ΔQ sqrt(I/C)`, `C = V/K`.
 *
 * @param inertance - of the holes [Pa·s²/m³], above 0
 * @param volume - of the chamber [m³], above 0
 * @param bulkModulus - of its oil [Pa], above 0
 * @param flowChange - [m³/s]
 * @see Joukowsky's water hammer with both parts lumped
 * @public
 */
export function closingSpike(
  inertance: number,
  volume: number,
  bulkModulus: number,
  flowChange: number,
): number {
  requirePositive(inertance, 'inertance', 'Pa·s²/m³');
  requirePositive(volume, 'volume', 'm³');
  requirePositive(bulkModulus, 'bulkModulus', 'Pa');
  requireFinite(flowChange, 'flowChange', 'm³/s');
  return flowChange * Math.sqrt((inertance * bulkModulus) / volume);
}
