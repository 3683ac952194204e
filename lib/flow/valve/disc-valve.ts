import { requireCount, requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { openingPressure, preparePlate } from '../disc/plate.js';
import type { DiscValve } from '../geometry/disc-valve.js';
import type { Piston } from '../geometry/piston.js';
import { coveredHoles, pressureUnit, shapeOf } from './disc-units.js';

/** Diameter of the circle on which the centres of the covered holes lie [m]. */
export function coveredPitchDiameter(valve: DiscValve, piston: Piston, field: string): number {
  const [first = 0] = valve.covers;
  const pitch = piston.holes[first]?.pitchDiameter;
  for (const index of valve.covers) {
    const group = piston.holes[index];
    if (group === undefined) {
      throw new InputError({
        field: `${field}.covers`,
        value: index,
        accepted: `an index of a hole group, 0 to ${piston.holes.length - 1}`,
        limits: { from: 0, to: piston.holes.length - 1 },
      });
    }
    if (group.pitchDiameter === undefined || group.pitchDiameter !== pitch) {
      throw new InputError({
        field: `piston.holes[${index}].pitchDiameter`,
        value: group.pitchDiameter,
        unit: 'm',
        accepted: `given and the same for each hole group under ${field}`,
      });
    }
  }
  if (pitch === undefined) {
    throw new InputError({
      field: `${field}.covers`,
      value: 'no hole group',
      accepted: 'at least one hole group',
    });
  }
  return pitch;
}

/** Throws unless the disc covers its holes, fits into the bore and can lift. */
export function requireDiscValve(valve: DiscValve, piston: Piston, bore: number, field: string): void {
  requirePositive(valve.outerDiameter, `${field}.outerDiameter`, 'm');
  requirePositive(valve.clampDiameter, `${field}.clampDiameter`, 'm');
  requirePositive(valve.thickness, `${field}.thickness`, 'm');
  requireCount(valve.count, `${field}.count`);
  requirePositive(valve.elasticModulus, `${field}.elasticModulus`, 'Pa');
  requireWithin(valve.poissonRatio, 0, 0.49, `${field}.poissonRatio`, '');
  requireNotNegative(valve.preload, `${field}.preload`, 'm');
  if (valve.largestLift !== undefined) requirePositive(valve.largestLift, `${field}.largestLift`, 'm');
  if (valve.outerDiameter > bore) {
    throw new InputError({
      field: `${field}.outerDiameter`,
      value: valve.outerDiameter,
      unit: 'm',
      accepted: `at most the bore of ${bore}`,
      limits: { to: bore },
    });
  }
  requireDiscPlace(valve, piston, field);
}

/** Throws unless the disc lies over the whole of the holes it covers and is clamped inside them. */
export function requireDiscPlace(valve: DiscValve, piston: Piston, field: string): void {
  const pitch = coveredPitchDiameter(valve, piston, field);
  const widest = Math.max(...valve.covers.map((index) => piston.holes[index]?.diameter ?? 0));
  const [near, far] = [pitch - widest, pitch + widest];
  if (valve.outerDiameter <= far) {
    throw new InputError({
      field: `${field}.outerDiameter`,
      value: valve.outerDiameter,
      unit: 'm',
      accepted: `above ${far}, the far edge of the holes it covers,`,
      limits: { above: far },
    });
  }
  if (valve.clampDiameter >= near) {
    throw new InputError({
      field: `${field}.clampDiameter`,
      value: valve.clampDiameter,
      unit: 'm',
      accepted: `below ${near}, the near edge of the holes it covers,`,
      limits: { below: near },
    });
  }
}

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
  const pitch = coveredPitchDiameter(valve, piston, 'valve');
  const groups = valve.covers.flatMap((index) => piston.holes[index] ?? []);
  const plate = preparePlate(shapeOf(valve, coveredHoles(groups, valve.face, pitch)));
  return openingPressure(plate) * pressureUnit(valve);
}
