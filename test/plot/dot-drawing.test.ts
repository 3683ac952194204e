import { describe, expect, test } from 'vitest';
import { textWidth } from '../../lib/plot/chart/text-width.js';
import { dotChart } from '../../lib/plot/index.js';
import { boxOf } from './boxes.js';
import { dots, number, plotOf, rowsOf, textOf } from './small-charts.js';

describe('a dot chart', () => {
  const chart = dots(['aa', 'bbbb', 'ccc'], ['one', 'two']);
  const { wide, narrow } = dotChart(chart).drawings;

  test.each([
    ['wide', wide],
    ['narrow', narrow],
  ])('%s: thin lines part the rows, which are all of one height and fill the plot', (_, drawing) => {
    const tops = rowsOf(drawing, 'rows').map((row) => number(row, 'top'));
    const { height } = plotOf(drawing);
    expect(tops).toEqual([0, height / 3, (2 * height) / 3]);
    for (const [place, top] of tops.entries()) {
      const own = rowsOf(drawing, 'dots')
        .filter((__, at) => at % 3 === place)
        .map((dot) => number(dot, 'top'));
      expect(own).toHaveLength(2);
      expect(Math.min(...own)).toBeGreaterThan(top + 6);
      expect(Math.max(...own)).toBeLessThan(top + height / 3 - 6);
    }
  });

  test('wide: the dots are in the middle of their row, and the lines reach under the names', () => {
    const rowHeight = plotOf(wide).height / 3;
    const [one, two] = [rowsOf(wide, 'dots')[0], rowsOf(wide, 'dots')[3]];
    expect((number(one, 'top') + number(two, 'top')) / 2).toBeCloseTo(rowHeight / 2, 9);
    for (const row of rowsOf(wide, 'rows')) {
      expect(number(row, 'left')).toBeGreaterThanOrEqual(-wide.padding.left);
      expect(number(row, 'left')).toBeLessThan(-10 - textWidth('bbbb', 12) / 2);
      expect(number(row, 'right')).toBe(plotOf(wide).width);
    }
    expect(rowsOf(narrow, 'rows').map((row) => row['left'])).toEqual([0, 0, 0]);
  });

  test('narrow: a name stands over its dots, between them and the line above', () => {
    for (const [place, name] of chart.categories.entries()) {
      const row = textOf(narrow, name);
      const line = number(rowsOf(narrow, 'rows')[place], 'top');
      const dot = number(rowsOf(narrow, 'dots')[place], 'top');
      // Letters of 12 px and dots of 10 px; the name is nearer to its dots than to the line.
      expect(number(row, 'top') - line).toBeGreaterThan(8);
      expect(dot - number(row, 'top')).toBeGreaterThan(11);
      expect(dot - number(row, 'top')).toBeLessThan(20);
    }
  });

  test('wide: the room for names is that of the longest, within limits', () => {
    const roomFor = (name: string) => dotChart(dots([name, 'b'])).drawings.wide.padding.left;
    const name = 'n'.repeat(14);
    expect(roomFor(name)).toBeGreaterThanOrEqual(textWidth(name, 12) + 10);
    expect(roomFor(name)).toBeLessThan(textWidth(name, 12) + 20);
    expect(roomFor('a')).toBe(40);
    expect(roomFor('n'.repeat(100))).toBeLessThan(680 / 3);
  });

  test('narrow: a long name is cut to the picture', () => {
    const { narrow: drawing } = dotChart(dots(['n'.repeat(100)])).drawings;
    const [name] = rowsOf(drawing, 'texts').filter(({ text }) => String(text).startsWith('nnn'));
    const box = boxOf(name as never);
    expect(box.right).toBeLessThanOrEqual(340 - drawing.padding.left);
    expect(box.right).toBeGreaterThan(340 - drawing.padding.left - 40);
  });

  test('keeps room under the plot for the numbers and the name of the axis', () => {
    const alone = dotChart(dots(['aa'])).drawings.wide;
    expect(number(textOf(alone, 'Force, N'), 'top')).toBeLessThan(alone.height - alone.padding.top - 6);
    expect(number(textOf(alone, 'Force, N'), 'top')).toBeGreaterThan(plotOf(alone).height + 8 + 12 + 6);
  });
});
