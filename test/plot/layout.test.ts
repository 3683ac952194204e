import { describe, expect, test } from 'vitest';
import { horizontalLabel, textRow, titleTexts } from '../../lib/plot/chart/layout.js';
import { textWidth } from '../../lib/plot/chart/text-width.js';

test('a text that is bold is heavier and no smaller than one that is not; it stands where it is put', () => {
  const place = { left: 3, top: 7, text: 'Force' };
  const [bold, plain] = [textRow({ ...place, bold: true }), textRow(place)];
  expect([bold['weight'], plain['weight']]).toEqual([600, 400]);
  expect(Number(bold['size'])).toBeGreaterThan(Number(plain['size']));
  expect(plain).toMatchObject({ left: 3, top: 7, text: 'Force', align: 'left' });
  expect(textRow({ ...place, bold: false })).toEqual(plain);
});

describe('a title', () => {
  const long = 'Force against shaft speed for four made-up oils in a narrow picture';

  test.each([
    ['over a plot without a label', 'Force', ''],
    ['over a label', 'Force', 'Force, N'],
    ['of more than one line', long, 'Force, N'],
  ])(
    '%s begins at the upper left corner of the picture and goes down by lines to the plot',
    (_, title, label) => {
      const { texts, room } = titleTexts(title, label, 50, 'narrow');
      const lines = texts.filter(({ bold }) => bold === true);
      expect(lines.map(({ text }) => text).join(' ')).toBe(title);
      expect(lines.length).toBe(title === long ? 2 : 1);
      for (const { left } of texts) expect(left + 50).toBe(2);
      // The middles of lines of 14 px: the first half a line below the edge, each of 17 px or more.
      const edge = (lines[0]?.top ?? Number.NaN) + room;
      expect(edge).toBeGreaterThanOrEqual(8);
      expect(edge).toBeLessThan(16);
      const tops = texts.map(({ top }) => top);
      for (const [place, top] of tops.entries()) {
        const next = tops[place + 1] ?? 0;
        expect(next - top).toBeGreaterThanOrEqual(place + 1 < tops.length ? 17 : 8);
        expect(next - top).toBeLessThan(30);
      }
      expect(texts.slice(lines.length).map(({ text }) => text)).toEqual(label === '' ? [] : [label]);
    },
  );

  test('breaks where the picture ends', () => {
    // 340 px less some room: of letters of 14 · 0.61 px 38 or 39.
    const words = (length: number) =>
      titleTexts(`${'n'.repeat(length - 2)} n`, '', 40, 'narrow').texts.length;
    expect([words(37), words(41)]).toEqual([1, 2]);
  });
});

describe('the name of the lower axis', () => {
  test('stands under its middle', () => {
    const { left, top, text } = horizontalLabel('Shaft speed', { width: 400, height: 300 });
    expect(left + textWidth(text, 12) / 2).toBeCloseTo(200, 9);
    // Under the ticks and their numbers of 12 px.
    expect(top).toBeGreaterThan(300 + 8 + 12 + 6);
    expect(top).toBeLessThan(300 + 46 - 6);
  });

  test('begins with the axis where it is longer than that', () => {
    expect(horizontalLabel('n'.repeat(100), { width: 200, height: 300 }).left).toBe(0);
  });
});
