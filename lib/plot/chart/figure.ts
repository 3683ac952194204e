import type { DotChart } from './dots.js';
import type { Drawing, LayoutName } from './drawing.js';
import type { FigureText } from './figure-text.js';
import type { LineChart } from './lines.js';
import type { ScatterChart } from './scatter.js';
import type { Table } from './table.js';

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
