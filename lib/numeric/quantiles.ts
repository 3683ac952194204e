import jstat from 'jstat';
import { requirePositive, requireWithin } from '../base/checks.js';

function requireProbability(probability: number): void {
  requireWithin(probability, Number.MIN_VALUE, 1 - 2 ** -53, 'probability', '');
}

/**
 * Quantile of Student's t distribution, good to about 1e-7.
 *
 * @param probability - above 0 and below 1
 * @param degreesOfFreedom - above 0
 * @throws InputError for an input outside its range
 * @public
 */
export function studentQuantile(probability: number, degreesOfFreedom: number): number {
  requireProbability(probability);
  requirePositive(degreesOfFreedom, 'degreesOfFreedom', '');
  return jstat.studentt.inv(probability, degreesOfFreedom);
}

/**
 * Quantile of the chi-square distribution, good to about 1e-10.
 *
 * @param probability - above 0 and below 1
 * @param degreesOfFreedom - above 0
 * @throws InputError for an input outside its range
 * @public
 */
export function chiSquareQuantile(probability: number, degreesOfFreedom: number): number {
  requireProbability(probability);
  requirePositive(degreesOfFreedom, 'degreesOfFreedom', '');
  return jstat.chisquare.inv(probability, degreesOfFreedom);
}

/**
 * Probability that chi-square is above a value by chance.
 *
 * @param value - 0 or more
 * @param degreesOfFreedom - above 0
 * @throws InputError for an input outside its range
 * @public
 */
export function chiSquareTail(value: number, degreesOfFreedom: number): number {
  requireWithin(value, 0, Number.MAX_VALUE, 'value', '');
  requirePositive(degreesOfFreedom, 'degreesOfFreedom', '');
  return Math.max(0, 1 - jstat.chisquare.cdf(value, degreesOfFreedom));
}

/**
 * Quantile of the F distribution, good to about 1e-7.
 *
 * @param probability - above 0 and below 1
 * @param above - degrees of freedom of the numerator, above 0
 * @param below - degrees of freedom of the denominator, above 0
 * @throws InputError for an input outside its range
 * @public
 */
export function fQuantile(probability: number, above: number, below: number): number {
  requireProbability(probability);
  requirePositive(above, 'above', '');
  requirePositive(below, 'below', '');
  return jstat.centralF.inv(probability, above, below);
}
