import { listOf, optional, type Shape, someText } from '../../base/shape.js';
import { type Axis, axisDomain, axisShape } from './axis.js';
import type { FigureText } from './figure-text.js';
import { displayNumbers } from './table.js';

/**
 * One thing at its place, with a few letters beside it where it has some.
 *
 * @public
 */
export interface ScatterPoint {
  readonly x: number;
  readonly y: number;
  /** A number or a short name; also in the table of the figure. */
  readonly label?: string;
}

/** Form of {@link ScatterPoint}. */
export const scatterPointShape: Shape = { x: '', y: '', label: optional(someText) };

/**
 * Things of one kind, drawn with their own colour and shape.
 *
 * @public
 */
export interface ScatterSeries {
  readonly name: string;
  readonly points: readonly ScatterPoint[];
}

/** Form of {@link ScatterSeries}. */
export const scatterSeriesShape: Shape = { name: someText, points: listOf(scatterPointShape) };

/**
 * What a scatter chart shows. Numbers are in SI where their axis has a dimension.
 *
 * @public
 */
export interface ScatterChart extends FigureText {
  /** The axes; they reach zero unless they have a domain. */
  readonly x: Axis;
  readonly y: Axis;
  /** What the labels stand for, for example `Design`. */
  readonly labelled: string;
  /** 1 to 12 kinds of things; a kind without any keeps its colour and shape for the others. */
  readonly series: readonly ScatterSeries[];
}

/** Form of {@link ScatterChart}. */
export const scatterChartShape: Shape = {
  x: axisShape,
  y: axisShape,
  labelled: someText,
  series: listOf(scatterSeriesShape),
  id: someText,
  title: someText,
  alt: someText,
};

/** A scatter chart with all numbers in the units shown, and the ends of its axes. */
export interface ScatterInUnits extends ScatterChart {
  /** The case before a slider was moved, drawn in grey behind the points. */
  readonly start: readonly ScatterSeries[];
  readonly xDomain: readonly [number, number];
  readonly yDomain: readonly [number, number];
}

/** The chart in the units shown, with the ends of its axes. */
export function scatterInUnits(chart: ScatterChart): ScatterInUnits {
  const x = displayNumbers(chart.x);
  const y = displayNumbers(chart.y);
  const series = chart.series.map(({ name, points }) => ({
    name,
    points: points.map((point) => ({ ...point, x: x(point.x), y: y(point.y) })),
  }));
  const all = series.flatMap(({ points }) => points);
  const ends = (axis: Axis, values: readonly number[]) => axisDomain(axis, values, 'round with zero');
  return {
    ...chart,
    series,
    start: [],
    xDomain: ends(
      chart.x,
      all.map((point) => point.x),
    ),
    yDomain: ends(
      chart.y,
      all.map((point) => point.y),
    ),
  };
}
