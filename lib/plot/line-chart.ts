import type { Figure, FigureText } from './figure.js';
import type { Column } from './table.js';

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
 * One point of a line, with the ends of its band where it has one.
 *
 * @public
 */
export interface LinePoint {
  readonly x: number;
  readonly y: number;
  readonly low?: number;
  readonly high?: number;
}

/**
 * One line, with a band where its points have one.
 *
 * @public
 */
export interface LineSeries {
  readonly name: string;
  /** In rising order of x. */
  readonly points: readonly LinePoint[];
}

/**
 * A straight line across the plot at one value of an axis.
 *
 * @public
 */
export interface Rule {
  readonly axis: 'x' | 'y';
  readonly value: number;
  readonly label: string;
}

/**
 * A marked point with its label.
 *
 * @public
 */
export interface MarkedPoint {
  readonly x: number;
  readonly y: number;
  readonly label: string;
}

/**
 * What a line chart shows. Numbers are in SI where their axis has a dimension.
 *
 * @public
 */
export interface LineChart extends FigureText {
  readonly x: Axis;
  readonly y: Axis;
  /** 1 to 12 lines; more cannot be told apart. */
  readonly series: readonly LineSeries[];
  /** The case before a slider was moved, drawn in grey behind the lines. */
  readonly startingCase?: readonly LineSeries[];
  readonly rules?: readonly Rule[];
  readonly points?: readonly MarkedPoint[];
}

/**
 * A line chart of one or more series. Lines differ by colour and by dash, and carry their names.
 *
 * @param chart - what to show
 * @returns the figure as plain data
 * @throws InputError for an empty alternative text, no series or more than 12, two series of one name, a series
 * of fewer than 2 points, a number that is not finite, or an axis whose ends are not in rising order
 *
 * @public
 */
export function lineChart(chart: LineChart): Figure {
  throw new Error(`not drawn yet: ${chart.id}`);
}
