import { bin, extent, max } from 'd3-array';
import { InputError } from '../../base/input-error.js';
import { listOf, optional, requireShape, type Shape, someText } from '../../base/shape.js';
import type { Axis } from '../chart/axis.js';
import { axisShape } from '../chart/axis.js';
import type { Figure } from '../chart/figure.js';
import type { FigureText } from '../chart/figure-text.js';
import type { Rule } from '../chart/lines.js';
import { ruleShape } from '../chart/lines.js';
import { likeColumn } from '../chart/table.js';
import { lineChart } from './line-chart.js';

/**
 * What a histogram shows. Numbers are in SI where the axis has a dimension.
 *
 * @public
 */
export interface Histogram extends FigureText {
  readonly value: Axis;
  /** 2 or more, not all equal. */
  readonly values: readonly number[];
  /** What is counted, for example `builds`. */
  readonly counted: string;
  readonly rules?: readonly Rule[];
}

/** Form of {@link Histogram}. */
export const histogramShape: Shape = {
  value: axisShape,
  values: listOf(''),
  counted: someText,
  rules: optional(listOf(ruleShape)),
  id: someText,
  title: someText,
  alt: someText,
};

const mostClasses = 30;

/**
 * How often values fall into classes of equal width, as an outline; about as many classes as the cube root of the number of values
 * asks for (Rice's rule: 2 n^⅓).
 *
 * @param chart - what to show
 * @returns the figure as plain data
 * @throws InputError for fewer than 2 values, values that are all equal, or a number that is not finite
 * @public
 */
export function histogram(chart: Histogram): Figure {
  requireShape({ chart }, { chart: histogramShape });
  const { values, value, counted, rules, ...text } = chart;
  const [low = 0, high = 0] = extent(values);
  if (!(low < high))
    throw new InputError({
      field: `values of figure ${chart.id}`,
      value: low,
      accepted: '2 or more that differ',
    });
  const classes = Math.min(mostClasses, Math.ceil(2 * Math.cbrt(values.length)));
  const ends = Array.from(
    { length: classes - 1 },
    (_, place) => low + ((place + 1) * (high - low)) / classes,
  );
  const classesCounted = bin()
    .domain([low, high])
    .thresholds(ends)(values)
    .map(({ x0: from = low, x1: to = high, length: count }) => ({ from, to, count }));
  const outline = classesCounted.flatMap(({ from, to, count }) => [
    { x: from, y: count, low: 0, high: count },
    { x: to, y: count, low: 0, high: count },
  ]);
  const number = `Number of ${counted}`;
  const figure = lineChart({
    ...text,
    x: value,
    y: { label: number, unit: '', domain: [0, roundAbove(max(classesCounted, ({ count }) => count) ?? 0)] },
    series: [{ name: counted, points: outline }],
    ...(rules === undefined ? {} : { rules }),
  });
  const columns = [likeColumn(value, 'From'), likeColumn(value, 'To'), { label: number, unit: '' }];
  return {
    ...figure,
    table: { columns, rows: classesCounted.map(({ from, to, count }) => [from, to, count]) },
  };
}

/** The next count above that ends an axis well. */
function roundAbove(count: number): number {
  const power = 10 ** Math.floor(Math.log10(count));
  return power * Math.ceil((1.05 * count) / power);
}
