import { describe, expect, it } from 'vitest';
import { styleSheet } from '../../lib/page/style/style.js';
import { seriesColours } from '../../lib/plot/chart/palette.js';
import { contrast } from '../plot/contrast.js';

/** The colours of the page, light and dark, as the style sheet declares them. */
const themes = [...styleSheet.matchAll(/:root\{([^}]*)\}/gu)].map(
  ([, declarations]) =>
    new Map((declarations ?? '').split(';').map((one) => one.slice(2).split(':') as [string, string])),
);

describe('the colours of a page', () => {
  it('come in light and dark', () => {
    expect(themes.length).toBe(2);
  });

  it('give text a contrast of 4.5:1 on paper and on panels (WCAG 2.2, 1.4.3 level AA)', () => {
    for (const colours of themes)
      for (const text of ['ink', 'muted', 'passed', 'failed', 'caution'])
        for (const ground of ['paper', 'panel'])
          expect(contrast(colours.get(text) ?? '', colours.get(ground) ?? '')).toBeGreaterThanOrEqual(4.5);
  });

  it('give lines a contrast of 3:1 on dark paper, black turned white (WCAG 2.2, 1.4.11)', () => {
    const paper = themes[1]?.get('paper') ?? '';
    for (const colour of seriesColours)
      expect(contrast(colour === '#000000' ? '#ffffff' : colour, paper)).toBeGreaterThanOrEqual(3);
    expect(styleSheet).toContain('svg [stroke="#000000"]{stroke:#ffffff}');
  });
});
