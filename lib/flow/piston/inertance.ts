import { apparentLength } from '../hole/apparent-mass.js';
import type { HolePath } from '../hole/hole-path.js';
import type { PistonFlow } from './parallel-flow.js';

/** Holes that the oil is sped up in: those open both ways, or those under discs where there are no others. */
export function swingingHoles({ paths, valves }: Pick<PistonFlow, 'paths' | 'valves'>): readonly HolePath[] {
  return paths.length > 0 ? paths : valves.flatMap(({ holes }) => holes);
}

/**
 * Inertance of the holes of a piston side by side [Pa·s²/m³]: pressure that speeds up the oil in and about them, per rate of the flow. Each hole by its
 * narrowest diameter and its whole length; 0 without holes. With an open disc valve beside open holes it is less.
 */
export function pistonInertance(flow: Pick<PistonFlow, 'paths' | 'valves'>, density: number): number {
  let admittance = 0;
  for (const { area, diameter, lengthRatio } of swingingHoles(flow)) {
    admittance += area / (density * apparentLength({ diameter, length: lengthRatio * diameter }));
  }
  return admittance > 0 ? 1 / admittance : 0;
}
