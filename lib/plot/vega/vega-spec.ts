import type { Mark, Spec } from 'vega';
import { compile } from 'vega-lite';
import type { ChartKind } from '../chart/figure.js';
import { pathSets } from '../chart/path-sets.js';
import { chartConfig } from './chart-config.js';
import { chartSpecs } from './chart-specs.js';

const compiled = new Map<ChartKind, Spec>();

/** The Vega specification of a chart; worked out once for each. */
export function vegaSpec(kind: ChartKind): Spec {
  const known = compiled.get(kind);
  if (known !== undefined) return known;
  const fresh: Spec = compile(chartSpecs[kind], { config: chartConfig }).spec;
  const whole = { ...fresh, marks: fresh.marks?.map(withPath) ?? [] };
  compiled.set(kind, whole);
  return whole;
}

/** Vega-Lite has no mark for a finished path; Vega has, and draws one path much quicker than its points. */
function withPath(mark: Mark): Mark {
  const { from } = mark;
  if (from === undefined || !('data' in from) || !pathSets.some((name) => name === from.data)) return mark;
  const { x: _x, y: _y, shape: _shape, size: _size, ...look } = mark.encode?.update ?? {};
  return { ...mark, type: 'path', encode: { update: { ...look, path: { field: 'path' } } } } as Mark;
}
