import { tickWidth } from '../chart/axis.js';
import type { DotsInUnits } from '../chart/dots.js';
import type { DataRow, Drawing, LayoutName } from '../chart/drawing.js';
import { fontSize, horizontalLabel, type PlacedText, sizes, textRow, titleTexts } from '../chart/layout.js';
import { type LegendEntry, legend } from '../chart/legend.js';
import { inkColours } from '../chart/palette.js';
import { seriesStyle } from '../chart/series-style.js';
import { columnHeading } from '../chart/table.js';
import { shortened, textWidth } from '../chart/text-width.js';

const axisRoom = 46;
const widestName = 190;
/** Height of one dot, of the room between rows, and of a name above its row [px]. */
const dotHeight = 14;
const rowGap = 14;
const nameHeight = 18;

/** Dots set out at one width: names left of the rows where there is room, else above them. */
export function drawDots(shown: DotsInUnits, layout: LayoutName): Drawing {
  const { width } = sizes[layout];
  const beside = layout === 'wide';
  const left = beside ? Math.max(40, longestName(shown.categories) + 14) : 14;
  const right = Math.max(20, tickWidth(shown.domain) / 2);
  const plotWidth = width - left - right;
  const nameRoom = beside ? 0 : nameHeight;
  const rowHeight = rowGap + nameRoom + dotHeight * shown.series.length;
  const plotHeight = rowHeight * shown.categories.length;
  const title = titleTexts(shown.title, '', left, layout);
  const entries = legendEntries(shown);
  const keys = legend(entries.length > 1 ? entries : [], 8 - left, plotHeight + axisRoom, width - 12);
  const texts: PlacedText[] = [
    ...title.texts,
    ...shown.categories.map((name, row) =>
      categoryText(name, row * rowHeight, rowHeight, beside, width - 24),
    ),
    horizontalLabel(columnHeading(shown.value), { width: plotWidth, height: plotHeight }),
    ...keys.texts,
  ];
  const padding = { left, right, top: title.room, bottom: axisRoom + keys.room };
  const top = (row: number, index: number): number =>
    row * rowHeight + rowGap / 2 + nameRoom + (index + 0.5) * dotHeight;
  const marks = dotRows(shown, top);
  return {
    width,
    height: padding.top + plotHeight + padding.bottom,
    padding,
    signals: { xLow: shown.domain[0], xHigh: shown.domain[1], xTicks: sizes[layout].ticks },
    data: {
      rows: shown.categories.map((_name, row) => ({
        left: beside ? -left + 6 : 0,
        right: plotWidth,
        top: row * rowHeight,
      })),
      start: startRows(shown, top),
      whiskers: marks.filter((row) => 'low' in row),
      dots: marks,
      keys: keys.keys,
      halos: [],
      texts: texts.map(textRow),
    },
  };
}

function dotRows(
  { categories, series }: DotsInUnits,
  top: (row: number, index: number) => number,
): DataRow[] {
  return series.flatMap(({ dots }, index) =>
    dots.map(({ category, value, ...interval }) => ({
      x: value,
      ...interval,
      top: top(categories.indexOf(category), index),
      ...seriesStyle(index),
    })),
  );
}

/** The dots of the starting case, where the row and the kind of value are still there. */
function startRows(shown: DotsInUnits, top: (row: number, index: number) => number): DataRow[] {
  const { categories, series, start } = shown;
  const kept = start.slice(0, series.length).map(({ name, dots }) => ({
    name,
    dots: dots.filter(({ category }) => categories.includes(category)),
  }));
  return dotRows({ ...shown, series: kept }, top).map((row) => ({ ...row, colour: inkColours.rule }));
}

function legendEntries({ series, start }: DotsInUnits): readonly LegendEntry[] {
  const named = series.map(({ name }, index) => ({ name, style: seriesStyle(index) }));
  return start.length === 0
    ? named
    : [...named, { name: 'starting case', style: { ...seriesStyle(0), colour: inkColours.rule } }];
}

function longestName(names: readonly string[]): number {
  return Math.min(widestName, Math.max(...names.map((name) => textWidth(name, fontSize))));
}

function categoryText(
  name: string,
  top: number,
  rowHeight: number,
  beside: boolean,
  room: number,
): PlacedText {
  return beside
    ? { left: -10, top: top + rowHeight / 2, text: shortened(name, fontSize, widestName), align: 'right' }
    : { left: 2, top: top + rowGap / 2 + nameHeight / 2, text: shortened(name, fontSize, room) };
}
