import { requireCount, requirePositive, requireWithin } from '../../base/checks.js';
import { largestEccentricity } from '../gap/annular-gap.js';
import { requireHolePitch } from '../hole/hole-pitch.js';
import { type HoleShape, requireHoleShape, throatArea } from '../hole/hole-shape.js';
import type { DiscValve } from '../valve/disc-valve.js';

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

/** Throws unless each size of the piston is in its range, whatever the shape of its holes. */
export function requirePistonSizes(piston: Piston): void {
  requirePositive(piston.diameter, 'piston.diameter', 'm');
  requirePositive(piston.thickness, 'piston.thickness', 'm');
  requireWithin(piston.eccentricity, 0, largestEccentricity, 'piston.eccentricity', '');
  piston.holes.forEach((group, index) => {
    requireCount(group.count, `piston.holes[${index}].count`);
    requirePositive(group.diameter, `piston.holes[${index}].diameter`, 'm');
    requireWithin(group.diameter, 0, piston.diameter, `piston.holes[${index}].diameter`, 'm');
  });
}

/** Throws unless sizes, shapes and places of the holes are in their ranges. */
export function requirePiston(piston: Piston): void {
  requirePistonSizes(piston);
  piston.holes.forEach((group, index) => {
    requireHoleShape(group, piston.thickness, `piston.holes[${index}]`);
  });
  requireHolePitch(piston);
}

/**
 * Area of all holes together, each at its narrowest [m²].
 *
 * @param piston - sizes above 0 m
 * @public
 */
export function totalHoleArea(piston: Piston): number {
  return piston.holes.reduce((sum, group) => sum + group.count * throatArea(group), 0);
}
