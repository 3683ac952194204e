import { InputError } from '../base/input-error.js';
import { axisDomain } from './axis.js';
import { drawDots } from './dot-drawing.js';
import { dotSpec } from './dot-spec.js';
import { dotTable } from './dot-table.js';
import { type DotChart, dotsInUnitShown } from './dots.js';
import { type Figure, requireFigureText } from './figure.js';
import { requireSeriesNames } from './series-style.js';

const wideSpec = dotSpec('wide');
const narrowSpec = dotSpec('narrow');

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
  requireFigureText(chart);
  const names = chart.series.map(({ name }) => name);
  requireSeriesNames(chart.id, names);
  requireCategories(chart);
  const series = dotsInUnitShown(chart);
  const values = series.flatMap(({ dots }) =>
    dots.flatMap(({ value, low, high }) => [value, low ?? value, high ?? value]),
  );
  const shown = { ...chart, series, domain: axisDomain(chart.value, values, 'round with zero') };
  return {
    id: chart.id,
    title: chart.title,
    alt: chart.alt,
    drawings: {
      wide: { specName: 'dot-wide', spec: wideSpec, ...drawDots(shown, 'wide') },
      narrow: { specName: 'dot-narrow', spec: narrowSpec, ...drawDots(shown, 'narrow') },
    },
    table: dotTable(chart),
  };
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
