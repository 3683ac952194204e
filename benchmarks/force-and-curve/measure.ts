import { damperForce } from '../../lib/damper/damper-force.js';
import { damperForces } from '../../lib/damper/damper-forces.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { forceVelocityCurve } from '../../lib/damper/force-velocity.js';
import { sealedGas } from '../../lib/gas/gas.js';

/** The shock that one-force.c and curve.py have too. */
const shock = {
  bore: 0.012,
  shaftDiameter: 0.003,
  stroke: 0.028,
  piston: { diameter: 0.01195, thickness: 0.0025, holes: [{ count: 4, diameter: 0.0013 }], eccentricity: 0 },
  gas: sealedGas({ volume: 1e-6, pressure: 101_325, polytropicExponent: 1.4, ambientPressure: 101_325 }),
  seal: { kineticForce: 0.4, breakawayForce: 0.6 },
};
const model = damperModel(shock, { kinematicViscosity: 3.5e-4, density: 970 });
export const speeds = Array.from({ length: 201 }, (_, index) => -2 + 0.02 * index);
const position = 0.014;

/** Time of one curve, and the sum of its forces [N]: all three programs must agree. */
export interface Timing {
  readonly nanoseconds: number;
  readonly sum: number;
}

function timed(repeats: number, sumOfCurve: () => number): Timing {
  let sum = 0;
  const start = process.hrtime.bigint();
  for (let repeat = 0; repeat < repeats; repeat++) sum += sumOfCurve();
  return { nanoseconds: Number(process.hrtime.bigint() - start) / repeats, sum: sum / repeats };
}

const oneByOne = () => speeds.reduce((sum, speed) => sum + damperForce(model, { speed, position }).force, 0);
const asCurve = () => forceVelocityCurve(model, speeds, position).reduce((sum, { force }) => sum + force, 0);

const allSpeeds = Float64Array.from(speeds);
const written = new Float64Array(speeds.length);
const asBatch = () =>
  damperForces(model, allSpeeds, position, written).reduce((sum, force) => sum + force, 0);

export const timedOneByOne = (repeats: number): Timing => timed(repeats, oneByOne);
export const timedAsCurve = (repeats: number): Timing => timed(repeats, asCurve);
export const timedAsBatch = (repeats: number): Timing => timed(repeats, asBatch);
