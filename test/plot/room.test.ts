import { describe, expect, test } from 'vitest';
import { textWidth } from '../../lib/plot/chart/text-width.js';
import { dotChart, lineChart, scatterChart } from '../../lib/plot/index.js';
import { scatterSpec } from '../../lib/plot/vega/scatter-spec.js';
import { dots, lines, names, points } from './sample-figures.js';

// What stands where in a drawing, by what a reader must be able to see; pixels from the corner of the plot.
const figures = { lines: lineChart(lines), dots: dotChart(dots), points: scatterChart(points) };
/** Part of a text that stands left of its place. */
const shares: Readonly<Record<string, number>> = { left: 0, center: 0.5, right: 1 };
const layouts = ['wide', 'narrow'] as const;

type Row = Readonly<Record<string, unknown>>;
const number = (row: Row | undefined, key: string): number => Number(row?.[key]);
const all = (Object.keys(figures) as (keyof typeof figures)[]).flatMap((name) =>
  layouts.map((layout) => ({ name, layout, drawing: figures[name].drawings[layout] })),
);

describe.each(all)('$name, $layout', ({ name, drawing }) => {
  const { width, height, padding, data } = drawing;

  test('every text stands inside the picture', () => {
    for (const row of (data['texts'] ?? []) as readonly Row[]) {
      const wide = textWidth(String(row['text']), number(row, 'size'));
      const left = number(row, 'left') - (shares[String(row['align'])] ?? 0) * wide;
      // A quarter turn about the middle of its left end, for what names an upright axis.
      if (row['angle'] !== undefined && row['angle'] !== 0) continue;
      expect(left, String(row['text'])).toBeGreaterThanOrEqual(-padding.left - 1);
      expect(left + wide, String(row['text'])).toBeLessThanOrEqual(width - padding.left + 1);
      expect(number(row, 'top')).toBeGreaterThanOrEqual(-padding.top);
      expect(number(row, 'top')).toBeLessThanOrEqual(height - padding.top);
    }
  });

  test('the name of the lower axis stands under the plot and under the numbers of the axis', () => {
    const below = { lines: 'Shaft speed, mm/s', dots: 'Damping force, N', points: 'Off when slow, %' }[name];
    const row = ((data['texts'] ?? []) as readonly Row[]).find(({ text }) => text === below);
    expect(number(row, 'top')).toBeGreaterThan(height - padding.top - padding.bottom + 20);
  });

  test('the entries of the legend stand in rows, none over another', () => {
    for (const key of (data['keys'] ?? []) as readonly Row[])
      for (const row of (data['texts'] ?? []) as readonly Row[]) {
        if (row['align'] !== 'left' || Math.abs(number(row, 'top') - number(key, 'top')) >= 9) continue;
        const over = number(row, 'left') + textWidth(String(row['text']), number(row, 'size'));
        expect(
          over <= number(key, 'left') || number(row, 'left') >= number(key, 'right'),
          `${row['text']}`,
        ).toBe(true);
      }
    for (const [place, row] of ((data['texts'] ?? []) as readonly Row[]).entries())
      for (const other of ((data['texts'] ?? []) as readonly Row[]).slice(place + 1)) {
        if (row['align'] !== 'left' || other['align'] !== 'left') continue;
        const [first, second] = number(row, 'left') <= number(other, 'left') ? [row, other] : [other, row];
        const over = number(first, 'left') + textWidth(String(first['text']), number(first, 'size'));
        const clear = over <= number(second, 'left') + 1;
        expect(
          clear || Math.abs(number(row, 'top') - number(other, 'top')) >= 9,
          `${first['text']} | ${second['text']}`,
        ).toBe(true);
      }
  });

  test('no text is empty, and an upright axis has its name with its unit', () => {
    const texts = ((data['texts'] ?? []) as readonly Row[]).map(({ text }) => String(text));
    expect(texts).not.toContain('');
    const [upright] = { lines: ['Damping force, N'], dots: [], points: ['Off when fast, %'] }[name] ?? [];
    if (upright !== undefined) expect(texts).toContain(upright);
  });

  test('the plot lies inside it, with room for the numbers of its axis underneath', () => {
    expect(padding.left + padding.right).toBeLessThan(width / 1.5);
    // Numbers of 12 px, their marks and the name of the axis.
    expect(padding.bottom).toBeGreaterThan(2 * 12);
    expect(height).toBeGreaterThan(padding.top + padding.bottom + 50);
  });
});

