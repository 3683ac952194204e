import { cumulativeNormal, quantileNormal } from 'vega-statistics';
import { requireFinite, requireWithin } from '../base/checks.js';

/** Least probability of either tail, below any that a sample comes to; the library loses digits further out. */
const leastTail = 1e-10;

/**
 * Quantile of the standard normal distribution, within 2e-12 of its size; within 1e-8 where either tail is below 1e-6.
 *
 * @param probability - 1e-10 to 1 − 1e-10
 * @throws InputError for a probability outside its range
 */
export function normalQuantile(probability: number): number {
  requireWithin(probability, leastTail, 1 - leastTail, 'probability', '');
  return quantileNormal(probability);
}

/**
 * Probability that a standard normal variable is below `z`, within 1e-15.
 *
 * @param z - standard deviations from the mean, any finite number
 * @throws InputError unless `z` is finite
 */
export function normalProbability(z: number): number {
  requireFinite(z, 'z', '');
  return cumulativeNormal(z);
}
