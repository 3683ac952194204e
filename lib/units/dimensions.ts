import type { Dimension } from './unit-table.js';

/**
 * The dimension of each field that has a unit, in the form of the thing itself; those of a list stand for each of its entries. A field that is not named has no
 * unit, such as a count or a kind.
 *
 * @public
 */
export interface Dimensions {
  readonly [field: string]: Dimension | Dimensions;
}

const edge: Dimensions = { radius: 'length', depth: 'length', halfAngle: 'angle' };

const hole: Dimensions = {
  diameter: 'length',
  pitchDiameter: 'length',
  shape: {
    blindEdge: edge,
    shaftEdge: edge,
    shaftSideDiameter: 'length',
    shaftSideLength: 'length',
    travel: 'length',
  },
};

const valve: Dimensions = {
  outerDiameter: 'length',
  clampDiameter: 'length',
  thickness: 'length',
  elasticModulus: 'pressure',
  preload: 'length',
  largestLift: 'length',
};

const piston: Dimensions = { diameter: 'length', thickness: 'length', holes: hole, valves: valve };

const point: Dimensions = { temperature: 'temperature', kinematicViscosity: 'kinematicViscosity' };

/**
 * Dimensions of what the core takes, for `inSi`: a damper (its `gas` is left as `sealedGas` made it), the pocket that `sealedGas` takes, an oil, a fluid, and where a shaft
 * stands and how fast it moves.
 *
 * @public
 */
export const dimensionsOf = {
  damper: {
    bore: 'length',
    shaftDiameter: 'length',
    stroke: 'length',
    piston,
    seal: { kineticForce: 'force', breakawayForce: 'force' },
  },
  gasPocket: {
    volume: 'volume',
    pressure: 'pressure',
    ambientPressure: 'pressure',
    airReleasePressure: 'pressure',
    temperature: 'temperature',
  },
  oil: {
    viscosity: { point, points: point },
    densityAt15Celsius: 'density',
    shearThinning: { temperature: 'temperature', thinning: { time: 'time' } },
  },
  fluid: {
    temperature: 'temperature',
    kinematicViscosity: 'kinematicViscosity',
    density: 'density',
    relaxationTime: 'time',
    shearThinning: { time: 'time' },
  },
  motion: { speed: 'speed', position: 'length' },
} as const satisfies Dimensions;
