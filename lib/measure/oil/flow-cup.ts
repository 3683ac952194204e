import { requirePositive } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { oneOf, requireShape } from '../../base/shape.js';
import type { Warning } from '../../base/warning.js';

/**
 * A flow cup of a standard: Ford cups 1 to 5 of ASTM D1200, or cups with a hole of 3 mm to 6 mm of ISO 2431.
 *
 * @public
 */
export type FlowCup =
  | 'Ford 1'
  | 'Ford 2'
  | 'Ford 3'
  | 'Ford 4'
  | 'Ford 5'
  | 'ISO 3'
  | 'ISO 4'
  | 'ISO 5'
  | 'ISO 6';

/** `ν = slope (t − dead) − kinetic/t` [mm²/s, s], with the times it holds for. */
interface CupLine {
  readonly slope: number;
  readonly dead: number;
  readonly kinetic: number;
  readonly shortest: number;
  readonly longest: number;
}

const ford = (slope: number, dead: number, shortest: number): CupLine => ({
  slope,
  dead,
  kinetic: 0,
  shortest,
  longest: 100,
});
const iso = (slope: number, kinetic: number): CupLine => ({
  slope,
  dead: 0,
  kinetic,
  shortest: 30,
  longest: 100,
});

const cups: Readonly<Record<FlowCup, CupLine>> = {
  'Ford 1': ford(0.49, 35, 55),
  'Ford 2': ford(1.44, 18, 40),
  'Ford 3': ford(2.31, 6.58, 20),
  'Ford 4': ford(3.85, 4.49, 20),
  'Ford 5': ford(12.1, 2, 20),
  'ISO 3': iso(0.443, 200),
  'ISO 4': iso(1.37, 200),
  'ISO 5': iso(3.28, 220),
  'ISO 6': iso(6.9, 570),
};

/**
 * Kinematic viscosity of an oil by the time a flow cup takes to empty.
 *
 * @param cup - which
 * @param time - until the stream breaks [s], above 0; good for 55 to 100 (Ford 1), 40 to 100 (Ford 2), 20 to 100 (Ford 3 to 5), 30 to 100 (ISO)
 * @returns the viscosity [m²/s], with a warning outside those times, and one for the ISO cups, whose constants were not confirmed
 * @throws InputError for another cup, or a time that the cup's line makes no viscosity of
 * @see Ford: ASTM D1200, constants as public pages give them. ISO: ISO 2431, constants from memory
 * @public
 */
export function flowCupViscosity(
  cup: FlowCup,
  time: number,
): { readonly kinematicViscosity: number; readonly warnings: readonly Warning[] } {
  requireShape(
    { cup },
    { cup: oneOf('Ford 1', 'Ford 2', 'Ford 3', 'Ford 4', 'Ford 5', 'ISO 3', 'ISO 4', 'ISO 5', 'ISO 6') },
  );
  const line = cups[cup];
  requirePositive(time, 'time', 's');
  const kinematicViscosity = 1e-6 * (line.slope * (time - line.dead) - line.kinetic / time);
  if (!(kinematicViscosity > 0)) {
    const accepted = `${line.shortest} to ${line.longest}`;
    throw new InputError({ field: 'time', value: time, unit: 's', accepted });
  }
  const warnings: Warning[] = [];
  if (time < line.shortest || time > line.longest) {
    warnings.push({
      code: 'cup-time-outside',
      message: `The ${cup} cup is good for ${line.shortest} s to ${line.longest} s; take another cup`,
      value: time,
      limit: time < line.shortest ? line.shortest : line.longest,
    });
  }
  if (line.kinetic > 0) {
    const message = `The constants of the ${cup} cup are from memory and were not confirmed`;
    warnings.push({ code: 'cup-not-confirmed', message, value: time, limit: time });
  }
  return { kinematicViscosity, warnings };
}
