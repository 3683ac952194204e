import { InputError } from '../base/input-error.js';
import type { Axis } from './axis.js';
import type { Figure, FigureText } from './figure.js';
import { lineChart } from './line-chart.js';
import type { Rule } from './lines.js';

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
  const { values, value, counted, rules, ...text } = chart;
  const low = Math.min(...values);
  const high = Math.max(...values);
  if (!(low < high))
    throw new InputError({
      field: `values of figure ${chart.id}`,
      value: low,
      accepted: '2 or more that differ',
    });
  const classes = Math.min(mostClasses, Math.ceil(2 * Math.cbrt(values.length)));
  const width = (high - low) / classes;
  const counts = new Array<number>(classes).fill(0);
  for (const one of values) {
    const place = Math.min(classes - 1, Math.floor((one - low) / width));
    counts[place] = (counts[place] ?? 0) + 1;
  }
  const steps = counts.flatMap((count, place) => [
    { x: low + place * width, y: count },
    { x: low + (place + 1) * width, y: count },
  ]);
  return lineChart({
    ...text,
    x: value,
    y: { label: `Number of ${counted}`, unit: '', domain: [0, roundAbove(Math.max(...counts))] },
    series: [{ name: counted, points: steps.map((step) => ({ ...step, low: 0, high: step.y })) }],
    ...(rules === undefined ? {} : { rules }),
  });
}

/** The next count above that ends an axis well. */
function roundAbove(count: number): number {
  const power = 10 ** Math.floor(Math.log10(count));
  return power * Math.ceil((1.05 * count) / power);
}
