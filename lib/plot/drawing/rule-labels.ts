import type { DataRow } from '../chart/drawing.js';
import { fontSize, type PlacedText, type Plot } from '../chart/layout.js';
import type { LinesInUnits, Rule } from '../chart/lines.js';
import { inkColours } from '../chart/palette.js';
import { shortened, textWidth } from '../chart/text-width.js';
import { pointLabels } from './point-labels.js';
import { boxOfText, overlap } from './text-box.js';

const rowHeight = 17;
const gap = 6;
/** From a rule, or the top of the plot, to the middle of a text. */
const half = 9;

/** The rules of a chart across its domain, and the labels of rules and marked points beside them. */
export function placedRules(
  shown: LinesInUnits,
  plot: Plot,
): { readonly rows: readonly DataRow[]; readonly texts: readonly PlacedText[] } {
  const [xLow, xHigh] = shown.xDomain;
  const [yLow, yHigh] = shown.yDomain;
  const left = (x: number): number => ((x - xLow) / (xHigh - xLow)) * plot.width;
  const top = (y: number): number => ((yHigh - y) / (yHigh - yLow)) * plot.height;
  const inside = shown.rules.filter(({ axis, value }) =>
    axis === 'x' ? value >= xLow && value <= xHigh : value >= yLow && value <= yHigh,
  );
  const upright = inside.filter(({ axis }) => axis === 'x').toSorted((a, b) => a.value - b.value);
  const level = inside.filter(({ axis }) => axis === 'y');
  const ruleTexts = [...uprightLabels(upright, left, plot)];
  for (const { label, value } of level) ruleTexts.push(levelLabel(label, top(value), ruleTexts, plot));
  const points = shown.points
    .filter(({ x, y }) => x >= xLow && x <= xHigh && y >= yLow && y <= yHigh)
    .map(({ label, x, y }) => ({ label, left: left(x), top: top(y) }));
  return {
    rows: inside.map(({ axis, value }) =>
      axis === 'x'
        ? { x: value, x2: value, y: yLow, y2: yHigh }
        : { x: xLow, x2: xHigh, y: value, y2: value },
    ),
    texts: [...ruleTexts, ...pointLabels(points, ruleTexts, plot)],
  };
}

/** Labels at the top of upright rules, each a row lower while it would run into the one before. */
function uprightLabels(
  rules: readonly Rule[],
  left: (x: number) => number,
  plot: Plot,
): readonly PlacedText[] {
  const rowEnds: number[] = [];
  return rules.map(({ label, value }) => {
    const placed = beside(label, left(value), 0, plot);
    const free = rowEnds.findIndex((end) => end < placed.left);
    const row = free === -1 ? rowEnds.length : free;
    rowEnds[row] = placed.left + textWidth(placed.text, fontSize) + 6;
    return { ...placed, top: half + row * rowHeight };
  });
}

/** Label of a level rule: at its left end over it, under it, or at its right end, the first that meets no other label. */
function levelLabel(label: string, rule: number, taken: readonly PlacedText[], plot: Plot): PlacedText {
  const over = Math.max(half, rule - half);
  const under = Math.min(plot.height - half, rule + half);
  const first = beside(label, 0, over, plot);
  const right = Math.max(gap, plot.width - gap - textWidth(first.text, fontSize));
  const boxes = taken.map(boxOfText);
  const places = [first.left, right].flatMap((left) => [over, under].map((top) => ({ ...first, left, top })));
  return places.find((place) => boxes.every((box) => !overlap(boxOfText(place), box))) ?? first;
}

/** A text right of a place, or left of it where it would leave the plot. */
function beside(label: string, at: number, top: number, plot: Plot): PlacedText {
  const text = shortened(label, fontSize, plot.width - 12);
  const width = textWidth(text, fontSize);
  const left = at + gap + width <= plot.width ? at + gap : at - gap - width;
  return { left: Math.max(gap, left), top, text, colour: inkColours.muted };
}
