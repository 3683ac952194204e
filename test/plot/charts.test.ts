import { describe, expect, it } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import { textWidth } from '../../lib/plot/chart/text-width.js';
import { besideStart, dotChart, lineChart } from '../../lib/plot/index.js';
import { dots, lines, names } from './sample-figures.js';

const speed = { label: 'Speed', unit: 'mm/s', dimension: 'speed' } as const;
const force = { label: 'Force', unit: 'N' };
const line = (name: string, ...points: readonly (readonly [number, number])[]) => ({
  name,
  points: points.map(([x, y]) => ({ x, y })),
});

describe('a line chart', () => {
  it('draws in the unit of its axes and keeps SI in its table', () => {
    const figure = lineChart({
      ...lines,
      x: { ...speed, domain: [-0.5, 0.5] },
      y: { ...force, domain: [0, 20] },
      series: [line('a', [0, 1], [0.5, 17])],
    });
    const { data, width, height, padding, signals } = figure.drawings.wide;
    expect(signals).toMatchObject({ xLow: -500, xHigh: 500, yLow: 0, yHigh: 20 });
    // Half way across and 1 of 20 up, then the right end and 17 of 20 up.
    const plot = {
      width: width - padding.left - padding.right,
      height: height - padding.top - padding.bottom,
    };
    const place = (across: number, up: number): string =>
      [across * plot.width, (1 - up) * plot.height].map((at) => Number(at.toFixed(2))).join();
    expect(data['lines']).toMatchObject([{ path: `M${place(0.5, 1 / 20)}L${place(1, 17 / 20)}` }]);
    expect(figure.table.rows).toEqual([
      [0, 1],
      [0.5, 17],
    ]);
  });

  it('has a table with a column for each line and for the ends of its band', () => {
    const { table } = lineChart(lines);
    const [first, second] = names;
    expect(table.columns.map(({ label }) => label).slice(0, 5)).toEqual([
      'Shaft speed',
      first,
      second,
      `${second}, low`,
      `${second}, high`,
    ]);
    expect(table.rows[0]?.slice(0, 5)).toEqual([-1, -40, -60, -65, -52]);
  });

  it('leaves a cell empty where a line has no point', () => {
    const figure = lineChart({ ...lines, series: [line('a', [0, 1], [2, 3]), line('b', [0, 5], [1, 6])] });
    expect(figure.table.rows).toEqual([
      [0, 1, 5],
      [1, null, 6],
      [2, 3, null],
    ]);
  });

  it('ends at the data across and at round numbers upwards, or where it is told', () => {
    const plain = {
      ...lines,
      x: { label: 'x', unit: '' },
      y: force,
      startingCase: [],
      points: [],
      rules: [],
    };
    const free = lineChart({ ...plain, series: [line('a', [8, -3], [38, 17.3])] });
    expect(free.drawings.wide.signals).toMatchObject({ xLow: 8, xHigh: 38, yLow: -5, yHigh: 20 });
    const fixed = lineChart({
      ...plain,
      y: { ...force, domain: [0, 42] },
      series: [line('a', [8, -3], [38, 17.3])],
    });
    expect(fixed.drawings.narrow.signals).toMatchObject({ yLow: 0, yHigh: 42 });
  });

  it('converts a given domain', () => {
    const figure = lineChart({ ...lines, x: { ...speed, domain: [-0.5, 0.5] }, y: force });
    expect(figure.drawings.wide.signals).toMatchObject({ xLow: -500, xHigh: 500 });
  });

  it('shows the starting case in grey, behind and named', () => {
    const { data } = lineChart(lines).drawings.wide;
    expect(data['start']?.map(({ path }) => path)).toEqual([expect.stringMatching(/^M[-\d.]+,[-\d.]+L/u)]);
    expect(data['texts']?.map(({ text }) => text)).toContain('starting case');
    expect(data['start']?.[0]?.['colour']).not.toBe(data['lines']?.[0]?.['colour']);
  });

  it('has no starting case beside it where nothing but its words changed', () => {
    const now = lineChart({ ...lines, startingCase: [], title: 'at 30 °C' });
    const start = lineChart({ ...lines, startingCase: [], title: 'at 20 °C' });
    expect(besideStart(now, start)).toBe(now);
    const moved = lineChart({ ...lines, startingCase: [], series: [line('a', [0, 1], [1, 2])] });
    expect(besideStart(moved, start).drawings.wide.data['start']?.length).toBe(lines.series.length);
  });

  it.each(['wide', 'narrow'] as const)('keeps the labels of rules and points apart, %s', (layout) => {
    const labels = lineChart(lines).drawings[layout].data['halos'] ?? [];
    expect(labels.length).toBe(5);
    const boxes = labels.map(({ left, top, text }) => ({
      left: Number(left),
      right: Number(left) + textWidth(String(text), 12),
      top: Number(top),
    }));
    for (const [index, a] of boxes.entries())
      for (const b of boxes.slice(index + 1))
        expect(a.right <= b.left || b.right <= a.left || Math.abs(a.top - b.top) >= 12).toBe(true);
  });

  it('has fewer ticks across where it is narrow', () => {
    const { wide, narrow } = lineChart(lines).drawings;
    expect(narrow.signals['xTicks']).toBeLessThan(wide.signals['xTicks'] ?? 0);
  });

  it('refuses what it cannot draw', () => {
    const wrong = [
      { ...lines, series: [] },
      { ...lines, series: Array.from({ length: 13 }, (_line, index) => line(`${index}`, [0, 0], [1, 1])) },
      { ...lines, series: [line('a', [0, 0], [1, 1]), line('a', [0, 0], [1, 1])] },
      { ...lines, series: [line('a', [0, 0])] },
      { ...lines, series: [line('a', [0, 0], [1, Number.NaN])] },
      { ...lines, series: [line('a', [0, 0], [Number.POSITIVE_INFINITY, 1])] },
      { ...lines, y: { ...force, domain: [1, 1] as const } },
    ];
    for (const chart of wrong) expect(() => lineChart(chart)).toThrow(InputError);
  });
});

