import { parse, type Runtime, type Spec } from 'vega';
import { compile, type TopLevelSpec } from 'vega-lite';
import { chartConfig } from './chart-config.js';
import { chartSpecs } from './chart-specs.js';

/**
 * The specifications of all charts by name, compiled as far as can be without data: to dataflows, with expressions as trees. They are
 * plain data, so that a page needs neither Vega-Lite nor the parser of Vega.
 */
export function runtimeSpecs(): Readonly<Record<string, Runtime>> {
  return Object.fromEntries(
    Object.entries(chartSpecs).map(([name, spec]) => {
      const vega: Spec = compile(spec as unknown as TopLevelSpec, { config: chartConfig }).spec;
      const runtime = parse(vega, {}, { ast: true });
      return [name, JSON.parse(JSON.stringify(runtime)) as Runtime];
    }),
  );
}
