import { call, requireShape, type Shape } from '../../base/shape.js';
/**
 * How much a residual counts: its part of the cost, `ρ(r²)`, and the weight `ρ′(r²)` that its square has in the normal equations.
 *
 * @public
 */
export interface RobustLoss {
  readonly cost: (square: number) => number;
  readonly weight: (square: number) => number;
}

/** Form of {@link RobustLoss}. */
export const robustLossShape: Shape = { cost: call, weight: call };

/** Plain least squares. */
export const squareLoss: RobustLoss = { cost: (square) => square, weight: () => 1 };

/**
 * Huber's loss: squares up to a threshold, in proportion to the residual beyond.
 *
 * @param threshold - in standard uncertainties, above 0; 1.345 keeps 95 % of the efficiency on normal errors
 * @see Huber, Ann. Math. Statist. 35 (1964) 73; the threshold after Holland & Welsch 1977 (from memory)
 * @public
 */
export function huberLoss(threshold = 1.345): RobustLoss {
  requireShape({ threshold }, { threshold: '' });
  const knee = threshold * threshold;
  return {
    cost: (square) => (square <= knee ? square : 2 * threshold * Math.sqrt(square) - knee),
    weight: (square) => (square <= knee ? 1 : threshold / Math.sqrt(square)),
  };
}

/**
 * Loss of errors spread as Student's t with few degrees of freedom; 1 degree is Cauchy's, `ln(1 + r²)` up to a factor.
 *
 * @param degreesOfFreedom - 1 or more; 4 suits readings with a few bad ones
 * @see Lange, Little & Taylor, J. Am. Stat. Assoc. 84 (1989) 881 (from memory)
 * @public
 */
export function studentLoss(degreesOfFreedom = 4): RobustLoss {
  requireShape({ degreesOfFreedom }, { degreesOfFreedom: '' });
  return {
    cost: (square) => (degreesOfFreedom + 1) * Math.log1p(square / degreesOfFreedom),
    weight: (square) => (degreesOfFreedom + 1) / (degreesOfFreedom + square),
  };
}
