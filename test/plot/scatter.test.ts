import { describe, expect, it } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import { textWidth } from '../../lib/plot/chart/text-width.js';
import { besideStart, type ScatterChart, scatterChart } from '../../lib/plot/index.js';
import { names, points } from './sample-figures.js';

const few: ScatterChart = {
  ...points,
  series: [
    { name: 'one', points: [{ x: 0.1, y: 0.2, label: 'a' }] },
    { name: 'none', points: [] },
    { name: 'two', points: [{ x: 0.3, y: 0.05 }] },
  ],
};

describe('a scatter chart', () => {
  it('draws in the unit of its axes from zero on, and keeps SI in its table', () => {
    const figure = scatterChart(few);
    expect(figure.drawings.wide.data['dots']).toMatchObject([
      { x: 10, y: 20 },
      { x: 30, y: 5 },
    ]);
    expect(figure.drawings.wide.signals).toMatchObject({ xLow: 0, xHigh: 30, yLow: 0, yHigh: 20 });
    expect(figure.table.columns.map(({ label }) => label)).toEqual([
      'Design',
      'Kind',
      'Off when slow',
      'Off when fast',
    ]);
    expect(figure.table.rows).toEqual([
      ['a', 'one', 0.1, 0.2],
      [null, 'two', 0.3, 0.05],
    ]);
  });

  it('tells kinds apart by shape too, and leaves a kind without points out of the legend alone', () => {
    const { data } = scatterChart(few).drawings.wide;
    const [first, second] = data['dots'] ?? [];
    expect(first?.['shape']).not.toBe(second?.['shape']);
    expect(data['keys']?.map(({ shape }) => shape)).toEqual([first?.['shape'], second?.['shape']]);
    const whole = scatterChart({
      ...few,
      series: few.series.map((one) => ({ ...one, points: [{ x: 1, y: 1 }] })),
    });
    expect(whole.drawings.wide.data['dots']?.[2]?.['shape']).toBe(second?.['shape']);
  });

  it.each(['wide', 'narrow'] as const)(
    'has a label at each point that has one, and keeps them apart, %s',
    (layout) => {
      const { data, width, padding } = scatterChart(points).drawings[layout];
      const labels = data['halos'] ?? [];
      expect(data['texts']).toEqual(expect.arrayContaining([...labels]));
      expect(labels.map(({ text }) => text)).toEqual(
        Array.from({ length: 12 }, (_, index) => `${index + 1}`),
      );
      expect(scatterChart(few).drawings[layout].data['halos']?.map(({ text }) => text)).toEqual(['a']);
      const boxes = labels.map(({ left, top, text }) => ({
        left: Number(left),
        right: Number(left) + textWidth(String(text), 12),
        top: Number(top),
      }));
      for (const [index, a] of boxes.entries()) {
        expect(a.right).toBeLessThanOrEqual(width - padding.left - padding.right);
        for (const b of boxes.slice(index + 1))
          expect(a.right <= b.left || b.right <= a.left || Math.abs(a.top - b.top) >= 12).toBe(true);
      }
    },
  );

  it('shows the starting case in grey behind, on axes that hold both', () => {
    const far = { ...few, series: [{ name: 'far', points: [{ x: 0.5, y: 0.01 }] }] };
    const { data, signals } = besideStart(scatterChart(few), scatterChart(far)).drawings.wide;
    expect(data['start']).toMatchObject([{ x: 50, y: 1 }]);
    expect(data['start']?.[0]?.['colour']).not.toBe(data['dots']?.[0]?.['colour']);
    expect(data['texts']?.map(({ text }) => text)).toContain('starting case');
    expect(signals).toMatchObject({ xHigh: 50, yHigh: 20 });
  });

  it('refuses what it cannot draw', () => {
    const wrong = [
      { ...points, alt: ' ' },
      { ...points, series: [] },
      { ...points, series: [{ name: 'a', points: [] }] },
      { ...points, series: names.slice(0, 2).map(() => ({ name: 'a', points: [{ x: 1, y: 1 }] })) },
      { ...points, series: [{ name: 'a', points: [{ x: Number.NaN, y: 1 }] }] },
      { ...points, y: { ...points.y, domain: [1, 0] as const } },
    ];
    for (const chart of wrong) expect(() => scatterChart(chart)).toThrow(InputError);
  });
});
