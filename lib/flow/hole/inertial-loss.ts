import { requireFinite, requireNotNegative, requirePositive, requireRecord } from '../../base/checks.js';
import { bindLoss, evaluateLoss, separationLoss } from './bound-loss.js';
import type { InertialLossShares } from './loss-shares.js';

/** Below this Reynolds number the coefficient is a straight line to the last digit. */
const nearRest = 1e-9;

/** A jet that stays on its wall. */
const noMore = { coefficient: 0, slope: 0 };

/** Filled and read within one call and never handed out. */
const lossAndSlope = new Float64Array(2);

/**
 * Loss coefficient and its slope over the Reynolds number.
 *
 * @public
 */
export interface InertialLoss {
  readonly coefficient: (reynoldsNumber: number) => number;
  readonly slope: (reynoldsNumber: number) => number;
  /** Writes both, coefficient and slope, at little more than the cost of one. */
  readonly evaluate: (reynoldsNumber: number, out: Float64Array) => void;
}

/**
 * Loss coefficient by inertia of a hole,
 * `ζ = (1 − F) slow + F(Re) · [exit + K(x⁺) + contraction / (1 + (L/d)/ℓ)² + separation / (1 + (Re_s/Re)^n)]`, each term a mechanism:
 *
 * - `F = x √((1 + 1.486 x²) / (1 − 1.24 x + 3.21 x² + 1.486 x⁴))`, `x = Re/onset`: the onset. In creeping flow the oil closes up behind
 *   the hole as it opened before it, and nothing is lost by inertia;
 * - exit: the kinetic energy of the jet, lost in the chamber behind;
 * - `K = K_d / sqrt(1 + (K_d/13.76)² / x⁺)`, `x⁺ = (L/d)/Re`: the profile develops from flat to parabolic;
 * - contraction: the jet narrows behind a sharp edge. Its bubble is `ℓ = 0.1175 + Re/1988` diameters long; where the hole is
 *   longer, the jet lands on the wall and most of the loss is won back;
 * - separation: a hole that widens lets the jet go, and what its wider exit had won back is lost.
 *
 * `Re` in `x⁺` and `ℓ` levels off at 3000, where the jet turns turbulent.
 *
 * @param shares - length ratios above 0, losses 0 or more
 * @example
 * ```ts
 * const sharp = { lengthRatio: 2, slow: 0, exit: 1, development: 1.25, contraction: 1.68, bubbleGrowth: 1 / 1988, onset: 35.6 };
 * inertialLoss(sharp).coefficient(0); // 0: in creeping flow nothing is lost by inertia
 * inertialLoss(sharp).coefficient(1e6); // 1.68: exit 1, profile 0.342 and contraction 0.338 of the formula, by hand
 * ```
 * @public
 */
export function inertialLoss(shares: InertialLossShares): InertialLoss {
  requireRecord(shares, 'shares');
  const { lengthRatio, profileLengthRatio = lengthRatio, onset, separation } = shares;
  requirePositive(lengthRatio, 'lengthRatio', '');
  requirePositive(profileLengthRatio, 'profileLengthRatio', '');
  requirePositive(onset, 'onset', '');
  for (const name of ['slow', 'exit', 'development', 'contraction', 'bubbleGrowth'] as const)
    requireFinite(shares[name], name, '');
  if (separation !== undefined) {
    requireRecord(separation, 'separation');
    requireNotNegative(separation.loss, 'separation.loss', '');
    requirePositive(separation.reynoldsNumber, 'separation.reynoldsNumber', '');
    requirePositive(separation.power, 'separation.power', '');
  }
  return lossOfShares(shares);
}

/** {@link inertialLoss} of what was checked before. */
export function lossOfShares(shares: InertialLossShares): InertialLoss {
  const bound = bindLoss(shares);
  const { separation } = shares;
  const evaluate = (reynoldsNumber: number, out: Float64Array): void => {
    const at = Math.max(reynoldsNumber, nearRest);
    const more = separation === undefined ? noMore : separationLoss(separation, at);
    const { coefficient, slope: logarithmic } = evaluateLoss(bound, at, more.coefficient, more.slope);
    const slope = logarithmic / at;
    out[0] = coefficient + slope * (reynoldsNumber - at);
    out[1] = slope;
  };
  const part =
    (place: number) =>
    (reynoldsNumber: number): number => {
      evaluate(reynoldsNumber, lossAndSlope);
      return lossAndSlope[place]!;
    };
  return { coefficient: part(0), slope: part(1), evaluate };
}
