/**
 * A disc over evenly spaced holes. Radii over the outer radius of the disc, deflections over its thickness; with these, pressure over
 * `stiffness · thickness / radius⁴` and flow over `pressure · thickness³ / 12 μ` know neither oil nor elastic modulus.
 */
export interface DiscShape {
  /** How many holes it covers. */
  readonly holes: number;
  readonly clampRadius: number;
  readonly pitchRadius: number;
  readonly holeRadius: number;
  /** Thickness over outer radius. */
  readonly thickness: number;
  readonly poissonRatio: number;
  /** How far the seat bends it at the holes, over its thickness. */
  readonly preload: number;
}

/** Angle between a hole and the plane of symmetry half way to the next. */
export function sectorAngle({ holes }: DiscShape): number {
  return Math.PI / holes;
}
