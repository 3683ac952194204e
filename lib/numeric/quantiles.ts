import jstat from 'jstat';
import { requireWithin } from '../base/checks.js';

function requireProbability(probability: number): void {
  requireWithin(probability, 1e-20, 1 - 2 ** -53, 'probability', '');
}

/** Degrees of freedom in which the searches of the package end and keep their digits. */
function requireDegrees(degrees: number, field: string): void {
  requireWithin(degrees, 0.1, 1e6, field, '');
}

/**
 * Quantile of Student's t distribution, good to about 1e-7.
 *
 * @param probability - 1e-20 to 1 − 2⁻⁵³
 * @param degreesOfFreedom - 0.1 to 1e6
 * @throws InputError for an input outside its range
 * @public
 */
export function studentQuantile(probability: number, degreesOfFreedom: number): number {
  requireProbability(probability);
  requireDegrees(degreesOfFreedom, 'degreesOfFreedom');
  return jstat.studentt.inv(probability, degreesOfFreedom);
}

/**
 * Quantile of the chi-square distribution, good to about 1e-10.
 *
 * @param probability - 1e-20 to 1 − 2⁻⁵³
 * @param degreesOfFreedom - 0.1 to 1e6
 * @throws InputError for an input outside its range
 * @example
 * ```ts
 * chiSquareQuantile(0.95, 1); // 3.841: printed in every table of the chi-square distribution
 * ```
 * @public
 */
export function chiSquareQuantile(probability: number, degreesOfFreedom: number): number {
  requireProbability(probability);
  requireDegrees(degreesOfFreedom, 'degreesOfFreedom');
  return jstat.chisquare.inv(probability, degreesOfFreedom);
}

/**
 * Probability that chi-square is above a value by chance.
 *
 * @param value - 0 or more
 * @param degreesOfFreedom - 0.1 to 1e6
 * @throws InputError for an input outside its range
 * @public
 */
export function chiSquareTail(value: number, degreesOfFreedom: number): number {
  requireWithin(value, 0, Number.MAX_VALUE, 'value', '');
  requireDegrees(degreesOfFreedom, 'degreesOfFreedom');
  return Math.max(0, 1 - jstat.chisquare.cdf(value, degreesOfFreedom));
}

/**
 * Quantile of the F distribution, good to about 1e-7.
 *
 * @param probability - 1e-20 to 1 − 2⁻⁵³
 * @param above - degrees of freedom of the numerator, 0.1 to 1e6
 * @param below - degrees of freedom of the denominator, 0.1 to 1e6
 * @throws InputError for an input outside its range
 * @public
 */
export function fQuantile(probability: number, above: number, below: number): number {
  requireProbability(probability);
  requireDegrees(above, 'above');
  requireDegrees(below, 'below');
  return jstat.centralF.inv(probability, above, below);
}
