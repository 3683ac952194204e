import { refuse } from '../../base/checks.js';
import { requireShape } from '../../base/shape.js';
import { fromSquareMillimetres } from './square-millimetres.js';
import type { ViscosityInterval } from './viscosity-interval.js';

/** Grade number and its midpoint [mm²/s] at 40 °C; from VG 10 on they are the same. */
const midpoints: ReadonlyMap<number, number> = new Map([
  [2, 2.2],
  [3, 3.2],
  [5, 4.6],
  [7, 6.8],
  ...[10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200].map(
    (grade): [number, number] => [grade, grade],
  ),
]);

/** Half width of a grade, as a fraction of the midpoint. */
const tolerance = 0.1;

/** Temperature [K] at which ISO grades are stated. */
export const isoGradeTemperature = 313.15;

/**
 * Kinematic viscosity [m²/s] at 40 °C of an ISO viscosity grade: the midpoint, and the limits 10 % below and above it.
 *
 * @param grade - number of the grade: 2, 3, 5, 7, 10, 15, 22, 32, 46, 68, 100 and so on to 3200
 * @throws InputError where no such grade exists
 * @see ISO 3448:1992, table 1 (also ASTM D2422); the grades are from memory
 * @example
 * ```ts
 * isoGradeViscosity(46).typical; // 46e-6: ISO 3448
 * isoGradeViscosity(46).high; // 50.6e-6: ISO 3448, 10 % above
 * ```
 * @public
 */
export function isoGradeViscosity(grade: number): ViscosityInterval {
  requireShape({ grade }, { grade: '' });
  const midpoint = midpoints.get(grade);
  if (midpoint === undefined) {
    refuse(grade, 'grade', '', `one of ${[...midpoints.keys()].join(', ')}`);
  }
  return {
    low: fromSquareMillimetres(midpoint * (1 - tolerance)),
    typical: fromSquareMillimetres(midpoint),
    high: fromSquareMillimetres(midpoint * (1 + tolerance)),
  };
}
