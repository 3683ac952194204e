import { InputError } from '../../base/input-error.js';
import { requireShape } from '../../base/shape.js';
import { axisDomain, joinedDomain } from '../chart/axis.js';
import { dotTable } from '../chart/dot-table.js';
import { type DotChart, type DotsInUnits, dotChartShape, dotsInUnits } from '../chart/dots.js';
import type { Figure } from '../chart/figure.js';
import { requireFigureText } from '../chart/figure-text.js';
import { requireSeriesNames } from '../chart/series-style.js';
import { drawDots } from '../drawing/dot-drawing.js';
import { lazyFigure } from './lazy-figure.js';

/**
 * A dot for each value, one row for each category, with whiskers where a value is an interval. Series differ by
 * colour and by shape.
 *
 * @param chart - what to show
 * @returns the figure as plain data
 * @throws InputError for an empty alternative text, no category, a category named twice, a dot of an unknown
 * category, no series or more than 12, or a number that is not finite
 *
 * @public
 */
export function dotChart(chart: DotChart): Figure {
  requireShape({ chart }, { chart: dotChartShape });
  requireFigureText(chart);
  requireSeriesNames(chart);
  requireCategories(chart);
  return dotFigure(chart, dotsShown(chart));
}

/** A dot chart over the dots of an earlier case; its axis holds the axes of both. */
export function dotsBeside(chart: DotChart, start: DotChart): Figure {
  const [shown, before] = [dotsShown(chart), dotsShown(start)];
  return dotFigure(chart, {
    ...shown,
    start: before.series,
    domain: joinedDomain(shown.domain, before.domain),
  });
}

function dotsShown(chart: DotChart): DotsInUnits {
  const series = dotsInUnits(chart);
  const values = series.flatMap(({ dots }) =>
    dots.flatMap(({ value, low, high }) => [value, low ?? value, high ?? value]),
  );
  const { id, title, alt, category, categories, value } = chart;
  return {
    id,
    title,
    alt,
    category,
    categories,
    value,
    series,
    start: [],
    domain: axisDomain(value, values, 'round with zero'),
  };
}

function dotFigure(chart: DotChart, shown: DotsInUnits): Figure {
  return lazyFigure(
    { kind: 'dot', shows: chart },
    (layout) => drawDots(shown, layout),
    () => dotTable(chart),
  );
}

function requireCategories({ id, categories, series }: DotChart): void {
  const field = `categories of figure ${id}`;
  if (categories.length === 0) throw new InputError({ field, value: 0, accepted: '1 or more' });
  const repeated = categories.find((name, index) => categories.indexOf(name) !== index);
  if (repeated !== undefined) throw new InputError({ field, value: repeated, accepted: 'named once each' });
  const stray = series.flatMap(({ dots }) => dots).find(({ category }) => !categories.includes(category));
  if (stray !== undefined)
    throw new InputError({
      field: `dots of figure ${id}`,
      value: stray.category,
      accepted: 'of a category of the figure',
    });
}
