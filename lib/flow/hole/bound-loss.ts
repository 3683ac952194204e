import type { InertialLossShares, Separation } from './loss-shares.js';

/**
 * Loss coefficient by inertia of one hole, its numbers worked out once: the arithmetic of `inertialLoss`, for a jet that stays on its wall.
 * It is the innermost of every force.
 *
 * @public
 */
export interface BoundLoss {
  /** Length over diameter of the narrowest section. */
  readonly lengthRatio: number;
  /** The same and the bubble at rest. */
  readonly spanAtRest: number;
  readonly bubbleGrowth: number;
  readonly slow: number;
  /** What inertia costs once it has set in, less {@link slow}. */
  readonly exit: number;
  readonly development: number;
  /** How soon the profile develops: `(K_d/13.76)² / x⁺` is this times the Reynolds number, and its half. */
  readonly growth: number;
  readonly halfGrowth: number;
  readonly contraction: number;
  /** Slope of the contraction is this times what the bubble covers, over the square of the span. */
  readonly landing: number;
  readonly perOnset: number;
}

/** By itself: looking it up each time would make {@link evaluateLoss} too long for what is said there. */
const { sqrt } = Math;

/** Entrance loss of a wall boundary layer, `13.76 sqrt(x⁺)`, the short-hole limit of Shah's formula. */
const boundaryLayerLoss = 13.76;

// The numbers below are fitted to the numerical reference (docs/hole-law.md); rounding them to these digits costs nothing.
const onsetBend = -1.24;
const halfOnsetBend = onsetBend / 2;
const onsetRise = 3.21;
const onsetLevel = 1.486;
const bubbleAtRest = 0.1175;
/** Above this the jet is turbulent and its lengths no longer grow with the Reynolds number. */
const turbulentReynoldsNumber = 3000;
const perTurbulent = 1 / turbulentReynoldsNumber;

/** The numbers of {@link evaluateLoss}. */
export function bindLoss(shares: InertialLossShares): BoundLoss {
  const { lengthRatio, slow, exit, development, contraction, bubbleGrowth } = shares;
  const boundaryLayer = development / boundaryLayerLoss;
  const growth = (boundaryLayer * boundaryLayer) / (shares.profileLengthRatio ?? lengthRatio);
  return {
    lengthRatio,
    spanAtRest: bubbleAtRest + lengthRatio,
    bubbleGrowth,
    slow,
    exit: exit - slow,
    development,
    growth,
    halfGrowth: 0.5 * growth,
    contraction,
    landing: 2 * contraction * bubbleGrowth * lengthRatio,
    perOnset: 1 / shares.onset,
  };
}

/** The onset `F` of inertia, from 0 in creeping flow to 1, at `x = Re/onset`. */
export function onsetOfInertia(x: number): number {
  const level = onsetLevel * x * x;
  return x * Math.sqrt((1 + level) / (1 + x * (onsetBend + x * (onsetRise + level))));
}

/** Loss coefficient `ζ` and `dζ/d ln Re`. */
export interface LossAndSlope {
  readonly coefficient: number;
  readonly slope: number;
}

/**
 * Loss coefficient and its slope. Written with few divisions and roots, each of which costs as much as ten products, and short enough that V8 puts it into
 * its callers: then what it returns is never made.
 *
 * @param separated - what a jet off the wall loses more, and its slope over `ln Re`
 */
export function evaluateLoss(
  loss: BoundLoss,
  reynoldsNumber: number,
  separated: number,
  separatedSlope: number,
): LossAndSlope {
  const y = reynoldsNumber * perTurbulent;
  const calmSquare = 1 / (1 + y * y);
  const laminar = reynoldsNumber * sqrt(calmSquare);
  const perSpan = 1 / (loss.spanAtRest + loss.bubbleGrowth * laminar);
  const covered = 1 - loss.lengthRatio * perSpan;
  const perGrown = 1 / (1 + loss.growth * laminar);
  const developing = loss.development * sqrt(perGrown);
  const full = loss.exit + developing + loss.contraction * covered * covered + separated;
  const fullSlope =
    (loss.landing * covered * perSpan * perSpan - loss.halfGrowth * developing * perGrown) *
      laminar *
      calmSquare +
    separatedSlope;
  // F = x sqrt(above/below), its slope by the logarithm.
  const x = reynoldsNumber * loss.perOnset;
  const level = onsetLevel * x * x;
  const above = 1 + level;
  const rise = onsetRise + level;
  const below = 1 + x * (onsetBend + x * rise);
  const perBoth = 1 / (above * below);
  const onset = x * above * sqrt(perBoth);
  const bend = level * below - x * (halfOnsetBend + x * (rise + level)) * above;
  return {
    coefficient: loss.slow + full * onset,
    slope: onset * (full * (1 + bend * perBoth) + fullSlope),
  };
}

/** What a jet that leaves the wall of a widening hole loses more, and its slope over `ln Re`. */
export function separationLoss(
  { loss, reynoldsNumber: half, power }: Separation,
  reynoldsNumber: number,
): LossAndSlope {
  // Far below, where the power has no number, nothing separates.
  if (reynoldsNumber <= 1e-3 * half) return { coefficient: 0, slope: 0 };
  const held = (half / reynoldsNumber) ** power;
  const coefficient = loss / (1 + held);
  return { coefficient, slope: (power * held * coefficient) / (1 + held) };
}
