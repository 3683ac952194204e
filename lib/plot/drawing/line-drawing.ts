import { tickWidth } from '../chart/axis.js';
import type { DataRow, Drawing, LayoutName } from '../chart/drawing.js';
import { fontSize, horizontalLabel, type Plot, sizes, textRow, titleTexts } from '../chart/layout.js';
import { type Legend, type LegendEntry, legend } from '../chart/legend.js';
import type { LineSeries, LinesInUnits } from '../chart/lines.js';
import { inkColours } from '../chart/palette.js';
import type { PathSet } from '../chart/path-sets.js';
import { seriesStyle } from '../chart/series-style.js';
import { columnHeading } from '../chart/table.js';
import { shortened, textWidth } from '../chart/text-width.js';
import { curvePaths } from './curve-path.js';
import { spreadLabels } from './end-labels.js';
import { placedRules } from './rule-labels.js';

const axisRoom = 46;
const leaderWidth = 18;
const widestName = 190;

/** Lines set out at one width: names beside the ends of the lines where there is room, else in a legend. */
export function drawLines(shown: LinesInUnits, layout: LayoutName): Drawing {
  const { width, plotHeight } = sizes[layout];
  const lines = namedLines(shown);
  const direct = layout === 'wide' && lines.length > 0 && lines.every(({ line }) => reachesEnd(line, shown));
  const left = Math.max(40, tickWidth(shown.yDomain) + 10);
  const right = direct ? leaderWidth + 10 + longestName(lines) : Math.max(16, tickWidth(shown.xDomain) / 2);
  const plot = { width: width - left - right, height: plotHeight };
  const title = titleTexts(shown.title, columnHeading(shown.y), left, layout);
  const names: Names = direct
    ? endNames(lines, shown.yDomain, plot)
    : { ...legend(lines, 6 - left, plot.height + axisRoom, width - 12), leaders: [] };
  const rules = placedRules(shown, plot);
  const padding = { left, right, top: title.room, bottom: axisRoom + names.room };
  const texts = [
    ...title.texts,
    horizontalLabel(columnHeading(shown.x), plot),
    ...rules.texts,
    ...names.texts,
  ];
  return {
    width,
    height: padding.top + plot.height + padding.bottom,
    padding,
    signals: { ...signals(shown), xTicks: sizes[layout].ticks },
    data: {
      ...curveData(shown, plot),
      rules: rules.rows,
      points: shown.points.map(({ x, y }) => ({ x, y })),
      leaders: names.leaders,
      keys: names.keys,
      halos: rules.texts.map(textRow),
      texts: texts.map(textRow),
    },
  };
}

/** Whether a line reaches the right edge, where its name would stand. */
function reachesEnd({ points }: LineSeries, { xDomain: [low, high] }: LinesInUnits): boolean {
  return (points.at(-1)?.x ?? low) >= high - 0.02 * (high - low);
}

function signals({ xDomain, yDomain }: LinesInUnits): Drawing['signals'] {
  return { xLow: xDomain[0], xHigh: xDomain[1], yLow: yDomain[0], yHigh: yDomain[1] };
}

function curveData(shown: LinesInUnits, plot: Plot): Record<PathSet, readonly DataRow[]> {
  const { line, band } = curvePaths(shown, plot);
  const { series, startingCase } = shown;
  return {
    bands: series.flatMap(({ points }, index) => {
      const path = band(points);
      return path === '' ? [] : [{ path, colour: seriesStyle(index).colour }];
    }),
    start: startingCase.map(({ points }, index) => ({
      path: line(points),
      colour: inkColours.rule,
      dash: seriesStyle(index).dash,
    })),
    lines: series.map(({ points }, index) => ({ path: line(points), ...seriesStyle(index) })),
  };
}

interface Names extends Legend {
  readonly leaders: readonly DataRow[];
}

interface NamedLine extends LegendEntry {
  readonly line: LineSeries;
}

/** The lines that carry a name: all series, and one line for the whole starting case. */
function namedLines({ series, startingCase }: LinesInUnits): readonly NamedLine[] {
  const named = series.map((line, index) => ({ name: line.name, style: seriesStyle(index), line }));
  const start = startingCase.slice(0, 1).map((line) => ({
    name: 'starting case',
    style: { ...seriesStyle(0), colour: inkColours.rule },
    line,
  }));
  return named.length + start.length > 1 ? [...named, ...start] : [];
}

function endNames(lines: readonly NamedLine[], domain: LinesInUnits['yDomain'], plot: Plot): Names {
  const [low, high] = domain;
  const ends = lines.map(({ name, style, line }) => {
    const wanted = ((high - (line.points.at(-1)?.y ?? low)) / (high - low)) * plot.height;
    return {
      text: shortened(name, fontSize, widestName),
      wanted: Math.max(0, Math.min(plot.height, wanted)),
      colour: style.colour,
    };
  });
  const placed = spreadLabels(ends, fontSize + 4, 0, plot.height);
  return {
    keys: [],
    room: 0,
    leaders: placed.map(({ wanted, top, colour }) => ({
      left: plot.width + 3,
      right: plot.width + leaderWidth,
      top: wanted,
      bottom: top,
      colour,
    })),
    texts: placed.map(({ text, top }) => ({ left: plot.width + leaderWidth + 4, top, text })),
  };
}

function longestName(lines: readonly NamedLine[]): number {
  return Math.min(widestName, Math.max(...lines.map(({ name }) => textWidth(name, fontSize))));
}
