import { parse, type Runtime } from 'vega';
import { type SpecName, specNames } from './figure.js';
import { vegaSpec } from './vega-spec.js';

/**
 * The specifications of all charts by name, compiled as far as can be without data: to dataflows, with expressions as trees. They are
 * plain data, so that a page needs neither Vega-Lite nor the parser of Vega.
 */
export function runtimeSpecs(): Readonly<Record<SpecName, Runtime>> {
  const compiled = (name: SpecName): Runtime =>
    JSON.parse(JSON.stringify(parse(vegaSpec(name), {}, { ast: true })));
  return Object.fromEntries(specNames.map((name) => [name, compiled(name)])) as Record<SpecName, Runtime>;
}