describe('a dot chart', () => {
  it('reaches zero and has a row for each category', () => {
    const figure = dotChart(dots);
    expect(figure.drawings.wide.signals['xLow']).toBe(0);
    expect(figure.table.columns.map(({ label }) => label)).toEqual([
      'Oil',
      ...['8 °C', '20 °C', '38 °C'].flatMap((name) => [name, `${name}, low`, `${name}, high`]),
    ]);
    expect(figure.table.rows[1]?.slice(0, 4)).toEqual([names[1], 35, 32, 44]);
    expect(figure.table.rows[0]?.slice(0, 4)).toEqual(['thin', 25, null, null]);
  });

  it('keeps room on the right for half of the last number of its axis, and 20 px in any case', () => {
    const roomAt = (times: number) => {
      const series = dots.series.map((one) => ({
        ...one,
        dots: one.dots.map(({ category, value }) => ({ category, value: times * value })),
      }));
      return dotChart({ ...dots, series }).drawings.wide.padding.right;
    };
    expect(roomAt(1)).toBe(20);
    // A digit of a sans serif face is about half as wide as its size of 12 px: nine digits and their spaces take 60 px or more.
    expect(roomAt(1e7)).toBeGreaterThan(30);
    expect(roomAt(1e7)).toBeLessThan(60);
  });

  it('grows with its rows', () => {
    const short = dotChart({ ...dots, categories: ['thin'], series: [{ name: 'a', dots: [] }] });
    expect(dotChart(dots).drawings.narrow.height).toBeGreaterThan(short.drawings.narrow.height);
  });

  it('refuses what it cannot draw', () => {
    const wrong = [
      { ...dots, categories: [] },
      { ...dots, categories: ['thin', 'thin'] },
      { ...dots, series: [{ name: 'a', dots: [{ category: 'unknown', value: 1 }] }] },
      { ...dots, series: [{ name: 'a', dots: [{ category: 'thin', value: Number.NaN }] }] },
      { ...dots, series: [] },
    ];
    for (const chart of wrong) expect(() => dotChart(chart)).toThrow(InputError);
  });
});
