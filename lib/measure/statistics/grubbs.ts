import { requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { listOf, requireShape } from '../../base/shape.js';
import { studentQuantile } from '../../numeric/quantiles.js';

/**
 * The value of a set of repeats that lies farthest from the others.
 *
 * @public
 */
export interface OddValue {
  readonly index: number;
  readonly value: number;
  /** Its distance from the mean, in standard deviations of the set. */
  readonly distance: number;
  /** Distance that one of so many repeats passes by chance 1 time in 20. */
  readonly critical: number;
}

/**
 * Critical distance of the farthest of some normal values.
 *
 * @param count - values, 3 or more
 * @param probability - that chance passes it, above 0 and below 1
 * @param sided - whether the farthest may lie on either side (2) or one (1)
 * @see Grubbs & Beck, Technometrics 14 (1972) 847; ISO 5725-2, table 5
 * @public
 */
export function grubbsCritical(count: number, probability = 0.05, sided: 1 | 2 = 2): number {
  requireShape({ count, sided }, { count: '', sided: '' });
  if (!(Number.isSafeInteger(count) && count >= 3)) {
    throw new InputError({ field: 'count', value: count, accepted: 'a whole number of 3 or more' });
  }
  requireWithin(probability, Number.MIN_VALUE, 0.5, 'probability', '');
  const quantile = studentQuantile(1 - probability / sided / count, count - 2);
  return ((count - 1) / Math.sqrt(count)) * Math.sqrt(quantile ** 2 / (count - 2 + quantile ** 2));
}

/**
 * The repeat that does not go with the others, by Grubbs' test once, two-sided, 1 in 20. It is to be shown, and kept unless its owner knows why it
 * is off.
 *
 * @param values - repeats of one measurement
 * @returns the odd one; `undefined` where none is, or below 5 values
 * @public
 */
export function oddValue(values: readonly number[]): OddValue | undefined {
  requireShape({ values }, { values: listOf('') });
  const count = values.length;
  if (count < 5) return undefined;
  const mean = values.reduce((sum, value) => sum + value, 0) / count;
  const deviation = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (count - 1));
  if (!(deviation > 0)) return undefined;
  const distances = values.map((value) => Math.abs(value - mean) / deviation);
  const distance = Math.max(...distances);
  const index = distances.indexOf(distance);
  const critical = grubbsCritical(count);
  return distance > critical ? { index, value: values[index]!, distance, critical } : undefined;
}
