import { describe, expect, test } from 'vitest';
import { textWidth } from '../../lib/plot/chart/text-width.js';
import { lineChart, scatterChart } from '../../lib/plot/index.js';
import { boxOf } from './boxes.js';
import { across, down, lines, number, plotOf, points, rowsOf, textOf } from './small-charts.js';

describe('lines', () => {
  test('whose names stand at their ends are led to them from the height at which each ends', () => {
    const { wide } = lineChart(lines(['one', 'two', 'three'])).drawings;
    const leaders = rowsOf(wide, 'leaders');
    const width = plotOf(wide).width;
    // From top to bottom they end at 60, 40 and 20 N.
    for (const [place, value] of [60, 40, 20].entries()) {
      const name = textOf(wide, ['three', 'two', 'one'][place] ?? '');
      const leader = leaders[place];
      expect(number(leader, 'top')).toBeCloseTo(down(wide, value), 9);
      expect(number(leader, 'bottom')).toBe(number(name, 'top'));
      expect(number(leader, 'left')).toBeGreaterThan(width);
      expect(number(leader, 'right')).toBeGreaterThan(number(leader, 'left') + 10);
      expect(number(leader, 'right')).toBeLessThan(number(name, 'left'));
      const line = rowsOf(wide, 'lines')[2 - place];
      expect(leader?.['colour']).toBe(line?.['colour']);
    }
    expect(wide.padding.bottom).toBe(lineChart(lines(['one'])).drawings.wide.padding.bottom);
  });

  test('that end near each other have their names a line apart', () => {
    const close = lines(['one', 'two']).series.map((one) => ({
      ...one,
      points: one.points.map(({ x }) => ({ x, y: 3 * x })),
    }));
    const { wide } = lineChart({ ...lines(), series: close }).drawings;
    const [one, two] = ['one', 'two'].map((name) => number(textOf(wide, name), 'top'));
    expect(Math.abs((two ?? 0) - (one ?? 0))).toBeGreaterThanOrEqual(14);
    expect(Math.abs((two ?? 0) - (one ?? 0))).toBeLessThan(20);
  });

  test('that end outside the axis have their names inside', () => {
    const cut = lineChart({ ...lines(), y: { label: 'Force', unit: 'N', domain: [25, 30] } }).drawings.wide;
    const [one, two] = ['one', 'two'].map((name) => number(textOf(cut, name), 'top'));
    expect([one, two]).toEqual([plotOf(cut).height, 0]);
    expect(rowsOf(cut, 'leaders').map((row) => row['top'])).toEqual([0, plotOf(cut).height]);
  });

  test('keep the room on the right that their longest name needs, within limits', () => {
    const roomFor = (name: string) => {
      const { padding, width, data } = lineChart(lines(['a', name])).drawings.wide;
      const placed = data['texts']?.find(({ text }) => String(text).startsWith(name.slice(0, 5)));
      expect(boxOf(placed as never).right).toBeLessThanOrEqual(width - padding.left);
      return padding.right;
    };
    expect(roomFor('n'.repeat(14))).toBeLessThan(textWidth('n'.repeat(14), 12) + 32);
    expect(roomFor('n'.repeat(200))).toBeLessThan(680 / 3);
  });

  test('of which one ends well before the right edge have their names in a legend, and those within a fiftieth of it have not', () => {
    const ending = (x: number) => {
      const [one, two] = lines().series;
      if (one === undefined || two === undefined) throw new Error('two series');
      const short = {
        ...two,
        points: [
          { x: 0, y: 0 },
          { x, y: 40 },
        ],
      };
      // The axis begins at 5: a fiftieth of it is 0.1.
      return rowsOf(
        lineChart({ ...lines(), x: { label: 'x', unit: '', domain: [5, 10] }, series: [one, short] }).drawings
          .wide,
        'keys',
      ).length;
    };
    expect([ending(9.85), ending(9.95), ending(10), ending(12)]).toEqual([2, 0, 0, 0]);
  });

  test('have no name where there is one alone', () => {
    const { wide } = lineChart(lines(['one'])).drawings;
    expect(textOf(wide, 'one')).toBeUndefined();
    expect(wide.padding.right).toBeLessThan(30);
  });

  test('have marks at their values, and rules across', () => {
    const { wide } = lineChart({
      ...lines(),
      points: [{ x: 5, y: 30, label: 'p' }],
      rules: [{ axis: 'y', value: 10, label: 'r' }],
    }).drawings;
    expect(rowsOf(wide, 'points')).toEqual([{ x: 5, y: 30 }]);
    expect(rowsOf(wide, 'rules')).toEqual([{ x: 0, x2: 10, y: 10, y2: 10 }]);
    const name = textOf(wide, 'p');
    expect(number(name, 'left') - across(wide, 5)).toBeGreaterThan(6);
    expect(number(name, 'left') - across(wide, 5)).toBeLessThan(10);
    expect(down(wide, 10) - number(textOf(wide, 'r'), 'top')).toBeGreaterThan(6);
    // Both stand on a halo, since they may cross a line.
    expect(rowsOf(wide, 'halos').map(({ text }) => text)).toEqual(['r', 'p']);
  });

  test('with one end of a band at a point have none there, in the picture and in the table', () => {
    const [one] = lines(['one']).series;
    const half = (one?.points ?? []).map((point) => ({ ...point, low: point.y - 1 }));
    const y = { label: 'Force', unit: 'N', dimension: 'force' } as const;
    const without = lineChart({ ...lines(), y, series: [{ name: 'one', points: half }] });
    expect(rowsOf(without.drawings.wide, 'bands')).toEqual([]);
    expect(without.table.rows).toEqual([
      [0, 0],
      [10, 20],
    ]);
    const some = [...half, { x: 20, y: 30, low: 29, high: 32 }, { x: 30, y: 30, high: 31 }];
    expect(lineChart({ ...lines(), series: [{ name: 'one', points: some }] }).table.rows).toEqual([
      [0, 0, null, null],
      [10, 20, null, null],
      [20, 30, 29, 32],
      [30, 30, null, null],
    ]);
  });

  test('have bands in the colour of their line, those that have one', () => {
    const [one, two] = lines().series;
    const banded = (two?.points ?? []).map((point) => ({ ...point, low: point.y - 1, high: point.y + 1 }));
    const { wide } = lineChart({
      ...lines(),
      series: [...(one ? [one] : []), { name: 'two', points: banded }],
    }).drawings;
    expect(rowsOf(wide, 'bands').map((row) => row['colour'])).toEqual([rowsOf(wide, 'lines')[1]?.['colour']]);
  });
});

describe('numbers at the axes', () => {
  test.each(['lines', 'points'] as const)(
    'have room left of the upright one, and right for half of the last: %s',
    (kind) => {
      const far = { domain: [-2e7, 1e8] as const, unit: 'N' };
      const axes = { x: { ...far, label: 'x' }, y: { ...far, label: 'y' } };
      const { narrow } =
        kind === 'lines'
          ? lineChart({ ...lines(), ...axes }).drawings
          : scatterChart({ ...points(), ...axes }).drawings;
      // A tick of 4 px and 4 px to the number.
      expect(narrow.padding.left).toBeGreaterThanOrEqual(textWidth('100000000', 12) + 8);
      expect(narrow.padding.left).toBeLessThan(textWidth('100000000', 12) + 24);
      expect(narrow.padding.right).toBeGreaterThanOrEqual(textWidth('100000000', 12) / 2);
      expect(narrow.padding.right).toBeLessThan(textWidth('100000000', 12) / 2 + 8);
      const { narrow: short } =
        kind === 'lines' ? lineChart(lines()).drawings : scatterChart(points()).drawings;
      expect([short.padding.left, short.padding.right]).toEqual([40, 16]);
    },
  );
});
