import type { DiscShape } from './disc-shape.js';

/** Gaps that never quite shut, so that film and contact stay smooth. */
export interface Gaps {
  readonly heights: Float64Array;
  /** Slope of each height over the deflection above the seat. */
  readonly slopes: Float64Array;
  /** How far each height exceeds the deflection: what the seat has to push back. */
  readonly overlaps: Float64Array;
}

/** Beyond this many softnesses a gap is the deflection itself. */
const open = 36;

/** `h = s ln(1 + e^(g/s))`: the gap itself where it is open, a rest of it where the disc lies on its seat. */
export function writeGap(gaps: Gaps, index: number, deflection: number, softness: number): void {
  const ratio = deflection / softness;
  const shut = ratio < open;
  const grown = shut ? Math.exp(Math.max(ratio, -open)) : 0;
  const height = shut ? softness * Math.log1p(grown) : deflection;
  gaps.heights[index] = height;
  gaps.slopes[index] = shut ? grown / (1 + grown) : 1;
  gaps.overlaps[index] = height - deflection;
}

/** Room for the gaps at some points. */
export function newGaps(count: number): Gaps {
  return {
    heights: new Float64Array(count),
    slopes: new Float64Array(count),
    overlaps: new Float64Array(count),
  };
}

/**
 * Conductance of an edge for its length, `w³/ℓ` with the extra length of film that turning in or out costs, and its slope over the gap:
 * `0.65 w + 0.2 w²/r` at a hole of radius `r`, `0.63 w/(1 + 0.27 w/land)` at the rim, the land from the edge of the holes. Own axisymmetric
 * solutions of a hole under a parallel disc, within 3 % for gaps of 0.06 to 0.47 of the land; the form at the rim stays above 0 beyond.
 */
export function edgeConductance(
  { pitchRadius, holeRadius, thickness }: DiscShape,
  atHole: boolean,
  height: number,
): { value: number; slope: number } {
  if (atHole) {
    const widening = (0.2 * thickness) / holeRadius;
    const length = thickness * (0.65 + widening * height);
    const value = height ** 2 / length;
    return { value, slope: (2 * height - value * thickness * widening) / length };
  }
  const land = 1 - pitchRadius - holeRadius;
  const narrowing = (0.27 * thickness) / land;
  const scale = 1 / (0.63 * thickness);
  return {
    value: scale * height ** 2 * (1 + narrowing * height),
    slope: scale * height * (2 + 3 * narrowing * height),
  };
}
