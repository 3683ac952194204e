import type { DiscValve } from './disc-valve.js';
import type { HoleShape } from './hole-shape.js';

/**
 * Holes of one size in a piston.
 *
 * @public
 */
export interface HoleGroup {
  /** How many holes of this size, 1 or more. */
  readonly count: number;
  /** Hole diameter [m], above 0; of a tapered or stepped hole the diameter at the blind side, of a slot its width. */
  readonly diameter: number;
  /** Shape; straight with sharp edges by default. */
  readonly shape?: HoleShape;
  /** Diameter of the circle on which the centres lie [m]; needed under a disc valve, and to find holes that overlap. */
  readonly pitchDiameter?: number;
}

/**
 * A piston: holes in parallel with the gap between its rim and the bore.
 *
 * @public
 */
export interface Piston {
  /** Outer diameter [m], above 0 and below the bore. */
  readonly diameter: number;
  /** Thickness [m], above 0: the length of each hole and of the rim. */
  readonly thickness: number;
  /** Hole groups; may be empty for a piston that leaks only at its rim. */
  readonly holes: readonly HoleGroup[];
  /** How far the piston stands off centre, as a fraction of the radial gap, 0 (centred) to 0.99 (all but touching). */
  readonly eccentricity: number;
  /** Thin discs that shut some of the holes in one direction. */
  readonly valves?: readonly DiscValve[];
}
