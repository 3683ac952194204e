import { inkColours } from '../chart/palette.js';
import type { PathSet } from '../chart/path-sets.js';
import {
  type Layer,
  lineKeyLayer,
  otherEnd,
  rawField,
  type Specification,
  scaled,
  specification,
  textLayers,
} from './layers.js';

/** The constant part of a line chart. */
export function lineSpec(): Specification {
  return specification(
    ['x', 'y'],
    [
      bandLayer(),
      lineLayer('start'),
      ruleLayer(),
      lineLayer('lines'),
      pointLayer(),
      leaderLayer(),
      lineKeyLayer(),
      ...textLayers(),
    ],
  );
}

function bandLayer(): Layer {
  return {
    data: { name: 'bands' satisfies PathSet },
    mark: { type: 'point', filled: true, opacity: 0.16, clip: true },
    encoding: { fill: rawField('colour', 'nominal') },
  };
}

function lineLayer(name: PathSet): Layer {
  return {
    data: { name },
    mark: {
      type: 'point',
      filled: false,
      opacity: 1,
      clip: true,
      strokeWidth: name === 'start' ? 1.5 : 2.2,
      strokeJoin: 'round',
    },
    encoding: { stroke: rawField('colour', 'nominal'), strokeDash: rawField('dash', 'nominal') },
  };
}

function ruleLayer(): Layer {
  return {
    data: { name: 'rules' },
    mark: { type: 'rule', stroke: inkColours.rule, strokeWidth: 1, strokeDash: [4, 3], clip: true },
    encoding: {
      x: scaled('x', 'x'),
      x2: otherEnd('x2'),
      y: scaled('y', 'y'),
      y2: otherEnd('y2'),
    },
  };
}

function pointLayer(): Layer {
  return {
    data: { name: 'points' },
    mark: {
      type: 'point',
      filled: false,
      size: 55,
      stroke: inkColours.ink,
      strokeWidth: 1.6,
      fill: inkColours.paper,
    },
    encoding: { x: scaled('x', 'x'), y: scaled('y', 'y') },
  };
}

/** Thin lines from the ends of the curves to their names. */
function leaderLayer(): Layer {
  return {
    data: { name: 'leaders' },
    mark: { type: 'rule', strokeWidth: 1.2 },
    encoding: {
      x: rawField('left', 'quantitative'),
      x2: { field: 'right' },
      y: rawField('top', 'quantitative'),
      y2: { field: 'bottom' },
      stroke: rawField('colour', 'nominal'),
    },
  };
}
