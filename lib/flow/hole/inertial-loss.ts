/**
 * What inertia costs in a hole, in units of the dynamic pressure of its narrowest section.
 *
 * @public
 */
export interface InertialLossShares {
  /** Length over diameter of the narrowest section, above 0. */
  readonly lengthRatio: number;
  /** Kinetic energy thrown away at the exit; 1 for a straight hole. */
  readonly exit: number;
  /** Excess loss of a profile that develops fully along the hole; 1.25 for a round tube (Shah 1978). */
  readonly development: number;
  /** Loss of a jet that contracts at the entrance and never touches the wall again; 1.68 for a sharp edge. */
  readonly contraction: number;
  /** Reynolds number at which inertia sets in; 27 for a sharp straight hole. */
  readonly onset: number;
  /** What a widening hole loses more once the jet leaves its wall, and the Reynolds number at which half of it does. */
  readonly separation?: { readonly loss: number; readonly reynoldsNumber: number };
}

/** Developed profile of a round tube: Shah, J. Fluids Eng. 100 (1978) 177. */
export const developedExcessLoss = 1.25;

/** Thin plate, `1/C_c² − 1` with Kirchhoff's `C_c = π/(π + 2) = 0.611`. */
export const freeJetLoss = 1.68;

/** Entrance loss of a wall boundary layer, `13.76 sqrt(x⁺)`, the short-hole limit of Shah's formula. */
const boundaryLayerLoss = 13.76;

// The five numbers below are fitted to the numerical reference (docs/hole-law.md); rounding them to these digits costs nothing.
/** Reynolds number at which inertia sets in, `x = Re / 27`. */
export const sharpOnset = 27;
const onsetBend = 0.25;
const bubbleAtRest = 0.1;
const bubblePerReynoldsNumber = 1 / 2000;
/** Above this the jet is turbulent and its lengths no longer grow with the Reynolds number. */
const turbulentReynoldsNumber = 3000;
const perTurbulent = 1 / turbulentReynoldsNumber;

/** Filled and read within one call and never handed out. */
const both = new Float64Array(2);

/**
 * Loss coefficient and its slope over the Reynolds number.
 *
 * @public
 */
export interface InertialLoss {
  readonly coefficient: (reynoldsNumber: number) => number;
  readonly slope: (reynoldsNumber: number) => number;
  /** Writes both, coefficient and slope, at little more than the cost of one. */
  readonly look: (reynoldsNumber: number, out: Float64Array) => void;
}

/** Of a hole that does not widen. */
const noSeparation = { loss: 0, reynoldsNumber: 1 } as const;

/** `(K_d/13.76)² / (L/d)`, so that `(K_d/13.76)² / x⁺` is this times the Reynolds number. */
export function profileGrowth(development: number, lengthRatio: number): number {
  const ratio = development / boundaryLayerLoss;
  return (ratio * ratio) / lengthRatio;
}

/**
 * Writes loss coefficient and slope into the first two places. It takes its numbers one by one: where each hole is asked a few times
 * only, putting them into an object takes longer than the law.
 */
export function lookAtLoss(
  reynoldsNumber: number,
  lengthRatio: number,
  growth: number,
  exit: number,
  development: number,
  contraction: number,
  perOnset: number,
  separationLoss: number,
  separationReynoldsNumber: number,
  out: Float64Array,
): void {
  // Written with few divisions and roots, each of which costs as much as ten products.
  const x = reynoldsNumber * perOnset;
  const y = reynoldsNumber * perTurbulent;
  const calm = 1 / Math.sqrt(1 + y * y);
  const laminar = reynoldsNumber * calm;
  const bubble = bubbleAtRest + bubblePerReynoldsNumber * laminar;
  const perSpan = 1 / (bubble + lengthRatio);
  const covered = bubble * perSpan;
  const perGrown = 1 / (1 + growth * laminar);
  const developing = development * Math.sqrt(perGrown);
  const perBend = 1 / (1 + onsetBend * x + x * x);
  const rootPerBend = Math.sqrt(perBend);
  let full = exit + developing + contraction * covered * covered;
  let fullSlope =
    (2 * contraction * covered * bubblePerReynoldsNumber * lengthRatio * perSpan * perSpan -
      0.5 * developing * growth * perGrown) *
    (calm * calm * calm);
  if (separationLoss > 0) {
    const attached = (separationReynoldsNumber / reynoldsNumber) ** 4;
    full += separationLoss / (1 + attached);
    // Far below, where the power has no number, nothing separates.
    if (attached < 1e100)
      fullSlope += (4 * separationLoss * attached) / (reynoldsNumber * (1 + attached) ** 2);
  }
  const onset = x * rootPerBend;
  out[0] = full * onset;
  out[1] = full * (1 + (onsetBend / 2) * x) * perOnset * perBend * rootPerBend + fullSlope * onset;
}

/** {@link inertialLoss} as {@link InertialLoss.look} alone. */
export function inertialLook({
  separation = noSeparation,
  ...shares
}: InertialLossShares): InertialLoss['look'] {
  const { lengthRatio, exit, development, contraction } = shares;
  const growth = profileGrowth(development, lengthRatio);
  const perOnset = 1 / shares.onset;
  const { loss, reynoldsNumber: separated } = separation;
  return (reynoldsNumber, out) =>
    lookAtLoss(
      reynoldsNumber,
      lengthRatio,
      growth,
      exit,
      development,
      contraction,
      perOnset,
      loss,
      separated,
      out,
    );
}

/**
 * Loss coefficient by inertia of a hole,
 * `ζ = F(Re) · [exit + K(x⁺) + contraction / (1 + (L/d)/ℓ)²]`, each term a mechanism:
 *
 * - `F = x / sqrt(1 + x/4 + x²)`, `x = Re/onset`: the onset. In creeping flow the oil closes up behind the hole as it
 *   opened before it, and nothing is lost by inertia;
 * - exit: the kinetic energy of the jet, lost in the chamber behind;
 * - `K = K_d / sqrt(1 + (K_d/13.76)² / x⁺)`, `x⁺ = (L/d)/Re`: the profile develops from flat to parabolic;
 * - contraction: the jet narrows behind a sharp edge. Its bubble is `ℓ = 0.1 + Re/2000` diameters long; where the hole is
 *   longer, the jet lands on the wall and most of the loss is won back.
 *
 * A hole that widens adds `separation / (1 + (Re_s/Re)⁴)`. `Re` in `x⁺` and `ℓ` levels off at 3000, where the jet turns turbulent.
 *
 * @param shares - length ratio above 0, losses 0 or more
 * @public
 */
export function inertialLoss(shares: InertialLossShares): InertialLoss {
  const look = inertialLook(shares);
  const part =
    (place: number) =>
    (reynoldsNumber: number): number => {
      look(reynoldsNumber, both);
      return both[place] ?? 0;
    };
  return { coefficient: part(0), slope: part(1), look };
}
