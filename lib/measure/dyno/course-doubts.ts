import { median } from './median.js';
import type { RecordedCourse } from './read-course.js';

/** A step so many times the usual one is a gap. */
const gapFactor = 5;

/** A stretch of a recording in which nothing was written down. */
export interface Gap {
  /** Rows at its ends, counted from 1. */
  readonly rows: readonly [number, number];
  /** [s] */
  readonly length: number;
}

/** The longest stretch that is much longer than the usual step, while the length changes; undefined where there is none. */
export function longestGap({ times, values }: RecordedCourse): Gap | undefined {
  const steps = times.slice(1).map((time, index) => time - times[index]!);
  const usual = median(steps);
  return steps
    .map((length, index): Gap => ({ rows: [index + 1, index + 2], length }))
    .filter(({ length, rows: [row] }) => length > gapFactor * usual && values[row] !== values[row - 1])
    .reduce<Gap | undefined>((a, b) => (a === undefined || b.length > a.length ? b : a), undefined);
}

/**
 * Speed that the last digit of a recording pretends [m/s]: its smallest change of length over the usual step. Undefined where few rows repeat a value, so that no digit
 * shows.
 */
export function speedOfLastDigit({ times, values }: RecordedCourse): number | undefined {
  const changes = values.slice(1).map((value, index) => Math.abs(value - values[index]!));
  const still = changes.filter((change) => change === 0).length;
  if (values.length < 20 || still < changes.length / 5) return undefined;
  const smallest = Math.min(...changes.filter((change) => change > 0));
  if (!Number.isFinite(smallest)) return undefined;
  return smallest / median(times.slice(1).map((time, index) => time - times[index]!));
}
