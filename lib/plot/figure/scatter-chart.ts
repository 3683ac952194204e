import { InputError } from '../../base/input-error.js';
import { requireShape } from '../../base/shape.js';
import { joinedDomain } from '../chart/axis.js';
import type { Figure } from '../chart/figure.js';
import { requireFigureText } from '../chart/figure-text.js';
import {
  type ScatterChart,
  type ScatterInUnits,
  scatterChartShape,
  scatterInUnits,
} from '../chart/scatter.js';
import { requireSeriesNames } from '../chart/series-style.js';
import { likeColumn, type Table } from '../chart/table.js';
import { drawScatter } from '../drawing/scatter-drawing.js';
import { lazyFigure } from './lazy-figure.js';

/**
 * A mark for each thing at two of its values. Kinds of things differ by colour and by shape, and have their names in a legend.
 *
 * @param chart - what to show
 * @returns the figure as plain data
 * @throws InputError for an empty alternative text, no series or more than 12, two series of one name, no point at all, or a number
 * that is not finite
 *
 * @public
 */
export function scatterChart(chart: ScatterChart): Figure {
  requireShape({ chart }, { chart: scatterChartShape });
  requireFigureText(chart);
  requireSeriesNames(chart);
  if (chart.series.every(({ points }) => points.length === 0))
    throw new InputError({ field: `points of figure ${chart.id}`, value: 0, accepted: '1 or more' });
  return scatterFigure(chart, scatterInUnits(chart));
}

/** A scatter chart over the points of an earlier case; its axes hold the axes of both. */
export function scatterBeside(chart: ScatterChart, start: ScatterChart): Figure {
  const [shown, before] = [scatterInUnits(chart), scatterInUnits(start)];
  return scatterFigure(chart, {
    ...shown,
    start: before.series,
    xDomain: joinedDomain(shown.xDomain, before.xDomain),
    yDomain: joinedDomain(shown.yDomain, before.yDomain),
  });
}

function scatterFigure(chart: ScatterChart, shown: ScatterInUnits): Figure {
  return lazyFigure(
    { kind: 'scatter', shows: chart },
    (layout) => drawScatter(shown, layout),
    () => scatterTable(chart),
  );
}

/** One row for each point: its label, its kind, its two values. */
function scatterTable({ labelled, x, y, series }: ScatterChart): Table {
  return {
    columns: [
      { label: labelled, unit: '' },
      { label: 'Kind', unit: '' },
      likeColumn(x, x.label),
      likeColumn(y, y.label),
    ],
    rows: series.flatMap(({ name, points }) =>
      points.map((point) => [point.label ?? null, name, point.x, point.y]),
    ),
  };
}
