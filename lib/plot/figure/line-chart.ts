import { InputError } from '../../base/input-error.js';
import { requireShape } from '../../base/shape.js';
import { joinedDomain } from '../chart/axis.js';
import type { Figure } from '../chart/figure.js';
import { requireFigureText } from '../chart/figure-text.js';
import { lineTable } from '../chart/line-table.js';
import { type LineChart, type LinesInUnits, lineChartShape, linesInUnits } from '../chart/lines.js';
import { requireSeriesNames } from '../chart/series-style.js';
import { drawLines } from '../drawing/line-drawing.js';
import { lazyFigure } from './lazy-figure.js';

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
  requireShape({ chart }, { chart: lineChartShape });
  requireFigureText(chart);
  requireSeriesNames(chart);
  const short = chart.series.find(({ points }) => points.length < 2);
  if (short !== undefined)
    throw new InputError({
      field: `points of "${short.name}"`,
      value: short.points.length,
      accepted: '2 or more',
    });
  return lineFigure(chart, linesInUnits(chart));
}

/** A line chart over the lines of an earlier case; its axes hold the axes of both. */
export function linesBeside(chart: LineChart, start: LineChart): Figure {
  const [shown, before] = [linesInUnits(chart), linesInUnits(start)];
  return lineFigure(chart, {
    ...shown,
    startingCase: before.series,
    xDomain: joinedDomain(shown.xDomain, before.xDomain),
    yDomain: joinedDomain(shown.yDomain, before.yDomain),
  });
}

function lineFigure(chart: LineChart, shown: LinesInUnits): Figure {
  return lazyFigure(
    { kind: 'line', shows: chart },
    (layout) => drawLines(shown, layout),
    () => lineTable(chart),
  );
}
