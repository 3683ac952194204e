import {
  type Layer,
  pointKeyLayer,
  rawField,
  type Specification,
  scaled,
  specification,
  textLayers,
} from './layers.js';

/** The constant part of a scatter chart. */
export function scatterSpec(): Specification {
  return specification(
    ['x', 'y'],
    [pointLayer('start'), pointLayer('dots'), pointKeyLayer(), ...textLayers()],
  );
}

function pointLayer(name: 'start' | 'dots'): Layer {
  return {
    data: { name },
    mark: { type: 'point', filled: true, opacity: 1, clip: true, size: name === 'start' ? 60 : 90 },
    encoding: {
      x: scaled('x', 'x'),
      y: scaled('y', 'y'),
      fill: rawField('colour', 'nominal'),
      shape: rawField('shape', 'nominal'),
    },
  };
}
