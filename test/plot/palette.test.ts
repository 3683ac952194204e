import { describe, expect, it } from 'vitest';
import { inkColours, seriesColours } from '../../lib/plot/chart/palette.js';
import { seriesLimit, seriesStyle } from '../../lib/plot/chart/series-style.js';
import { contrast } from './contrast.js';

describe('colours', () => {
  it('are those of Okabe & Ito (2008), "Color Universal Design", red green blue of 0 to 255', () => {
    const published = {
      blue: [0, 114, 178],
      vermilion: [213, 94, 0],
      bluishGreen: [0, 158, 115],
      reddishPurple: [204, 121, 167],
      black: [0, 0, 0],
      orange: [230, 159, 0],
      skyBlue: [86, 180, 233],
    };
    const written = seriesColours.map((colour) =>
      [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16)),
    );
    expect(written).toEqual(Object.values(published));
  });

  it('of the first five series and of text stand out on paper (WCAG 2.2: 3:1 for graphics, 4.5:1 for text)', () => {
    // The last two of the palette are paler: dash, shape and name carry them.
    for (const colour of seriesColours.slice(0, 5))
      expect(contrast(colour, inkColours.paper)).toBeGreaterThanOrEqual(3);
    for (const text of [inkColours.ink, inkColours.muted])
      expect(contrast(text, inkColours.paper)).toBeGreaterThanOrEqual(4.5);
  });
});

describe('series', () => {
  it('never differ by colour alone', () => {
    const styles = Array.from({ length: seriesLimit }, (_style, index) => seriesStyle(index));
    for (const [first, a] of styles.entries())
      for (const b of styles.slice(first + 1)) {
        expect(`${a.colour} ${a.dash}`).not.toBe(`${b.colour} ${b.dash}`);
        expect(`${a.colour} ${a.shape}`).not.toBe(`${b.colour} ${b.shape}`);
      }
    // Up to seven, colour and dash and shape each tell them apart.
    for (const part of ['colour', 'dash', 'shape'] as const)
      expect(new Set(styles.slice(0, 7).map((style) => String(style[part]))).size).toBe(7);
  });

  it('begin with a solid line and a circle, and in the second round of colours take other dashes and shapes', () => {
    expect(seriesStyle(0)).toMatchObject({ dash: [], shape: 'circle' });
    for (let index = 0; index + seriesColours.length < seriesLimit; index++) {
      const [first, second] = [seriesStyle(index), seriesStyle(index + seriesColours.length)];
      expect(second.colour).toBe(first.colour);
      // Also not those of its neighbours, which have nearly the same place.
      expect(second.shape).not.toBe(first.shape);
      expect(String(second.dash)).not.toBe(String(first.dash));
    }
  });

  it('of a dozen have twelve different looks, dashes in use as evenly as can be', () => {
    const uses = new Map<string, number>();
    for (let index = 0; index < seriesLimit; index++) {
      const dash = String(seriesStyle(index).dash);
      uses.set(dash, (uses.get(dash) ?? 0) + 1);
    }
    expect(Math.max(...uses.values())).toBe(Math.ceil(seriesLimit / 7));
  });
});
