import { describe, expect, it } from 'vitest';
import { histogram } from '../../lib/plot/figure/histogram.js';

const text = { id: 'spread', title: 'Spread', alt: 'Most are near 3 N.' };
const value = { label: 'Force', unit: 'N', dimension: 'force' } as const;

describe('histogram', () => {
  it('counts every value once, in classes of equal width from the least to the greatest', () => {
    // Rice: 2 · 8^(1/3) = 4 classes of 1 N.
    const { table } = histogram({
      ...text,
      value,
      counted: 'builds',
      values: [1, 1.5, 2, 2.2, 2.9, 3, 4.1, 5],
    });
    expect(table.columns.map(({ label }) => label)).toEqual(['From', 'To', 'Number of builds']);
    expect(table.rows).toEqual([
      [1, 2, 2],
      [2, 3, 3],
      [3, 4, 1],
      [4, 5, 2],
    ]);
  });

  it('refuses values that are all equal', () => {
    expect(() => histogram({ ...text, value, counted: 'builds', values: [2, 2] })).toThrow(
      '2 or more that differ',
    );
  });

  it('has thirty classes at the most, and at least as many as the rule asks for', () => {
    const classesOf = (number: number): number =>
      histogram({ ...text, value, counted: 'builds', values: Array.from({ length: number }, (_, at) => at) })
        .table.rows.length;
    // Rice: 2 · 27^(1/3) = 6, 2 · 28^(1/3) = 6.07, 2 · 4096^(1/3) = 32.
    expect([classesOf(27), classesOf(28), classesOf(4096)]).toEqual([6, 7, 30]);
  });

  it('is an outline that stands on zero, on an axis with a little room above, with its rules', () => {
    const chart = { ...text, value, counted: 'builds', values: [1, 1.5, 2, 2.2, 2.9, 3, 4.1, 5] };
    const { wide } = histogram({ ...chart, rules: [{ axis: 'x', value: 3, label: 'limit' }] }).drawings;
    // The most are 3, the next count that is 5 % above is 4.
    expect(wide.signals).toMatchObject({ xLow: 1, xHigh: 5, yLow: 0, yHigh: 4 });
    const { width, height } = { width: wide.width - wide.padding.left - wide.padding.right, height: 300 };
    const corners = [
      [0, 2],
      [1, 2],
      [1, 3],
      [2, 3],
      [2, 1],
      [3, 1],
      [3, 2],
      [4, 2],
    ].map(([from = 0, count = 0]) => `${Math.round(25 * from * width) / 100},${height - 75 * count}`);
    expect(wide.data['lines']?.[0]?.['path']).toBe(`M${corners.join('L')}`);
    // The area below goes back along zero.
    expect(String(wide.data['bands']?.[0]?.['path'])).toMatch(new RegExp(`L${width},300L0,300Z$`, 'u'));
    expect(wide.data['rules']).toMatchObject([{ x: 3, x2: 3 }]);
    expect(histogram(chart).drawings.wide.data['rules']).toEqual([]);
  });

  it('has round numbers at the top of its axis', () => {
    const topFor = (count: number) =>
      histogram({ ...text, value, counted: 'builds', values: [...Array.from({ length: count }, () => 1), 2] })
        .drawings.wide.signals['yHigh'];
    expect([topFor(5), topFor(19), topFor(20), topFor(100)]).toEqual([6, 20, 30, 200]);
  });
});
