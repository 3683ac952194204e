import { requireFinite, requireNotNegative, requirePositive, requireRecord } from '../../base/checks.js';

/**
 * What inertia costs in a hole, in units of the dynamic pressure of its narrowest section.
 *
 * @public
 */
export interface InertialLossShares {
  /** Length over diameter of the narrowest section, above 0: where a jet that contracts can land. */
  readonly lengthRatio: number;
  /** What slow oil loses of its first inertia: the face behind feels the momentum of the jet at any speed. 0 for a lone hole. */
  readonly slow: number;
  /** Kinetic energy thrown away at the exit; 1 for a straight hole. */
  readonly exit: number;
  /** Excess loss of a profile that develops fully along the hole; 1.25 for a round tube (Shah 1978). */
  readonly development: number;
  /** Length over diameter that counts for the profile, above 0; {@link lengthRatio} by default. */
  readonly profileLengthRatio?: number;
  /** Loss of a jet that contracts at the entrance and never touches the wall again; 1.68 for a sharp edge. */
  readonly contraction: number;
  /** How much longer the bubble behind the entrance grows with each Reynolds number, in diameters; 1/1988 for a sharp edge. */
  readonly bubbleGrowth: number;
  /** Reynolds number at which inertia sets in; 35.6 for a sharp straight hole. */
  readonly onset: number;
  /** What a widening hole loses more once the jet leaves its wall. */
  readonly separation?: Separation;
}

/**
 * A loss that comes as a jet leaves the wall, `loss / (1 + (Re_s/Re)^power)`.
 *
 * @public
 */
export interface Separation {
  /** In units of the dynamic pressure, 0 or more. */
  readonly loss: number;
  /** Reynolds number at which half of it has come, above 0. */
  readonly reynoldsNumber: number;
  /** How suddenly it comes, above 0. */
  readonly power: number;
}

/** Developed profile of a round tube: Shah, J. Fluids Eng. 100 (1978) 177. */
export const developedExcessLoss = 1.25;

/** Thin plate, `1/C_c² − 1` with Kirchhoff's `C_c = π/(π + 2) = 0.611`. */
export const freeJetLoss = 1.68;

/** Entrance loss of a wall boundary layer, `13.76 sqrt(x⁺)`, the short-hole limit of Shah's formula. */
const boundaryLayerLoss = 13.76;

// The numbers below are fitted to the numerical reference (docs/hole-law.md); rounding them to these digits costs nothing.
/** Reynolds number at which inertia sets in, `x = Re / 35.6`. */
export const sharpOnset = 35.6;
const onsetBend = -1.24;
const onsetRise = 3.21;
const onsetLevel = 1.486;
const bubbleAtRest = 0.1175;
/** Above this the jet is turbulent and its lengths no longer grow with the Reynolds number. */
const turbulentReynoldsNumber = 3000;
const perTurbulent = 1 / turbulentReynoldsNumber;

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

/** `(K_d/13.76)² / (L/d)`, so that `(K_d/13.76)² / x⁺` is this times the Reynolds number. */
export function profileGrowth(development: number, lengthRatio: number): number {
  const ratio = development / boundaryLayerLoss;
  return (ratio * ratio) / lengthRatio;
}

/** The onset `F` of inertia, from 0 in creeping flow to 1, at `x = Re/onset`. */
export function onsetOfInertia(x: number): number {
  const square = x * x;
  const level = onsetLevel * square;
  return x * Math.sqrt((1 + level) / (1 + onsetBend * x + onsetRise * square + level * square));
}

/**
 * Writes loss coefficient and slope into the first two places. It takes its numbers one by one: where each hole is asked a few times
 * only, putting them into an object takes longer than the law. `separated` and `separatedSlope` are what a jet off the wall loses more.
 */
export function evaluateLoss(
  reynoldsNumber: number,
  lengthRatio: number,
  growth: number,
  slow: number,
  exit: number,
  development: number,
  contraction: number,
  bubbleGrowth: number,
  perOnset: number,
  separated: number,
  separatedSlope: number,
  out: Float64Array,
): void {
  // Written with few divisions and roots, each of which costs as much as ten products.
  const x = reynoldsNumber * perOnset;
  const y = reynoldsNumber * perTurbulent;
  const calm = 1 / Math.sqrt(1 + y * y);
  const laminar = reynoldsNumber * calm;
  const bubble = bubbleAtRest + bubbleGrowth * laminar;
  const perSpan = 1 / (bubble + lengthRatio);
  const covered = bubble * perSpan;
  const perGrown = 1 / (1 + growth * laminar);
  const developing = development * Math.sqrt(perGrown);
  const full = exit - slow + developing + contraction * covered * covered + separated;
  const fullSlope =
    (2 * contraction * covered * bubbleGrowth * lengthRatio * perSpan * perSpan -
      0.5 * developing * growth * perGrown) *
      (calm * calm * calm) +
    separatedSlope;
  // F = x sqrt(above/below), its slope by the logarithm.
  const square = x * x;
  const level = onsetLevel * square;
  const above = 1 + level;
  const below = 1 + onsetBend * x + onsetRise * square + level * square;
  const perBoth = 1 / (above * below);
  const steep = above * Math.sqrt(perBoth);
  const onset = x * steep;
  const bend = level * below - 0.5 * x * (onsetBend + 2 * onsetRise * x + 4 * level * x) * above;
  out[0] = slow + full * onset;
  out[1] = full * steep * (1 + bend * perBoth) * perOnset + fullSlope * onset;
}

/** {@link inertialLoss} as {@link InertialLoss.evaluate} alone. */
export function inertialEvaluation(shares: InertialLossShares): InertialLoss['evaluate'] {
  const { lengthRatio, slow, exit, development, contraction, bubbleGrowth, separation } = shares;
  const growth = profileGrowth(development, shares.profileLengthRatio ?? lengthRatio);
  const perOnset = 1 / shares.onset;
  const { loss, reynoldsNumber: half, power } = separation ?? { loss: 0, reynoldsNumber: 1, power: 1 };
  return (reynoldsNumber, out) => {
    let separated = 0;
    let separatedSlope = 0;
    // Far below, where the power has no number, nothing separates.
    if (loss > 0 && reynoldsNumber > 1e-3 * half) {
      const attached = (half / reynoldsNumber) ** power;
      separated = loss / (1 + attached);
      separatedSlope = (power * attached * separated) / (reynoldsNumber * (1 + attached));
    }
    evaluateLoss(
      reynoldsNumber,
      lengthRatio,
      growth,
      slow,
      exit,
      development,
      contraction,
      bubbleGrowth,
      perOnset,
      separated,
      separatedSlope,
      out,
    );
  };
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
  const evaluate = inertialEvaluation(shares);
  const part =
    (place: number) =>
    (reynoldsNumber: number): number => {
      evaluate(reynoldsNumber, lossAndSlope);
      return lossAndSlope[place]!;
    };
  return { coefficient: part(0), slope: part(1), evaluate };
}
