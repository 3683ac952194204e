import { describe, expect, test } from 'vitest';
import { scatterChart } from '../../lib/plot/index.js';
import { boxOf } from './boxes.js';
import { across, down, number, points, rowsOf, textOf } from './small-charts.js';

describe('points of two values', () => {
  test('have their labels beside their places, and none outside the axes', () => {
    const domain = [5, 25] as const;
    const axes = { x: { ...points().x, domain }, y: { ...points().y, domain } };
    const { wide } = scatterChart({ ...points(), ...axes }).drawings;
    for (const [name, x, y] of [
      ['no. 0', 10, 20],
      ['no. 1', 15, 15],
    ] as const) {
      const row = textOf(wide, name);
      const box = boxOf(row as never);
      const side = Math.min(Math.abs(box.left - across(wide, x)), Math.abs(box.right - across(wide, x)));
      expect(side).toBeGreaterThan(6);
      expect(side).toBeLessThan(10);
      expect(Math.abs(number(row, 'top') - down(wide, y))).toBeLessThan(16);
    }
    const labelled = (x: number, y: number): number => {
      const axis = { label: 'x', unit: '', domain: [5, 10] as const };
      const chart = {
        ...points(['one']),
        x: axis,
        y: axis,
        series: [{ name: 'one', points: [{ x, y, label: 'p' }] }],
      };
      return rowsOf(scatterChart(chart).drawings.wide, 'halos').length;
    };
    expect([labelled(5, 5), labelled(10, 10), labelled(7, 7)]).toEqual([1, 1, 1]);
    expect([labelled(4.9, 7), labelled(10.1, 7), labelled(7, 4.9), labelled(7, 10.1)]).toEqual([0, 0, 0, 0]);
  });

  test('are seen at their values, in the look of their kind', () => {
    const { wide } = scatterChart(points()).drawings;
    expect(rowsOf(wide, 'dots')).toMatchObject([
      { x: 10, y: 20 },
      { x: 15, y: 15 },
    ]);
    expect(number(textOf(wide, 'Slow, N'), 'top')).toBeLessThan(
      wide.height - wide.padding.top - wide.padding.bottom + 46,
    );
  });
});
