import { listOf, optional, type Shape, someText } from '../../base/shape.js';
import type { Axis } from './axis.js';
import { axisShape } from './axis.js';
import type { FigureText } from './figure-text.js';
import { displayNumber } from './table.js';

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

/** Form of {@link Dot}. */
export const dotShape: Shape = { category: someText, value: '', low: optional(''), high: optional('') };

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

/** Form of {@link DotSeries}. */
export const dotSeriesShape: Shape = { name: someText, dots: listOf(dotShape) };

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
  /** The axis; it reaches zero unless it has a domain. */
  readonly value: Axis;
  /** 1 to 12 kinds of value. */
  readonly series: readonly DotSeries[];
}

/** Form of {@link DotChart}. */
export const dotChartShape: Shape = {
  category: someText,
  categories: listOf(someText),
  value: axisShape,
  series: listOf(dotSeriesShape),
  id: someText,
  title: someText,
  alt: someText,
};

/** A dot chart with all numbers in the unit shown, and the ends of its axis. */
export interface DotsInUnits extends DotChart {
  /** The case before a slider was moved, drawn in grey behind the dots. */
  readonly start: readonly DotSeries[];
  readonly domain: readonly [number, number];
}

/** The series of the chart in the unit shown. */
export function dotsInUnits({ value: axis, series }: DotChart): readonly DotSeries[] {
  const shown = (value: number): number => displayNumber(axis, value);
  return series.map(({ name, dots }) => ({
    name,
    dots: dots.map(({ category, value, low, high }) => ({
      category,
      value: shown(value),
      ...(low === undefined || high === undefined ? {} : { low: shown(low), high: shown(high) }),
    })),
  }));
}
