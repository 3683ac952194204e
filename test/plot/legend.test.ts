import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inkColours } from '../../lib/plot/chart/palette.js';
import { textWidth } from '../../lib/plot/chart/text-width.js';
import { besideStart, dotChart, lineChart, scatterChart } from '../../lib/plot/index.js';
import { dots, lines, number, points, rowsOf, textOf } from './small-charts.js';

const startOf = {
  dots: { ...dots(['aa', 'bb']), series: [{ name: 'one', dots: [{ category: 'bb', value: 7 }] }] },
  lines: {
    ...lines(),
    series: [
      {
        name: 'one',
        points: [
          { x: 0, y: 5 },
          { x: 10, y: 6 },
        ],
      },
    ],
  },
  points: { ...points(), series: [{ name: 'one', points: [{ x: 3, y: 4 }] }] },
};
/** Each kind of chart with series of some names, whose names stand in a legend. */
const inLegend = {
  dots: (kinds: readonly string[]) => dotChart(dots(['aa', 'bb'], kinds)).drawings.wide,
  lines: (kinds: readonly string[]) => lineChart(lines(kinds)).drawings.narrow,
  points: (kinds: readonly string[]) => scatterChart(points(kinds)).drawings.wide,
};

describe.each(['dots', 'lines', 'points'] as const)('the legend of %s', (kind) => {
  test('has no entry for a series by itself', () => {
    expect(rowsOf(inLegend[kind](['one']), 'keys')).toEqual([]);
    expect(textOf(inLegend[kind](['one']), 'one')).toBeUndefined();
  });

  test('names the series in their order, each after its key, under the name of the axis', () => {
    const drawing = inLegend[kind](['one', 'two', 'three']);
    const keys = rowsOf(drawing, 'keys');
    const names = ['one', 'two', 'three'].map((name) => textOf(drawing, name));
    expect(keys).toHaveLength(3);
    // It begins at the left edge of the picture.
    const first = number(keys[0], 'left') + drawing.padding.left;
    expect(first).toBeGreaterThan(0);
    expect(first).toBeLessThan(12);
    const axis = Math.max(
      ...rowsOf(drawing, 'texts')
        .filter((row) => /^(?:Force|Speed|Slow), /u.test(String(row['text'])))
        .map((row) => number(row, 'top')),
    );
    for (const [place, name] of names.entries()) {
      const key = keys[place];
      expect(number(key, 'left')).toBeLessThan(number(key, 'centre'));
      expect(number(key, 'centre')).toBeLessThan(number(key, 'right'));
      expect(number(key, 'right')).toBeLessThan(number(name, 'left'));
      expect(number(key, 'top')).toBe(number(name, 'top'));
      expect(number(key, 'top')).toBeGreaterThanOrEqual(axis + 14);
      const next = keys[place + 1];
      // The space after a name is wider than that after a key.
      if (next !== undefined)
        expect(
          number(next, 'left') - number(name, 'left') - textWidth(String(name?.['text']), 12),
        ).toBeGreaterThan(number(name, 'left') - number(key, 'right'));
    }
  });

  test('shows the look that the series has in the plot', () => {
    const drawing = inLegend[kind](['one', 'two', 'three']);
    const drawn = rowsOf(drawing, kind === 'lines' ? 'lines' : 'dots').filter(
      (_, place) => kind !== 'dots' || place % 2 === 0,
    );
    for (const part of kind === 'lines' ? ['colour', 'dash'] : ['colour', 'shape']) {
      const looks = drawn.map((row) => row[part]);
      expect(rowsOf(drawing, 'keys').map((key) => key[part])).toEqual(looks);
      expect(new Set(looks.map(String)).size).toBe(3);
    }
  });

  test('stays in the picture however long its names, each in a row with the others as far as they fit', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 2, maxLength: 12 }), (lengths) => {
        const drawing = inLegend[kind](
          lengths.map((length, place) => `${String.fromCharCode(97 + place)}${'n'.repeat(length)}`),
        );
        const keys = rowsOf(drawing, 'keys');
        const right = drawing.width - drawing.padding.left;
        const bottom = drawing.height - drawing.padding.top;
        const names = keys.map((key) =>
          rowsOf(drawing, 'texts').find(
            (row) => row['top'] === key['top'] && number(row, 'left') === number(key, 'left') + 30,
          ),
        );
        const ends = names.map((name) => number(name, 'left') + textWidth(String(name?.['text']), 12));
        expect(Math.max(...ends)).toBeLessThanOrEqual(right);
        expect(Math.max(...keys.map((key) => number(key, 'top')))).toBeLessThanOrEqual(bottom - 8);
        for (const [place, key] of keys.entries()) {
          const before = keys[place - 1];
          if (before === undefined) continue;
          const step = number(key, 'top') - number(before, 'top');
          // A name that begins a row would have left the picture in the one before.
          const needed = (ends[place - 1] ?? 0) + 18 + (ends[place] ?? 0) - number(key, 'left');
          if (step > 0)
            expect([step, number(key, 'left'), needed > right - 14]).toEqual([
              20,
              number(keys[0], 'left'),
              true,
            ]);
          else expect([step, number(key, 'left') > (ends[place - 1] ?? 0)]).toEqual([0, true]);
        }
      }),
      { numRuns: 30 },
    );
  });
});

describe('the case before', () => {
  const start = {
    dots: besideStart(dotChart(dots(['aa', 'bb'])), dotChart(startOf.dots)),
    lines: besideStart(lineChart(lines(['one'])), lineChart(startOf.lines)),
    points: besideStart(scatterChart(points(['one'])), scatterChart(startOf.points)),
  };

  test.each(['dots', 'lines', 'points'] as const)(
    'is named in grey after the series, one alone too: %s',
    (kind) => {
      const keys = rowsOf(start[kind].drawings.narrow, 'keys');
      expect(keys).toHaveLength(2);
      expect(keys[1]?.['colour']).toBe(inkColours.rule);
      expect(keys[0]?.['colour']).not.toBe(inkColours.rule);
      const named = rowsOf(start[kind].drawings.narrow, 'texts').filter(
        (row) => row['top'] === keys[0]?.['top'],
      );
      expect(named.map(({ text }) => text)).toEqual(['one', 'starting case']);
    },
  );

  test('is in its row, of kinds and categories that are still there', () => {
    const drawing = start.dots.drawings.wide;
    expect(rowsOf(drawing, 'start')).toMatchObject([
      { x: 7, top: number(rowsOf(drawing, 'dots')[1], 'top'), colour: inkColours.rule },
    ]);
    const gone = besideStart(dotChart(dots(['aa'])), dotChart(dots(['aa', 'bb'], ['one', 'two'])));
    // The same dots of the only category and kind that are left.
    expect(rowsOf(gone.drawings.wide, 'start')).toHaveLength(1);
  });

  test('of another kind of chart is not drawn', () => {
    const kinds = [dotChart(dots(['aa'])), lineChart(lines()), scatterChart(points())];
    for (const now of kinds)
      for (const before of kinds) if (now !== before) expect(besideStart(now, before)).toBe(now);
  });
});
