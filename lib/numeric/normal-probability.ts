import { requireFinite } from '../base/checks.js';
import { normalQuantile } from './normal-quantile.js';
import { bracketedRoot } from './root-finding.js';

/** Beyond this many standard deviations the probability is below 1e-307. */
const farthest = 37.4;

/**
 * Probability that a standard normal variable is below `z`: {@link normalQuantile} solved backwards.
 *
 * @param z - standard deviations from the mean, any finite number
 * @throws InputError unless `z` is finite
 */
export function normalProbability(z: number): number {
  requireFinite(z, 'z', '');
  if (z > 0) return 1 - normalProbability(-z);
  if (z < -farthest) return 0;
  // In the logarithm of the probability, so that far tails keep their digits.
  const lowest = Math.log(1e-307);
  const excess = (logarithm: number): number => normalQuantile(Math.exp(logarithm)) - z;
  return Math.exp(bracketedRoot(excess, lowest, Math.log(0.5), 'normal probability').root);
}
