import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { shortened, textWidth, wrapped } from '../../lib/plot/chart/text-width.js';
import { fontFiles } from '../../lib/runner/build/fonts.js';

const samples = [
  'Silicone oil 350 cSt at 25 °C',
  'two 1.5 two 1.2',
  'Damping coefficient, N·s/m',
  '“label 35”, half used & filtered (WORKSHOP)',
  'MINIMUM WARMTH @ 100 %',
  'illicit fill, little till',
];

describe('the estimated width of a text', () => {
  it('has room for the text as drawn with the shipped font, and not half as much again', () => {
    for (const text of samples) {
      const drawn = drawnWidth(text);
      expect(textWidth(text, 100)).toBeGreaterThan(drawn);
      expect(textWidth(text, 100)).toBeLessThan(1.5 * drawn);
    }
  });
});

describe('a shortened text', () => {
  it('fits, and keeps its beginning and its end', () => {
    const short = shortened('a name so long that there is no room for it', 12, 120);
    expect(textWidth(short, 12)).toBeLessThanOrEqual(120);
    expect(short).toMatch(/^a name.*….*it$/u);
  });

  it('keeps as many letters as there is room for, two at the beginning for one at the end', () => {
    // Of letters that are 0.61 of their size wide beside a dash of dots of 0.96: eight take 5.84 sizes, nine 6.45.
    const nineFit = 12 * 6.45 + 0.01;
    expect(shortened('nnnnnnnnnnnnnnnn', 12, nineFit)).toBe('nnnnnn…nnn');
    expect(shortened('nnnnnnnnnnnnnnnn', 12, nineFit - 0.02)).toBe('nnnnnn…nn');
    expect(shortened('nnnnnnnnnn', 12, 12 * 6.1 + 0.01)).toBe('nnnnnnnnnn');
    expect(shortened('nnnnnnnnnn', 12, 12 * 6.1 - 0.01)).toBe('nnnnnn…nn');
    // Three letters are the fewest: 0.96 + 3 · 0.61.
    expect(shortened('nnnnnnnnnn', 12, 12 * 2.79 + 0.01)).toBe('nn…n');
    expect(shortened('nnnnnnnnnn', 12, 12 * 2.79 - 0.01)).toBe('…');
  });

  it('has no space beside its dots', () => {
    for (let limit = 50; limit < 110; limit += 5)
      expect(shortened('nn nn nn nn nn nn', 12, limit)).not.toMatch(/ …|… /u);
  });

  it('is the text where it fits', () => {
    expect(shortened('short', 12, 120)).toBe('short');
  });
});

describe('a wrapped text', () => {
  it('keeps a number and its unit on one line', () => {
    const text = 'Rebound damping at 20 °C, whiskers from 38 °C to 8 °C';
    for (let width = 60; width < 300; width += 5)
      for (const line of wrapped(text, 12, width)) expect(line).not.toMatch(/\d$|^°C/u);
  });

  it('fills its lines: a word that begins one had no room in the one before', () => {
    const text = 'of many short words there are always some that go on the next line';
    for (let width = 60; width < 300; width += 7) {
      const lines = wrapped(text, 12, width);
      for (const [place, line] of lines.slice(1).entries())
        expect(textWidth(`${lines[place]} ${line.split(' ')[0]}`, 12)).toBeGreaterThan(width);
    }
  });

  it('has a word that is wider than a line cut short on a line of its own', () => {
    const lines = wrapped('a supercalifragilistic word', 12, 80);
    expect(lines[0]).toBe('a');
    expect(lines[1]).toMatch(/^super.*….*$/u);
    expect(lines.map((line) => textWidth(line, 12) <= 80)).toEqual([true, true, true]);
  });

  it('loses no word and keeps to the width', () => {
    const lines = wrapped('Force against shaft speed for four oils', 12, 100);
    expect(lines.join(' ')).toBe('Force against shaft speed for four oils');
    for (const line of lines) expect(textWidth(line, 12)).toBeLessThanOrEqual(100);
    expect(lines.length).toBeGreaterThan(1);
  });
});

function drawnWidth(text: string): number {
  const escaped = text.replaceAll('&', '&amp;');
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="3000" height="300"><text x="50" y="150" font-family="Inter" font-size="100">${escaped}</text></svg>`;
  const font = { loadSystemFonts: false, fontFiles: Object.values(fontFiles), defaultFontFamily: 'Inter' };
  return new Resvg(svg, { font }).getBBox()?.width ?? Number.NaN;
}
