import { requireCount, requireMoving, requireNotNegative, requirePositive } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import type { Shape } from '../../base/shape.js';

/**
 * How much a shaft speed counts.
 *
 * @public
 */
export interface WeightedSpeed {
  /** Shaft speed [m/s], not 0; positive in compression. */
  readonly speed: number;
  /** 0 or more; only the ratios matter. */
  readonly weight: number;
}

/** Form of {@link WeightedSpeed}. */
export const weightedSpeedShape: Shape = { speed: 'm/s', weight: '' };

/**
 * The shaft speeds over which damping is compared: a driving histogram, or a range.
 *
 * @public
 */
export type SpeedWeights = readonly WeightedSpeed[];

/** Throws unless there is a speed with weight, and no speed is 0. */
export function requireSpeedWeights(weights: SpeedWeights): void {
  let sum = 0;
  weights.forEach(({ speed, weight }, index) => {
    requireMoving(speed, `weights[${index}].speed`);
    requireNotNegative(weight, `weights[${index}].weight`, '');
    sum += weight;
  });
  requirePositive(sum, 'sum of the weights', '');
}

/**
 * Speeds of a range in both directions with equal weights, evenly spaced in their logarithm, since damping of a small shock matters as
 * much from 50 to 100 mm/s as from 500 to 1000 mm/s.
 *
 * @param slowest - [m/s], above 0
 * @param fastest - [m/s], not below the slowest
 * @param count - speeds in each direction, 1 or more; 5 are enough for a smooth curve
 * @throws InputError for a speed or a count outside its range
 * @public
 */
export function speedRange(slowest: number, fastest: number, count = 5): SpeedWeights {
  requirePositive(slowest, 'slowest', 'm/s');
  requirePositive(fastest, 'fastest', 'm/s');
  requireCount(count, 'count');
  if (fastest < slowest)
    throw new InputError({ field: 'fastest', value: fastest, unit: 'm/s', accepted: `${slowest} or more` });
  const ratio = fastest / slowest;
  const speeds = Array.from({ length: count }, (_, index) =>
    count === 1 ? Math.sqrt(slowest * fastest) : slowest * ratio ** (index / (count - 1)),
  );
  return [...speeds.map((speed) => -speed).reverse(), ...speeds].map((speed) => ({ speed, weight: 1 }));
}
