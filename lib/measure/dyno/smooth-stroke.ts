import { InputError } from '../../base/input-error.js';
import { localPolynomial } from '../../numeric/least-squares/local-polynomial.js';
import type { DynoStroke } from './linear-dyno.js';
import type { DynoRecord } from './read-dyno.js';

/** A step so much longer than the usual one is a gap. */
const longestStep = 1.5;
/** Degree of the polynomial: bends of travel and force within a window are followed. */
const degree = 2;

function requireEvenTime(time: readonly number[]): number {
  const steps = time.slice(1).map((value, index) => value - time[index]!);
  const usual = [...steps].sort((first, second) => first - second)[Math.floor(steps.length / 2)]!;
  const gap = steps.findIndex((step) => step > longestStep * usual || step < usual / longestStep);
  if (gap >= 0) {
    throw new InputError({
      field: 'time',
      value: `${steps[gap]?.toPrecision(3)} s`,
      accepted: `a step near ${usual.toPrecision(3)} s between rows ${gap + 1} and ${gap + 2}, since speed is not taken across a gap; cut the record there`,
    });
  }
  return usual;
}

/**
 * Speed from travel, and travel and force smoothed by the same window, so that neither lags the other: a filter on one channel alone would look like a
 * spring.
 *
 * @param record - with time and travel
 * @param halfWidth - samples on each side of the middle of a window, 1 or more
 * @returns the samples whose window lies inside the record
 * @throws InputError for a record without time or travel, with a gap, or shorter than a window
 */
export function smoothStroke(record: DynoRecord, halfWidth: number): DynoStroke {
  const { time, travel, force } = record;
  if (time === undefined || travel === undefined) {
    throw new InputError({ field: 'travel', value: 'none', accepted: 'columns of time and travel' });
  }
  const step = requireEvenTime(time);
  if (force.length <= 2 * halfWidth) {
    throw new InputError({ field: 'rows', value: force.length, accepted: `more than ${2 * halfWidth}` });
  }
  const weights = localPolynomial(halfWidth, degree);
  const middles = force.slice(2 * halfWidth).map((_, index) => index + halfWidth);
  const over = (values: readonly number[], kernel: readonly number[], middle: number): number =>
    kernel.reduce((sum, weight, index) => sum + weight * values[middle - halfWidth + index]!, 0);
  return {
    time: middles.map((middle) => time[middle]!),
    travel: middles.map((middle) => over(travel, weights.value, middle)),
    speed: middles.map((middle) => over(travel, weights.slope, middle) / step),
    force: middles.map((middle) => over(force, weights.value, middle)),
  };
}
