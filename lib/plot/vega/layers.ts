import type { TopLevelSpec } from 'vega-lite';
import { sizes } from '../chart/layout.js';
import { inkColours } from '../chart/palette.js';

/** One layer of a Vega-Lite specification. */
export type Layer = Extract<TopLevelSpec, { layer: unknown }>['layer'][number];

/** A Vega-Lite specification without size and data. */
export type Specification = Extract<TopLevelSpec, { layer: unknown }>;

/** A field taken as it is: pixels, colours, dashes and shapes are worked out with the data. */
export function rawField<Kind extends 'quantitative' | 'nominal'>(field: string, type: Kind) {
  return { field, type, scale: null, axis: null, legend: null } as const;
}

/** A field on the horizontal or vertical scale, whose ends are signals; so is the number of ticks across. */
export function scaled(channel: 'x' | 'y', field: string) {
  const ends = [{ expr: `${channel}Low` }, { expr: `${channel}High` }];
  const tickCount = channel === 'x' ? { expr: 'xTicks' } : sizes.wide.ticks;
  return {
    field,
    type: 'quantitative',
    scale: { domain: ends, nice: false, zero: false },
    axis: { title: null, tickCount },
  } as const;
}

/** The end of an interval on the scale of the other end. */
export function otherEnd(field: string) {
  return { field } as const;
}

/** Puts layers into a specification that has no size and no data of its own. */
export function specification(axes: readonly ('x' | 'y')[], layer: Layer[]): Specification {
  const ends = axes.flatMap((axis) => [
    { name: `${axis}Low`, value: 0 },
    { name: `${axis}High`, value: 1 },
  ]);
  const params = [...ends, { name: 'xTicks', value: sizes.wide.ticks }];
  return { width: 1, height: 1, params, layer };
}

/** The texts of a drawing at their places, from the data set `texts`; `halos` are those that cross lines. */
export function textLayers(): Layer[] {
  const encoding = {
    x: rawField('left', 'quantitative'),
    y: rawField('top', 'quantitative'),
    text: { field: 'text', type: 'nominal' },
  } as const;
  const mark = {
    type: 'text',
    align: { expr: 'datum.align' },
    fontSize: { expr: 'datum.size' },
    fontWeight: { expr: 'datum.weight' },
  } as const;
  return [
    { data: { name: 'halos' }, mark: { ...mark, stroke: inkColours.paper, strokeWidth: 4 }, encoding },
    { data: { name: 'texts' }, mark, encoding: { ...encoding, fill: rawField('colour', 'nominal') } },
  ];
}

/** The dashes of a legend, from the data set `keys`. */
export function lineKeyLayer(): Layer {
  return {
    data: { name: 'keys' },
    mark: { type: 'rule', strokeWidth: 2 },
    encoding: {
      x: rawField('left', 'quantitative'),
      x2: { field: 'right' },
      y: rawField('top', 'quantitative'),
      stroke: rawField('colour', 'nominal'),
      strokeDash: rawField('dash', 'nominal'),
    },
  };
}

/** The symbols of a legend, from the data set `keys`. */
export function pointKeyLayer(): Layer {
  return {
    data: { name: 'keys' },
    mark: { type: 'point', filled: true, opacity: 1, size: 70 },
    encoding: {
      x: rawField('centre', 'quantitative'),
      y: rawField('top', 'quantitative'),
      fill: rawField('colour', 'nominal'),
      shape: rawField('shape', 'nominal'),
    },
  };
}