describe('dots', () => {
  const { wide, narrow } = figures.dots.drawings;
  const rowsOf = (drawing: typeof wide, key: string) => drawing.data[key] as readonly Row[];
  const topsOf = (drawing: typeof wide, row: number) =>
    rowsOf(drawing, 'dots')
      .filter((_, place) => place % names.length === row)
      .map((dot) => number(dot, 'top'));
  const nameOf = (drawing: typeof wide, row: number) =>
    rowsOf(drawing, 'texts').find(({ text }) => String(text).startsWith(names[row]?.slice(0, 4) ?? ''));

  test.each([
    ['wide', wide],
    ['narrow', narrow],
  ])(
    '%s: the dots of a row lie together, in the order of the series, above those of the next',
    (_, drawing) => {
      for (const row of names.keys()) {
        const tops = topsOf(drawing, row);
        expect(tops).toHaveLength(3);
        // Dots are 10 px wide.
        for (const [place, top] of tops.slice(1).entries())
          expect(top - (tops[place] ?? 0)).toBeGreaterThan(10);
        if (row > 0) expect(Math.min(...tops)).toBeGreaterThan(Math.max(...topsOf(drawing, row - 1)) + 14);
      }
    },
  );

  test('names stand left of their rows where there is room, and above them where there is not', () => {
    for (const row of names.keys()) {
      const [beside, above] = [nameOf(wide, row), nameOf(narrow, row)];
      expect(beside?.['align']).toBe('right');
      expect(number(beside, 'left')).toBeLessThan(0);
      const tops = topsOf(wide, row);
      expect(number(beside, 'top')).toBeCloseTo((Math.min(...tops) + Math.max(...tops)) / 2, 6);
      expect(number(above, 'left')).toBeGreaterThanOrEqual(0);
      expect(number(above, 'top')).toBeLessThan(Math.min(...topsOf(narrow, row)));
      if (row > 0) expect(number(above, 'top')).toBeGreaterThan(Math.max(...topsOf(narrow, row - 1)));
    }
  });

  test('only the dots with an interval have a whisker, and it goes past its dot both ways', () => {
    // The second name has 3 less to 9 more, in each of three series.
    const whiskers = rowsOf(wide, 'whiskers');
    expect(
      whiskers.map((row) => [number(row, 'x') - number(row, 'low'), number(row, 'high') - number(row, 'x')]),
    ).toEqual([3, 3, 3].map((low) => [low, 9]));
  });
});

test('an interval with one end only has no whisker', () => {
  const half = dotChart({
    ...dots,
    categories: ['thin'],
    series: [
      {
        name: 'a',
        dots: [
          { category: 'thin', value: 10, low: 5 },
          { category: 'thin', value: 10, high: 15 },
        ],
      },
    ],
  });
  expect(half.drawings.wide.data['whiskers']).toEqual([]);
  expect(half.table.columns.map(({ label }) => label)).toEqual(['Oil', 'a']);
  expect(half.table.rows).toEqual([['thin', 10]]);
});

test('a chart whose names stand underneath keeps room for half of the last number of its axis', () => {
  const far = lines.series.map((one) => ({
    ...one,
    points: one.points.map((point) => ({ ...point, x: 1e7 * point.x })),
  }));
  const { narrow } = lineChart({ ...lines, series: far, rules: [] }).drawings;
  const last = String(Math.round(number(narrow.signals, 'xHigh')));
  expect(narrow.padding.right).toBeGreaterThanOrEqual(textWidth(last, 12) / 2);
  const { wide } = lineChart({ ...lines, y: { ...lines.y, domain: [0, 2e8] } }).drawings;
  expect(wide.padding.left).toBeGreaterThanOrEqual(textWidth('200000000', 12));
});

test('a chart of no categories is refused by how many it needs', () => {
  expect(() => dotChart({ ...dots, categories: [] })).toThrow(
    'categories of figure three-temperatures must be 1 or more, got 0',
  );
});

test('the starting case has the smaller points, so that those of now are seen over it', () => {
  const sizeOf = (name: string): number => {
    const layer = scatterSpec().layer?.find((one) =>
      JSON.stringify(one).includes(`"data":{"name":"${name}"}`),
    );
    return Number(/"size":(\d+)/u.exec(JSON.stringify(layer))?.[1]);
  };
  expect(sizeOf('start')).toBeGreaterThan(0);
  expect(sizeOf('start')).toBeLessThan(sizeOf('dots'));
});

test('lines that reach the right edge have their names there, past the leaders, the highest line on top', () => {
  const { wide } = figures.lines.drawings;
  const plotWidth = wide.width - wide.padding.left - wide.padding.right;
  const texts = wide.data['texts'] as readonly Row[];
  const placed = names.map((name) => texts.find(({ text }) => String(text).startsWith(name.slice(0, 4))));
  // Leaders are 18 px long.
  for (const row of placed) expect(number(row, 'left')).toBeGreaterThanOrEqual(plotWidth + 18);
  // At the right edge the lines end at 40, 60, 80 and 100 N in the order of their names.
  const tops = placed.map((row) => number(row, 'top'));
  expect(tops).toEqual([...tops].sort((a, b) => b - a));
  expect((tops[0] ?? 0) - (tops[3] ?? 0)).toBeGreaterThan(40);
});
