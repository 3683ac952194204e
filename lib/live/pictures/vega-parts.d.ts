/** The parts of Vega carry no types of their own; those of the whole serve. */
declare module 'vega-view' {
  export { View } from 'vega';
}
declare module 'vega-dataflow' {
  export { changeset } from 'vega';
  export const transforms: Record<string, unknown>;
}
declare module 'vega-transforms' {
  export const collect: unknown;
  export const proxy: unknown;
  export const sieve: unknown;
}
declare module 'vega-view-transforms' {
  export const bound: unknown;
  export const mark: unknown;
  export const render: unknown;
  export const viewlayout: unknown;
}
declare module 'vega-encode' {
  export const axisticks: unknown;
  export const datajoin: unknown;
  export const encode: unknown;
  export const scale: unknown;
}
