import { resetSVGDefIds, View } from 'vega';
import { expressionInterpreter } from 'vega-interpreter';
import { describe, expect, test } from 'vitest';
import { type Drawing, dotChart, lineChart, scatterChart } from '../../lib/plot/index.js';
import { dotSpec } from '../../lib/plot/vega/dot-spec.js';
import { drawSvg } from '../../lib/plot/vega/draw-svg.js';
import { scaled } from '../../lib/plot/vega/layers.js';
import { lineSpec } from '../../lib/plot/vega/line-spec.js';
import { runtimeSpecs } from '../../lib/plot/vega/runtime-specs.js';
import { tidySvg } from '../../lib/plot/vega/tidy-svg.js';
import { vegaSpec } from '../../lib/plot/vega/vega-spec.js';
import { dots, lines, points } from './small-charts.js';

const figures = {
  line: lineChart(lines()),
  dot: dotChart(dots(['aa'], ['one', 'two'])),
  scatter: scatterChart(points()),
};
const kinds = ['line', 'dot', 'scatter'] as const;

describe('the charts that a page carries compiled', () => {
  const specs = runtimeSpecs();

  test.each(kinds)('draw what is drawn from the whole specification: %s', async (kind) => {
    const drawing: Drawing = figures[kind].drawings.wide;
    const { width, height, padding, signals, data } = drawing;
    // As a page does it, which has neither Vega-Lite nor the parser.
    const view = new View(structuredClone(specs[kind]), { expr: expressionInterpreter, renderer: 'none' });
    view
      .padding(padding)
      .width(width - padding.left - padding.right)
      .height(height - padding.top - padding.bottom);
    for (const [signal, value] of Object.entries(signals)) view.signal(signal, value);
    for (const [set, rows] of Object.entries(data)) view.data(set, structuredClone(rows) as object[]);
    await view.runAsync();
    resetSVGDefIds();
    const svg = tidySvg(await view.toSVG(), 'a');
    view.finalize();
    expect(svg).toBe(await drawSvg(drawing, vegaSpec(kind), 'a'));
    expect(svg).toContain(`width="${width}" height="${height}"`);
  });

  test('have no text of an expression beside its tree, which a page would carry for nothing', () => {
    const both: unknown[] = [];
    JSON.stringify(specs, (key, value: unknown) => {
      if (key === 'raw') both.push(value);
      // Vega keeps a parameter under the name that its expression has.
      if (key !== '$expr' && typeof value === 'object' && value !== null && 'ast' in value && 'code' in value)
        both.push(value);
      return value;
    });
    expect(both).toEqual([]);
    expect(JSON.stringify(specs)).toContain('"ast"');
  });
});

test.each([
  ['lines', lineSpec(), 'lines', 'strokeWidth'],
  ['dots', dotSpec(), 'dots', 'size'],
])('the starting case of %s is drawn finer, so that what is now is seen over it', (_, spec, now, part) => {
  const of = (set: string): number => {
    const layer = spec.layer.find(
      (one) => 'data' in one && JSON.stringify(one.data) === JSON.stringify({ name: set }),
    );
    return Number(new RegExp(`"${part}":([\\d.]+)`, 'u').exec(JSON.stringify(layer))?.[1]);
  };
  expect(of('start')).toBeGreaterThan(0);
  expect(of('start')).toBeLessThan(of(now));
});

test('the ticks across are as many as the picture has room for, and those upwards always the same', () => {
  expect(scaled('x', 'a').axis.tickCount).toEqual({ expr: 'xTicks' });
  expect(scaled('y', 'a').axis.tickCount).toBe(6);
});
