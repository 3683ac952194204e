import { requirePositive, requireRecord, requireWithin } from '../../base/checks.js';

/**
 * A round hole with straight walls and sharp edges.
 *
 * @public
 */
export interface Hole {
  /** Diameter [m], above 0. */
  readonly diameter: number;
  /** Length along the flow [m], above 0. */
  readonly length: number;
  /** Area of all holes of the piston over that of the bore, 0 to below 1; 0.04 by default, as four holes of 1.2 mm in a bore of 12 mm. */
  readonly areaRatio?: number;
}

/** Share of the bore that the holes of a piston take where nothing is said: 0.04, as four holes of 1.2 mm in a bore of 12 mm. */
export const typicalAreaRatio = 0.04;

/** Throws unless the hole has a size. */
export function requireHole(hole: Hole, field = 'hole'): void {
  requireRecord(hole, field);
  requirePositive(hole.diameter, `${field}.diameter`, 'm');
  requirePositive(hole.length, `${field}.length`, 'm');
  if (hole.areaRatio !== undefined) requireWithin(hole.areaRatio, 0, 0.99, `${field}.areaRatio`, '');
}

/**
 * Area of a hole [m²].
 *
 * @param hole - diameter above 0 m
 * @example
 * ```ts
 * holeArea({ diameter: 0.0013, length: 0.0025 }); // 1.327e-6: π/4 d², by hand
 * ```
 * @public
 */
export function holeArea(hole: Hole): number {
  requireHole(hole);
  return areaOfHole(hole);
}

/** {@link holeArea} of what was checked before. */
export function areaOfHole(hole: Hole): number {
  return (Math.PI / 4) * hole.diameter * hole.diameter;
}
