import { parse, type Runtime } from 'vega';
import type { ChartKind } from '../chart/figure.js';
import { chartSpecs } from './chart-specs.js';
import { vegaSpec } from './vega-spec.js';

/**
 * The specification of each kind of chart, compiled as far as can be without data: to dataflows, with expressions as trees. They are
 * plain data, so that a page needs neither Vega-Lite nor the parser of Vega.
 */
export function runtimeSpecs(): Readonly<Record<ChartKind, Runtime>> {
  const compiled = (kind: ChartKind): Runtime =>
    JSON.parse(JSON.stringify(parse(vegaSpec(kind), {}, { ast: true }), treesAlone));
  const kinds = Object.keys(chartSpecs) as ChartKind[];
  return Object.fromEntries(kinds.map((kind) => [kind, compiled(kind)])) as Record<ChartKind, Runtime>;
}

/** Leaves out the text of an expression beside its tree, which alone is interpreted; that of a parameter is the name under which Vega keeps it. */
function treesAlone(key: string, value: unknown): unknown {
  if (key === 'raw') return undefined;
  if (key === '$expr' || typeof value !== 'object' || value === null || !('ast' in value)) return value;
  const { code: _code, ...rest } = value as { readonly code?: unknown };
  return rest;
}
