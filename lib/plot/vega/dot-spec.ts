import { inkColours } from '../chart/palette.js';
import {
  type Layer,
  otherEnd,
  pointKeyLayer,
  rawField,
  type Specification,
  scaled,
  specification,
  textLayers,
} from './layers.js';

/** The constant part of a dot chart. Rows have their heights in pixels: the picture grows with the rows. */
export function dotSpec(): Specification {
  return specification(
    ['x'],
    [rowLayer(), dotLayer('start'), whiskerLayer(), dotLayer('dots'), pointKeyLayer(), ...textLayers()],
  );
}

/** Thin lines between the rows. */
function rowLayer(): Layer {
  return {
    data: { name: 'rows' },
    mark: { type: 'rule', stroke: inkColours.grid, strokeWidth: 1 },
    encoding: {
      x: rawField('left', 'quantitative'),
      x2: { field: 'right' },
      y: rawField('top', 'quantitative'),
    },
  };
}

function whiskerLayer(): Layer {
  return {
    data: { name: 'whiskers' },
    mark: { type: 'rule', strokeWidth: 2, clip: true },
    encoding: {
      x: scaled('x', 'low'),
      x2: otherEnd('high'),
      y: rawField('top', 'quantitative'),
      stroke: rawField('colour', 'nominal'),
    },
  };
}

function dotLayer(name: 'start' | 'dots'): Layer {
  return {
    data: { name },
    mark: { type: 'point', filled: true, opacity: 1, size: name === 'start' ? 60 : 80 },
    encoding: {
      x: scaled('x', 'x'),
      y: rawField('top', 'quantitative'),
      fill: rawField('colour', 'nominal'),
      shape: rawField('shape', 'nominal'),
    },
  };
}
