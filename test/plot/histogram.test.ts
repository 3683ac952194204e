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
});
