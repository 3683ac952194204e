import type { DiscValve } from '../geometry/disc-valve.js';
import type { Piston } from '../geometry/piston.js';
import { openingPressureOf, requireDiscValve } from '../valve/disc-valve.js';
import { requirePiston } from './piston.js';

/**
 * Pressure drop at which a disc begins to lift [Pa], whatever the oil: the pressure that, on its holes alone, bends it by its preload over
 * their centres, since up to then the seat is tight. Bending round the holes and stretching are in it.
 *
 * @param valve - one of the piston's
 * @param piston - with the holes that it covers
 * @throws InputError where it covers no holes, or holes without a common pitch circle
 * @example
 * ```ts
 * const piston = { diameter: 0.0115, thickness: 0.0025, holes: [{ count: 4, diameter: 0.0015, pitchDiameter: 0.007 }], eccentricity: 0 };
 * const slack = { face: 'shaft-side', covers: [0], outerDiameter: 0.0105, clampDiameter: 0.005, thickness: 1e-4, count: 1, elasticModulus: 2e11, poissonRatio: 0.3, preload: 0 } as const;
 * discOpeningPressure(slack, piston); // 0: without preload nothing holds it down
 * discOpeningPressure({ ...slack, preload: 1e-5 }, piston) > 0; // true: a preload does
 * ```
 * @public
 */
export function discOpeningPressure(valve: DiscValve, piston: Piston): number {
  requirePiston(piston);
  requireDiscValve(valve, piston, piston.diameter, 'valve');
  return openingPressureOf(valve, piston);
}
