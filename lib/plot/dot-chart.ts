import type { Figure, FigureText } from './figure.js';
import type { Axis } from './line-chart.js';

/**
 * One value of a category, with the ends of its interval where it has one.
 *
 * @public
 */
export interface Dot {
  readonly category: string;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
}

/**
 * One kind of value, drawn with its own colour and shape.
 *
 * @public
 */
export interface DotSeries {
  readonly name: string;
  /** At most one dot for each category. */
  readonly dots: readonly Dot[];
}

/**
 * What a dot chart shows. Numbers are in SI where the axis has a dimension.
 *
 * @public
 */
export interface DotChart extends FigureText {
  /** What the categories are, for example `Oil`. */
  readonly category: string;
  /** Rows from top to bottom. */
  readonly categories: readonly string[];
  readonly value: Axis;
  /** 1 to 12 kinds of value. */
  readonly series: readonly DotSeries[];
}

/**
 * A dot for each value, one row for each category, with whiskers where a value is an interval.
 *
 * @param chart - what to show
 * @returns the figure as plain data
 * @throws InputError for an empty alternative text, no category, a dot of an unknown category, no series or more
 * than 12, or a number that is not finite
 *
 * @public
 */
export function dotChart(chart: DotChart): Figure {
  throw new Error(`not drawn yet: ${chart.id}`);
}
