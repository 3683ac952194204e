import { InputError } from '../base/input-error.js';
import { type Figure, requireFigureText } from './figure.js';
import { drawLines } from './line-drawing.js';
import { lineSpec } from './line-spec.js';
import { lineTable } from './line-table.js';
import { inUnitsShown, type LineChart } from './lines.js';
import { requireSeriesNames } from './series-style.js';

const wideSpec = lineSpec('wide');
const narrowSpec = lineSpec('narrow');

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
  requireFigureText(chart);
  requireSeriesNames(
    chart.id,
    chart.series.map(({ name }) => name),
  );
  const short = chart.series.find(({ points }) => points.length < 2);
  if (short !== undefined)
    throw new InputError({
      field: `points of "${short.name}"`,
      value: short.points.length,
      accepted: '2 or more',
    });
  const shown = inUnitsShown(chart);
  return {
    id: chart.id,
    title: chart.title,
    alt: chart.alt,
    drawings: {
      wide: { specName: 'line-wide', spec: wideSpec, ...drawLines(shown, 'wide') },
      narrow: { specName: 'line-narrow', spec: narrowSpec, ...drawLines(shown, 'narrow') },
    },
    table: lineTable(chart),
  };
}
