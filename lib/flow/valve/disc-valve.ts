import { refuse, requireEach, requireFinite, requireWord } from '../../base/checks.js';
import { openingPressure, preparePlate } from '../disc/plate.js';
import type { DiscValve } from '../geometry/disc-valve.js';
import type { Piston } from '../geometry/piston.js';
import {
  coveredHoles,
  pressureUnit,
  requireCoveredDiameter,
  requireDiscSizes,
  shapeOf,
} from './disc-units.js';

/** Diameter of the circle on which the centres of the covered holes lie [m]. */
export function coveredPitchDiameter(valve: DiscValve, piston: Piston, field: string): number {
  const { covers } = valve;
  const pitch = piston.holes[covers[0]!]?.pitchDiameter;
  for (const [place, index] of covers.entries()) {
    const group = piston.holes[index];
    if (group === undefined || covers.indexOf(index) < place) {
      refuse(
        index,
        `${field}.covers`,
        '',
        `an index of a hole group, each once, 0 to ${piston.holes.length - 1}`,
        {
          from: 0,
          to: piston.holes.length - 1,
        },
      );
    }
    if (group.pitchDiameter === undefined || group.pitchDiameter !== pitch) {
      refuse(
        group.pitchDiameter,
        `piston.holes[${index}].pitchDiameter`,
        'm',
        `given and the same for each hole group under ${field}`,
      );
    }
  }
  if (pitch === undefined) {
    refuse('no hole group', `${field}.covers`, '', 'at least one hole group');
  }
  return pitch;
}

/** Throws unless the disc covers its holes, fits into the bore and can lift. */
export function requireDiscValve(valve: DiscValve, piston: Piston, bore: number, field: string): void {
  requireDiscSizes(valve, field);
  requireWord(valve.face, ['shaft-side', 'blind-side'], `${field}.face`);
  requireEach(valve.covers, `${field}.covers`, (index, at) => requireFinite(index, at, ''));
  if (valve.outerDiameter > bore) {
    refuse(valve.outerDiameter, `${field}.outerDiameter`, 'm', `at most the bore of ${bore}`, { to: bore });
  }
  requireDiscPlace(valve, piston, field);
}

/** Throws unless the disc lies over the whole of the holes it covers and is clamped inside them. */
export function requireDiscPlace(valve: DiscValve, piston: Piston, field: string): void {
  const pitch = coveredPitchDiameter(valve, piston, field);
  for (const index of valve.covers) {
    requireCoveredDiameter(piston.holes[index]!.diameter, `piston.holes[${index}].diameter`);
  }
  const widest = Math.max(...valve.covers.map((index) => piston.holes[index]!.diameter));
  const [near, far] = [pitch - widest, pitch + widest];
  if (valve.outerDiameter <= far) {
    refuse(
      valve.outerDiameter,
      `${field}.outerDiameter`,
      'm',
      `above ${far}, the far edge of the holes it covers,`,
      { above: far },
    );
  }
  if (valve.clampDiameter >= near) {
    refuse(
      valve.clampDiameter,
      `${field}.clampDiameter`,
      'm',
      `below ${near}, the near edge of the holes it covers,`,
      { below: near },
    );
  }
}

/** Pressure drop at which a disc begins to lift [Pa], of a valve and a piston that were checked before. */
export function openingPressureOf(valve: DiscValve, piston: Piston): number {
  const pitch = coveredPitchDiameter(valve, piston, 'valve');
  const groups = valve.covers.map((index) => piston.holes[index]!);
  const plate = preparePlate(shapeOf(valve, coveredHoles(groups, valve.face, pitch)));
  return openingPressure(plate) * pressureUnit(valve);
}
