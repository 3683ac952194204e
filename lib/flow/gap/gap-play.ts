import { type AnnularGap, gapHeight, requireAnnularGap } from './annular-gap.js';

/** Extra length, in gap heights, that turning into the gap and out of it costs flow driven by pressure: own creeping solutions (docs/piston.md). */
const endLength = 1.25;

/** A piston that touches the bore at both ends, on opposite sides, and oil that stays on its side: `1 − t² + ⅜ t⁴` at the largest tilt. */
const leastAskew = 3 / 8;

/** A piston that touches the bore along its whole length, `1 + 1.5 ε²` at `ε` 1. */
const mostAside = 5 / 2;

/**
 * Bounds of the flow that a pressure drop drives through a gap, over that of a piston upright on the axis by the law without ends: the play of a piston
 * lets it sit anywhere from centred to touching, upright or askew.
 *
 * Most: touching along its whole length. Least: touching at both ends on opposite sides, no oil changing sides, the ends in. In a network of resistances any wall lowers the
 * flow and any short circuit raises it, so the truth of every place between lies within.
 *
 * @param gap - sizes above 0 m; its eccentricity does not count
 * @throws InputError for a size outside its range
 * @see thin-gap law of an eccentric annulus, integrated along a tilted piston here; Rayleigh's monotonicity of networks (from memory)
 * @example
 * ```ts
 * const gap = { bore: 0.012, pistonDiameter: 0.0118, length: 0.0025, eccentricity: 0 };
 * gapPlayBounds(gap).most; // 2.5: 1 + 1.5 ε² where it touches, ε = 1
 * ```
 * @public
 */
export function gapPlayBounds(gap: AnnularGap): { readonly least: number; readonly most: number } {
  requireAnnularGap(gap);
  return { least: leastAskew / (1 + (endLength * gapHeight(gap)) / gap.length), most: mostAside };
}

/**
 * Angle by which a piston can tilt until it touches the bore at both ends [rad], its middle on the axis: its play over its length.
 *
 * @param gap - sizes above 0 m
 * @throws InputError for a size outside its range
 * @example
 * ```ts
 * const gap = { bore: 0.012, pistonDiameter: 0.0118, length: 0.0025, eccentricity: 0 };
 * largestTilt(gap); // 0.08: 0.2 mm of play over 2.5 mm
 * ```
 * @public
 */
export function largestTilt(gap: AnnularGap): number {
  requireAnnularGap(gap);
  return (2 * gapHeight(gap)) / gap.length;
}
