import { InputError } from '../../base/input-error.js';
import { seriesColours } from './palette.js';

/** How one series looks: never by its colour alone. */
export interface SeriesStyle {
  readonly colour: string;
  /** Lengths of dash and gap [px]; empty for a solid line. */
  readonly dash: readonly number[];
  /** Name of a Vega symbol. */
  readonly shape: string;
}

/** More series than this cannot be told apart in one picture. */
export const seriesLimit = 12;

const dashes = [[], [7, 3], [2, 3], [11, 3, 2, 3], [14, 5], [5, 2, 1, 2, 1, 2], [1, 2]] as const;
const shapes = [
  'circle',
  'square',
  'triangle-up',
  'diamond',
  'cross',
  'triangle-down',
  'triangle-right',
] as const;

/** Look of the series at an index; the shift gives the second round of colours other dashes and shapes. */
export function seriesStyle(index: number): SeriesStyle {
  const turn = index + 3 * Math.floor(index / seriesColours.length);
  return {
    colour: seriesColours[index % seriesColours.length] ?? '#000000',
    dash: dashes[turn % dashes.length] ?? [],
    shape: shapes[turn % shapes.length] ?? 'circle',
  };
}

/** A figure whose series have names. */
interface NamedSeries {
  readonly id: string;
  readonly series: readonly { readonly name: string }[];
}

/** Checks the names of the series of a figure. */
export function requireSeriesNames({ id, series }: NamedSeries): void {
  const names = series.map(({ name }) => name);
  if (names.length < 1 || names.length > seriesLimit)
    throw new InputError({
      field: `series of figure ${id}`,
      value: names.length,
      accepted: `1 to ${seriesLimit}`,
    });
  const repeated = names.find((name, index) => names.indexOf(name) !== index);
  if (repeated !== undefined)
    throw new InputError({ field: `series of figure ${id}`, value: repeated, accepted: 'named once each' });
}
