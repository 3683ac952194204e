import { requirePositive } from '../../base/checks.js';
import { standardGravity } from '../../base/constants.js';
import { requireShape } from '../../base/shape.js';

/**
 * Which bubbles under a piston get through one of its holes by themselves.
 *
 * @public
 */
export interface BubblePassage {
  /** Radius from which a bubble stays under the hole until the shaft moves [m]; `undefined` where all pass. */
  readonly stuckFrom: number | undefined;
  /** Pressure over the piston that pushes even the largest bubble through [Pa]; 0 where all pass. */
  readonly pressureNeeded: number;
}

/**
 * Passage of bubbles under a piston through a hole that the oil wets: to enter it a bubble must bulge against `2σ/r`. It brings `2σ/R` of its
 * own and the lift of its height, `2R` and at most two capillary lengths, since a large bubble flattens under the piston.
 *
 * @param holeRadius - radius of the hole [m], above 0
 * @param oil - density [kg/m³] and surface tension [N/m], above 0
 * @throws InputError for a value that is not above 0
 * @see Young-Laplace equation and height of a flat drop `2 √(σ/(ρ g))`: de Gennes, Brochard-Wyart & Quéré, Capillarity and Wetting
 * Phenomena (2004), chapters 1 and 2 (from memory). Adding both is our estimate
 * @public
 */
export function bubblePassage(
  holeRadius: number,
  oil: { readonly density: number; readonly surfaceTension: number },
): BubblePassage {
  requireShape({ oil }, { oil: { density: '', surfaceTension: '' } });
  requirePositive(holeRadius, 'holeRadius', 'm');
  requirePositive(oil.density, 'density', 'kg/m³');
  requirePositive(oil.surfaceTension, 'surfaceTension', 'N/m');
  const capillaryLength = Math.sqrt(oil.surfaceTension / (oil.density * standardGravity));
  if (holeRadius >= capillaryLength) return { stuckFrom: undefined, pressureNeeded: 0 };
  const x = (2 * holeRadius) / capillaryLength;
  // Round bubbles solve 1/R + R/l² = 1/r (the smaller root), flattened ones 1/R + 1/l = 1/r; both meet at R = l.
  const stuckFrom =
    x <= 1 ? (2 * holeRadius) / (1 + Math.sqrt(1 - x * x)) : 1 / (1 / holeRadius - 1 / capillaryLength);
  const pressureNeeded = 2 * oil.surfaceTension * (1 / holeRadius - 1 / capillaryLength);
  return { stuckFrom, pressureNeeded };
}
