import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { type Figure, renderSvg } from '../../lib/plot/index.js';
import { fontFiles } from '../../lib/runner/build/fonts.js';
import { sampleFigures } from './sample-figures.js';

const layouts = ['wide', 'narrow'] as const;
const cases = sampleFigures.flatMap((figure) =>
  layouts.map((layout) => ({ figure, layout, id: `${figure.id} ${layout}` })),
);

describe.each(cases)('the SVG of $id', ({ figure, layout }) => {
  it('stands alone: it has its size, role and words, and asks for nothing', async () => {
    const svg = await renderSvg(figure, layout);
    const { width, height } = figure.drawings[layout];
    expect(svg).toMatch(/^<svg /u);
    expect(svg).toContain(`width="${width}" height="${height}"`);
    expect(svg).toContain('role="img"');
    expect(svg).toContain(`<desc id="${figure.id}-${layout}-desc">${figure.alt}</desc>`);
    expect(svg).not.toContain('style=');
    expect(svg.replace('xmlns="http://www.w3.org/2000/svg"', '')).not.toMatch(
      /https?:|url\((?!#)|<image|<script/u,
    );
  });

  it('keeps its ink inside its box', async () => {
    const box = inkBox(await renderSvg(figure, layout));
    const { width, height } = figure.drawings[layout];
    expect(box.x).toBeGreaterThanOrEqual(0);
    expect(box.y).toBeGreaterThanOrEqual(0);
    expect(box.x + box.width).toBeLessThanOrEqual(width);
    expect(box.y + box.height).toBeLessThanOrEqual(height);
  });

  it('has each id once, under its own name', async () => {
    const ids = [...(await renderSvg(figure, layout)).matchAll(/ id="([^"]*)"/gu)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(new RegExp(`^${figure.id}-${layout}-`, 'u'));
  });

  it('rounds its coordinates to 0.01 px', async () => {
    expect(await renderSvg(figure, layout)).not.toMatch(/="[^"]*\d\.\d{3,}/u);
  });
});

describe('drawing', () => {
  it('gives the same bytes again, in any order', async () => {
    const [first, second] = sampleFigures as [Figure, Figure];
    const before = await renderSvg(first, 'wide');
    await renderSvg(second, 'wide');
    expect(await renderSvg(first, 'wide')).toBe(before);
  });

  it('writes names as text', async () => {
    const [figure] = sampleFigures as [Figure];
    expect(await renderSvg(figure, 'narrow')).toContain('&lt;script&gt;');
  });
});

function inkBox(svg: string): { x: number; y: number; width: number; height: number } {
  const font = { loadSystemFonts: false, fontFiles: Object.values(fontFiles), defaultFontFamily: 'Inter' };
  const box = new Resvg(svg, { font }).getBBox();
  if (box === undefined) throw new Error('nothing was drawn');
  return box;
}
