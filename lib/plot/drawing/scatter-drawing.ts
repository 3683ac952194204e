import { tickWidth } from '../chart/axis.js';
import type { DataRow, Drawing, LayoutName } from '../chart/drawing.js';
import { horizontalLabel, type Plot, sizes, textRow, titleTexts } from '../chart/layout.js';
import { type LegendEntry, legend } from '../chart/legend.js';
import { inkColours } from '../chart/palette.js';
import type { ScatterInUnits, ScatterSeries } from '../chart/scatter.js';
import { seriesStyle } from '../chart/series-style.js';
import { columnHeading } from '../chart/table.js';
import { pointLabels } from './point-labels.js';

const axisRoom = 46;

/** Points set out at one width, with a legend underneath. */
export function drawScatter(shown: ScatterInUnits, layout: LayoutName): Drawing {
  const { width, plotHeight } = sizes[layout];
  const left = Math.max(40, tickWidth(shown.yDomain) + 10);
  const right = Math.max(16, tickWidth(shown.xDomain) / 2);
  const plot = { width: width - left - right, height: plotHeight };
  const title = titleTexts(shown.title, columnHeading(shown.y), left, layout);
  const entries = legendEntries(shown);
  const keys = legend(entries.length > 1 ? entries : [], 8 - left, plot.height + axisRoom, width - 12);
  const beside = labels(shown, plot);
  const texts = [...title.texts, horizontalLabel(columnHeading(shown.x), plot), ...keys.texts, ...beside];
  const padding = { left, right, top: title.room, bottom: axisRoom + keys.room };
  return {
    width,
    height: padding.top + plot.height + padding.bottom,
    padding,
    signals: {
      xLow: shown.xDomain[0],
      xHigh: shown.xDomain[1],
      yLow: shown.yDomain[0],
      yHigh: shown.yDomain[1],
      xTicks: sizes[layout].ticks,
    },
    data: {
      start: pointRows(shown.start).map((row) => ({ ...row, colour: inkColours.rule })),
      dots: pointRows(shown.series),
      keys: keys.keys,
      halos: beside.map(textRow),
      texts: texts.map(textRow),
    },
  };
}

function pointRows(series: readonly ScatterSeries[]): readonly DataRow[] {
  return series.flatMap(({ points }, index) =>
    points.map(({ x, y }) => {
      const { colour, shape } = seriesStyle(index);
      return { x, y, colour, shape };
    }),
  );
}

function legendEntries({ series, start }: ScatterInUnits): readonly LegendEntry[] {
  const named = series
    .map(({ name, points }, index) => ({ name, style: seriesStyle(index), shown: points.length > 0 }))
    .filter(({ shown }) => shown);
  return start.length === 0
    ? named
    : [...named, { name: 'starting case', style: { ...seriesStyle(0), colour: inkColours.rule } }];
}

/** Labels of the points inside the plot, each at a free place beside its own. */
function labels({ series, xDomain, yDomain }: ScatterInUnits, plot: Plot) {
  const [xLow, xHigh] = xDomain;
  const [yLow, yHigh] = yDomain;
  const placed = series.flatMap(({ points }) =>
    points
      .filter(({ x, y }) => x >= xLow && x <= xHigh && y >= yLow && y <= yHigh)
      .map(({ x, y, label = '' }) => ({
        label,
        left: ((x - xLow) / (xHigh - xLow)) * plot.width,
        top: ((yHigh - y) / (yHigh - yLow)) * plot.height,
      })),
  );
  return pointLabels(placed, [], plot);
}
