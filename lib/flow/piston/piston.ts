import {
  requireCount,
  requireEach,
  requirePositive,
  requireRecord,
  requireWithin,
} from '../../base/checks.js';
import { largestEccentricity } from '../gap/annular-gap.js';
import type { HoleGroup, Piston } from '../geometry/piston.js';
import { requireHolePitch } from '../hole/hole-pitch.js';
import { requireHoleShape, throatArea } from '../hole/hole-shape.js';

/** Throws unless each size of the piston is in its range, whatever the shape of its holes. */
export function requirePistonSizes(piston: Piston): void {
  requireRecord(piston, 'piston');
  requirePositive(piston.diameter, 'piston.diameter', 'm');
  requirePositive(piston.thickness, 'piston.thickness', 'm');
  requireWithin(piston.eccentricity, 0, largestEccentricity, 'piston.eccentricity', '');
  requireEach(piston.holes, 'piston.holes', (group, field) => {
    requireRecord(group, field);
    requireCount(group.count, `${field}.count`);
    requirePositive(group.diameter, `${field}.diameter`, 'm');
    requireWithin(group.diameter, 0, piston.diameter, `${field}.diameter`, 'm');
  });
}

/** Throws unless sizes, shapes and places of the holes are in their ranges. */
export function requirePiston(piston: Piston): void {
  requirePistonSizes(piston);
  piston.holes.forEach((group, index) => {
    requireHoleShape(group, piston.thickness, `piston.holes[${index}]`);
  });
  requireHolePitch(piston);
  if (piston.valves !== undefined) requireEach(piston.valves, 'piston.valves', requireRecord);
}

/**
 * Area of all holes together, each at its narrowest [m²].
 *
 * @param piston - sizes above 0 m
 * @example
 * ```ts
 * const piston = { diameter: 0.0115, thickness: 0.0025, holes: [{ count: 4, diameter: 0.0013 }], eccentricity: 0 };
 * totalHoleArea(piston); // 5.309e-6: 4 · π/4 d², by hand
 * ```
 * @public
 */
export function totalHoleArea(piston: Piston): number {
  requirePiston(piston);
  return areaOfHoles(piston);
}

/** {@link totalHoleArea} of what was checked before. */
export function areaOfHoles(piston: Piston): number {
  return piston.holes.reduce((sum, group) => sum + group.count * throatArea(group), 0);
}

/** Area of some holes together, each at its narrowest, over that of the bore. */
export function holeAreaRatio(holes: readonly HoleGroup[], bore: number): number {
  let area = 0;
  for (const group of holes) area += group.count * throatArea(group);
  return area / ((Math.PI / 4) * bore * bore);
}
