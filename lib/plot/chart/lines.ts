import { listOf, oneOf, optional, type Shape, someText } from '../../base/shape.js';
import { type Axis, axisDomain, axisShape } from './axis.js';
import type { FigureText } from './figure-text.js';
import { numbersInUnit } from './table.js';

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

/** Form of {@link LinePoint}. */
export const linePointShape: Shape = { x: '', y: '', low: optional(''), high: optional('') };

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

/** Form of {@link LineSeries}. */
export const lineSeriesShape: Shape = { name: someText, points: listOf(linePointShape) };

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

/** Form of {@link Rule}. */
export const ruleShape: Shape = { axis: oneOf('x', 'y'), value: '', label: someText };

/**
 * A marked point with its label, which may be empty.
 *
 * @public
 */
export interface MarkedPoint {
  readonly x: number;
  readonly y: number;
  readonly label: string;
}

/** Form of {@link MarkedPoint}. */
export const markedPointShape: Shape = { x: '', y: '', label: someText };

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

/** Form of {@link LineChart}. */
export const lineChartShape: Shape = {
  x: axisShape,
  y: axisShape,
  series: listOf(lineSeriesShape),
  startingCase: optional(listOf(lineSeriesShape)),
  rules: optional(listOf(ruleShape)),
  points: optional(listOf(markedPointShape)),
  id: someText,
  title: someText,
  alt: someText,
};

/** A line chart with all numbers in the units shown, and the ends of its axes. */
export interface LinesInUnits {
  readonly title: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly series: readonly LineSeries[];
  readonly startingCase: readonly LineSeries[];
  readonly rules: readonly Rule[];
  readonly points: readonly MarkedPoint[];
  readonly xDomain: readonly [number, number];
  readonly yDomain: readonly [number, number];
}

const known = new WeakMap<LineChart, LinesInUnits>();

/** The chart in the units shown, with the ends of its axes; worked out once for each chart. */
export function linesInUnits(chart: LineChart): LinesInUnits {
  const before = known.get(chart);
  if (before !== undefined) return before;
  const shown = converted(chart);
  known.set(chart, shown);
  return shown;
}

function converted(chart: LineChart): LinesInUnits {
  const x = numbersInUnit(chart.x);
  const y = numbersInUnit(chart.y);
  const line = ({ name, points }: LineSeries): LineSeries => ({
    name,
    points: points.map((point) => ({
      x: x(point.x),
      y: y(point.y),
      ...(point.low === undefined || point.high === undefined
        ? {}
        : { low: y(point.low), high: y(point.high) }),
    })),
  });
  const series = chart.series.map(line);
  const startingCase = (chart.startingCase ?? []).map(line);
  const points = (chart.points ?? []).map((point) => ({ label: point.label, x: x(point.x), y: y(point.y) }));
  const rules = (chart.rules ?? []).map((rule) => ({
    ...rule,
    value: rule.axis === 'x' ? x(rule.value) : y(rule.value),
  }));
  const all = [...series, ...startingCase].flatMap((one) => one.points);
  const heights = all.flatMap((point) => [point.y, point.low ?? point.y, point.high ?? point.y]);
  const places = all.map((point) => point.x);
  return {
    title: chart.title,
    x: chart.x,
    y: chart.y,
    series,
    startingCase,
    points,
    rules,
    xDomain: axisDomain(chart.x, places, 'data'),
    yDomain: axisDomain(chart.y, heights, 'round'),
  };
}
