import type { Spec } from 'vega';
import { compile, type TopLevelSpec } from 'vega-lite';
import { chartConfig } from './chart-config.js';
import type { Drawing } from './figure.js';

const compiled = new WeakMap<object, Spec>();

/** The Vega specification of a drawing; worked out once for each Vega-Lite specification. */
export function compileDrawing({ spec }: Drawing): Spec {
  const known = compiled.get(spec);
  if (known !== undefined) return known;
  // Charts are checked against the full type where they are written; see `Specification`.
  const fresh = compile(spec as unknown as TopLevelSpec, { config: chartConfig }).spec;
  compiled.set(spec, fresh);
  return fresh;
}
