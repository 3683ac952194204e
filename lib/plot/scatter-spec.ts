import type { LayoutName } from './figure.js';
import {
  given,
  type Layer,
  pointKeyLayer,
  type Specification,
  scaled,
  specification,
  textLayers,
} from './layers.js';

/** The constant part of a scatter chart. */
export function scatterSpec(layout: LayoutName): Specification {
  return specification(
    ['x', 'y'],
    [pointLayer(layout, 'start'), pointLayer(layout, 'dots'), pointKeyLayer(), ...textLayers()],
  );
}

function pointLayer(layout: LayoutName, name: 'start' | 'dots'): Layer {
  return {
    data: { name },
    mark: { type: 'point', filled: true, opacity: 1, clip: true, size: name === 'start' ? 60 : 90 },
    encoding: {
      x: scaled('x', 'x', layout),
      y: scaled('y', 'y', layout),
      fill: given('colour', 'nominal'),
      shape: given('shape', 'nominal'),
    },
  };
}
