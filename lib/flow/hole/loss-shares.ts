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

/** Reynolds number at which inertia sets in, `x = Re / 35.6`. */
export const sharpOnset = 35.6;
