import { InputError } from '../base/input-error.js';
import { roundedText } from '../units/index.js';
import { type Column, columnHeading, displayNumber } from './table.js';

/**
 * An axis: its label and unit, and the part of the scale that is shown.
 *
 * @public
 */
export interface Axis extends Column {
  /** Ends of the axis, in the same unit as the data; found from the data where left out. */
  readonly domain?: readonly [number, number];
}

/**
 * Ends of an axis in the unit shown: those given, or round numbers about the data.
 *
 * @param axis - the axis
 * @param values - the data in the unit shown
 * @param withZero - true where the axis must reach zero
 * @throws InputError for a number that is not finite, or ends that are not in rising order
 */
export function axisDomain(
  axis: Axis,
  values: readonly number[],
  withZero: boolean,
): readonly [number, number] {
  const bad = values.find((value) => !Number.isFinite(value));
  if (bad !== undefined) throw outOfOrder(axis, bad, 'a finite number');
  if (axis.domain === undefined) return roundDomain(values, withZero);
  const low = displayNumber(axis, axis.domain[0]);
  const high = displayNumber(axis, axis.domain[1]);
  if (!(low < high)) throw outOfOrder(axis, `${low} to ${high}`, 'a domain in rising order');
  return [low, high];
}

/** The room that the numbers of a vertical axis need, in characters: the longer end, with a digit to spare. */
export function tickCharacters([low, high]: readonly [number, number]): number {
  return Math.max(roundedText(low, 3).length, roundedText(high, 3).length) + 1;
}

function outOfOrder(axis: Axis, value: unknown, accepted: string): InputError {
  return new InputError({ field: `axis "${columnHeading(axis)}"`, value, accepted });
}

/** Widens a range to a multiple of 1, 2 or 5 times a power of ten, about six steps long. */
function roundDomain(values: readonly number[], withZero: boolean): readonly [number, number] {
  const all = withZero ? [0, ...values] : values;
  const low = all.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const high = all.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  if (!(low < high)) {
    const half = low === 0 ? 1 : Math.abs(low) / 2;
    return [Number((low - half).toPrecision(6)), Number((low + half).toPrecision(6))];
  }
  const rough = (high - low) / 6;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * (rough / power > 5 ? 10 : rough / power > 2 ? 5 : rough / power > 1 ? 2 : 1);
  const ends = [Math.floor(low / step) * step, Math.ceil(high / step) * step] as const;
  return [Number(ends[0].toPrecision(6)), Number(ends[1].toPrecision(6))];
}
