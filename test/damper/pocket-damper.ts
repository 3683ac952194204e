import type { Damper } from '../../lib/damper/damper.js';
import { sealedGas } from '../../lib/gas/gas.js';

export const pocket = { volume: 1e-6, pressure: 101_325, polytropicExponent: 1.4, ambientPressure: 101_325 };
/** Bore 12 mm, shaft 3 mm, four holes of 1.3 mm, a pocket of air under the cap, a seal without friction. */
export const damper: Damper = {
  bore: 0.012,
  shaftDiameter: 0.003,
  stroke: 0.028,
  // A rim gap of no height, so that the damping area is that of the bore.
  piston: {
    diameter: 0.012 - 2e-12,
    thickness: 0.0025,
    holes: [{ count: 4, diameter: 1.3e-3 }],
    eccentricity: 0,
  },
  gas: sealedGas(pocket),
  seal: { kineticForce: 0, breakawayForce: 0 },
};
export const oil = { kinematicViscosity: 3.5e-4, density: 970 };
/** The same with another gas. */
export const withGas = (gas: Partial<Parameters<typeof sealedGas>[0]>): Damper => ({
  ...damper,
  gas: sealedGas({ ...pocket, ...gas }),
});
export const area = (Math.PI / 4) * 0.012 ** 2;
export const shaft = (Math.PI / 4) * 0.003 ** 2;
/** A disc on the shaft side over the second group of holes, flat on its seat. */
export const disc = {
  face: 'shaft-side',
  covers: [1],
  outerDiameter: 10e-3,
  clampDiameter: 4e-3,
  thickness: 1e-4,
  count: 1,
  elasticModulus: 2e11,
  poissonRatio: 0.3,
  preload: 0,
} as const;
