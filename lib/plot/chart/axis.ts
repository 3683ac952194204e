import { extent, nice } from 'd3-array';
import { InputError } from '../../base/input-error.js';
import { listOf, oneOf, optional, type Shape, someText } from '../../base/shape.js';
import { roundedText } from '../../units/index.js';
import { fontSize } from './layout.js';
import { type Column, columnHeading, displayNumber } from './table.js';
import { textWidth } from './text-width.js';

/**
 * An axis: its label and unit, and the part of the scale that is shown.
 *
 * @public
 */
export interface Axis extends Column {
  /** Ends of the axis, in the same unit as the data; found from the data where left out. */
  readonly domain?: readonly [number, number];
}

/** Form of {@link Axis}. */
export const axisShape: Shape = {
  domain: optional(listOf('')),
  label: someText,
  unit: someText,
  dimension: optional(
    oneOf(
      'temperature',
      'kinematicViscosity',
      'density',
      'force',
      'springRate',
      'length',
      'area',
      'volume',
      'temperatureDifference',
      'dynamicViscosity',
      'pressure',
      'speed',
      'volumeStiffness',
      'frequency',
      'mass',
      'time',
      'angle',
      'ratio',
    ),
  ),
  digits: optional(''),
};

/** Where an axis ends unless its domain is given: at the data, or at round numbers about them (and zero). */
export type AxisEnds = 'data' | 'round' | 'round with zero';

/**
 * Ends of an axis in the unit shown.
 *
 * @param axis - the axis
 * @param values - the data in the unit shown
 * @param ends - where it ends unless its domain is given
 * @throws InputError for a number that is not finite, or ends that are not in rising order
 */
export function axisDomain(axis: Axis, values: readonly number[], ends: AxisEnds): readonly [number, number] {
  const bad = values.find((value) => !Number.isFinite(value));
  if (bad !== undefined) throw outOfOrder(axis, bad, 'a finite number');
  if (axis.domain === undefined)
    return ends === 'data' ? rounded(dataRange(values)) : roundDomain(values, ends === 'round with zero');
  const low = displayNumber(axis, axis.domain[0]);
  const high = displayNumber(axis, axis.domain[1]);
  if (!(low < high)) throw outOfOrder(axis, `${low} to ${high}`, 'a domain in rising order');
  return [low, high];
}

/** The least domain that holds two. */
export function joinedDomain(
  one: readonly [number, number],
  other: readonly [number, number],
): readonly [number, number] {
  return [Math.min(one[0], other[0]), Math.max(one[1], other[1])];
}

/** The room that a number at an axis needs [px]: the longer of its ends, with a digit to spare. */
export function tickWidth([low, high]: readonly [number, number]): number {
  return Math.max(...[low, high].map((end) => textWidth(`${roundedText(end, 3)}0`, fontSize)));
}

function outOfOrder(axis: Axis, value: unknown, accepted: string): InputError {
  return new InputError({ field: `axis "${columnHeading(axis)}"`, value, accepted });
}

/** Widens a range until its ends are ticks: multiples of 1, 2 or 5 times a power of ten, about six steps long. */
function roundDomain(values: readonly number[], withZero: boolean): readonly [number, number] {
  const [low, high] = dataRange(withZero ? [0, ...values] : values);
  return nice(low, high, 6);
}

/** Six digits: a last bit too many would leave the tick at an end outside. */
function rounded([low, high]: readonly [number, number]): readonly [number, number] {
  return [Number(low.toPrecision(6)), Number(high.toPrecision(6))];
}

/** Least and greatest value, or some room about a single one. */
function dataRange(values: readonly number[]): readonly [number, number] {
  const [low = Number.POSITIVE_INFINITY, high = Number.NEGATIVE_INFINITY] = extent(values);
  if (low < high) return [low, high];
  const half = low === 0 ? 1 : Math.abs(low) / 2;
  return [low - half, high + half];
}
