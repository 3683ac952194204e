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
 * @public
 */
export function discOpeningPressure(valve: DiscValve, piston: Piston): number {
  requirePiston(piston);
  requireDiscValve(valve, piston, piston.diameter, 'valve');
  return openingPressureOf(valve, piston);
}
