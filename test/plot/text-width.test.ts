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
