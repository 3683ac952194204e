import { madeWith, oneOf, requireShape } from '../../base/shape.js';
import type { LayoutName } from '../chart/drawing.js';
import type { Figure } from '../chart/figure.js';

/**
 * Draws a figure as one SVG element, with its title and alternative text. The same figure gives the same bytes
 * in every process, time zone and locale.
 *
 * @param figure - what to draw
 * @param layout - the width to draw it for
 * @returns SVG text that stands alone
 *
 * @public
 */
export async function renderSvg(figure: Figure, layout: LayoutName): Promise<string> {
  requireShape({ figure, layout }, { figure: madeWith('drawings'), layout: oneOf('wide', 'narrow') });
  // Loaded on first use: who only builds figures, or only asks for help, does not wait for Vega.
  const [{ vegaSpec }, { drawSvg }] = await Promise.all([import('./vega-spec.js'), import('./draw-svg.js')]);
  const drawing = figure.drawings[layout];
  const name = `${figure.id}-${layout}`;
  const svg = await drawSvg(drawing, vegaSpec(figure.chart.kind), name);
  const words = `<title id="${name}-title">${escaped(figure.title)}</title><desc id="${name}-desc">${escaped(figure.alt)}</desc>`;
  return svg.replace(
    /^<svg([^>]*)>/u,
    (_whole, attributes: string) =>
      `<svg${attributes} role="img" aria-labelledby="${name}-title" aria-describedby="${name}-desc">${words}`,
  );
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
