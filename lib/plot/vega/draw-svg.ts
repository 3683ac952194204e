import { parse, resetSVGDefIds, type Spec, View } from 'vega';
import { expressionInterpreter } from 'vega-interpreter';
import type { Drawing } from '../chart/drawing.js';
import { tidySvg } from './tidy-svg.js';

/**
 * Draws with a compiled specification. Expressions are interpreted, not compiled to functions, so that the same code
 * runs in a page that forbids `eval`.
 *
 * @param drawing - data and sizes
 * @param vegaSpec - the compiled specification of the drawing
 * @param name - put before each id, so that two pictures can stand in one page
 * @returns the bare SVG element as text
 */
export async function drawSvg(drawing: Drawing, vegaSpec: Spec, name: string): Promise<string> {
  const { width, height, padding, signals, data } = drawing;
  const view = new View(parse(vegaSpec, {}, { ast: true }), {
    expr: expressionInterpreter,
    renderer: 'none',
  });
  view.padding(padding);
  view.width(width - padding.left - padding.right).height(height - padding.top - padding.bottom);
  for (const [signal, value] of Object.entries(signals)) view.signal(signal, value);
  // Vega writes its own marks into the rows it is given.
  for (const [set, rows] of Object.entries(data)) view.data(set, structuredClone(rows) as object[]);
  await view.runAsync();
  resetSVGDefIds();
  const svg = await view.toSVG();
  view.finalize();
  return tidySvg(svg, name);
}
