import { InputError } from '../../base/input-error.js';
import type { DotChart } from './dots.js';
import type { LineChart } from './lines.js';
import type { ScatterChart } from './scatter.js';
import type { Table } from './table.js';

/**
 * Two fixed widths for each figure, so that text keeps its size on paper and on a phone.
 *
 * @public
 */
export type LayoutName = 'wide' | 'narrow';

/**
 * One row of a named data set: numbers are rounded and in the unit shown.
 *
 * @public
 */
export type DataRow = Readonly<Record<string, string | number | readonly number[]>>;

/**
 * A figure at one width. The specification is constant for the kind of chart; whatever changes with the data is in
 * `data`, `signals` and the sizes, so that a page can compile the specification once and only push numbers.
 *
 * @public
 */
export interface Drawing {
  /** Named data sets of the specification. */
  readonly data: Readonly<Record<string, readonly DataRow[]>>;
  /** Axis domains, by signal name. */
  readonly signals: Readonly<Record<string, number>>;
  /** Outer size and the room kept around the plot [CSS px]. */
  readonly width: number;
  readonly height: number;
  readonly padding: Padding;
}

/**
 * Room between the plot and the edge of the picture [CSS px].
 *
 * @public
 */
export interface Padding {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * A picture as plain data; `renderSvg` draws it.
 *
 * @public
 */
export interface Figure extends FigureText {
  readonly drawings: Readonly<Record<LayoutName, Drawing>>;
  /** All numbers of the figure. */
  readonly table: Table;
  /** What it was made from, so that it can be drawn again beside another case. */
  readonly chart: Chart;
}

/**
 * What a figure shows, by its kind.
 *
 * @public
 */
export type Chart =
  | { readonly kind: 'line'; readonly shows: LineChart }
  | { readonly kind: 'dot'; readonly shows: DotChart }
  | { readonly kind: 'scatter'; readonly shows: ScatterChart };

/**
 * Kinds of charts.
 *
 * @public
 */
export type ChartKind = Chart['kind'];

/**
 * What every figure says of itself in words.
 *
 * @public
 */
export interface FigureText {
  /** File name and anchor: small letters, digits and hyphens. */
  readonly id: string;
  /** A few words: what is shown against what. */
  readonly title: string;
  /** One sentence with the key numbers, for those who do not see the picture and as its caption. */
  readonly alt: string;
}

/**
 * Checks the words of a figure.
 *
 * @throws InputError for an id that is no file name, an empty title, or an empty alternative text
 */
export function requireFigureText({ id, title, alt }: FigureText): void {
  requireId(id);
  if (title.trim() === '')
    throw new InputError({ field: `title of figure ${id}`, value: title, accepted: 'a few words' });
  if (alt.trim() === '')
    throw new InputError({
      field: `alt of figure ${id}`,
      value: alt,
      accepted: 'one sentence with the key numbers',
    });
}

/** Checks an id that becomes a file name and an anchor. */
export function requireId(id: string): void {
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/u.test(id))
    throw new InputError({ field: 'id', value: id, accepted: 'small letters, digits and single hyphens' });
}
