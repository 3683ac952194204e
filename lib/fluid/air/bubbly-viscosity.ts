import { requireNotNegative, requirePositive, requireRecord, requireWithin } from '../../base/checks.js';
import { type AiryOil, compressAiryOil } from './air-in-oil.js';

/** Share of bubbles up to which the laws of a bubbly liquid are taken; beyond, it is a foam. */
const largestShare = 0.5;

/**
 * Viscosity of oil with round or drawn-out bubbles over that of the oil, in steady shear.
 *
 * `(1 − φ)^(5/3) + ((1 − φ)^(−1) − (1 − φ)^(5/3)) / (1 + (6/5 Ca)²)`: while surface tension keeps the bubbles round they are in the way, `1 + φ` of few
 * bubbles (Taylor); where shear draws them out they are holes in the oil, `1 − 5/3 φ`.
 *
 * @param airFraction - volume of bubbles over that of the mixture, 0 to 0.5
 * @param capillaryNumber - viscosity of the oil times shear rate times radius over surface tension, 0 or more
 * @throws InputError outside these
 * @see Rust & Manga, J. Non-Newton. Fluid Mech. 104 (2002) 53 and Murai & Oiwa, Fluid Dyn. Res. 40 (2008) 565 (both limits of few
 * bubbles; abstracts read); form with the share and with 6/5: Llewellin & Manga, J. Volcanol. Geotherm. Res. 143 (2005) 205 (from memory)
 * @public
 */
export function bubblyViscosityRatio(airFraction: number, capillaryNumber: number): number {
  requireWithin(airFraction, 0, largestShare, 'airFraction', '');
  requireNotNegative(capillaryNumber, 'capillaryNumber', '');
  const [round, drawn] = [1 / (1 - airFraction), drawnBubbles(airFraction)];
  return drawn + (round - drawn) / (1 + (1.2 * capillaryNumber) ** 2);
}

/** The same where shear draws the bubbles out, the limit of a large capillary number. */
function drawnBubbles(airFraction: number): number {
  return (1 - airFraction) ** (5 / 3);
}

/**
 * Viscosity of oil with bubbles so dirty that they act as rigid balls, over that of the oil: `(1 − φ)^(−5/2)`, `1 + 5/2 φ` of few.
 *
 * @param airFraction - 0 to 0.5
 * @throws InputError outside this
 * @see Einstein (1906) for few; Roscoe, Br. J. Appl. Phys. 3 (1952) 267 and Brinkman, J. Chem. Phys. 20 (1952) 571 for many; from memory
 * @public
 */
export function rigidBubblesViscosityRatio(airFraction: number): number {
  requireWithin(airFraction, 0, largestShare, 'airFraction', '');
  return (1 - airFraction) ** -2.5;
}

/**
 * A number known within limits.
 *
 * @public
 */
export interface Bounds {
  readonly low: number;
  readonly high: number;
}

/**
 * What bubbles mixed into an oil make of it, as limits: nobody knows their size and the dirt on them.
 *
 * @public
 */
export interface BubblyOil {
  /** Share of bubbles at the pressure: least where they shrink isothermally, largest where adiabatically. */
  readonly airFraction: Bounds;
  /** Tangent bulk modulus [Pa]. */
  readonly bulkModulus: Bounds;
  /** Dynamic viscosity over that of the oil: from drawn-out clean bubbles to rigid ones. */
  readonly viscosityRatio: Bounds;
  /** Density over that of the oil. */
  readonly densityRatio: Bounds;
}

/**
 * Bounds of viscosity, density and stiffness of an oil with bubbles mixed in, at a pressure.
 *
 * @param oil - bulk modulus of the oil [Pa], share of air at a reference pressure [Pa, absolute]
 * @param pressure - absolute [Pa], at which the share of bubbles is at most 0.5
 * @throws InputError outside these
 * @see {@link bubblyViscosityRatio}, {@link rigidBubblesViscosityRatio}, {@link compressAiryOil}
 * @public
 */
export function bubblyOil(oil: Omit<AiryOil, 'polytropicExponent'>, pressure: number): BubblyOil {
  requireRecord(oil, 'oil');
  requirePositive(pressure, 'pressure', 'Pa');
  const [slow, fast] = [1, 1.4].map((polytropicExponent) =>
    compressAiryOil({ ...oil, polytropicExponent }, pressure),
  ) as [ReturnType<typeof compressAiryOil>, ReturnType<typeof compressAiryOil>];
  const shares = [slow.airFraction, fast.airFraction];
  const [least, most] = [Math.min(...shares), Math.max(...shares)];
  const stiffness = [slow.bulkModulus, fast.bulkModulus];
  return {
    airFraction: { low: least, high: most },
    bulkModulus: { low: Math.min(...stiffness), high: Math.max(...stiffness) },
    viscosityRatio: {
      low: drawnBubbles(most),
      high: rigidBubblesViscosityRatio(most),
    },
    densityRatio: { low: 1 - most, high: 1 - least },
  };
}
