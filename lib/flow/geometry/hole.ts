import { requirePositive } from '../../base/checks.js';

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
}

/** Throws unless the hole has a size. */
export function requireHole(hole: Hole, field = 'hole'): void {
  requirePositive(hole.diameter, `${field}.diameter`, 'm');
  requirePositive(hole.length, `${field}.length`, 'm');
}

/**
 * Area of a hole [m²].
 *
 * @param hole - diameter above 0 m
 * @public
 */
export function holeArea(hole: Hole): number {
  return (Math.PI / 4) * hole.diameter * hole.diameter;
}
