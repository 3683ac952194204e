import { damperForce } from '../../lib/damper/damper-force.js';
import { damperForces } from '../../lib/damper/damper-forces.js';
import { bindDamper, damperModel } from '../../lib/damper/damper-model.js';
import type { DamperForce } from '../../lib/damper/force-point.js';
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
const fluid = { kinematicViscosity: 3.5e-4, density: 970 };
const model = damperModel(shock, fluid);
export const speeds = Array.from({ length: 201 }, (_, index) => -2 + 0.02 * index);
const position = 0.014;

/** Time of one call [ns], and the sum of all that was read of it: the programs must agree. */
export interface Timing {
  readonly nanoseconds: number;
  readonly sum: number;
}

/** All that a force says in numbers, in the order of one-force.c, each without its sign. */
function read(force: DamperForce): number {
  return (
    Math.abs(force.force) +
    Math.abs(force.dampingForce) +
    Math.abs(force.gasForce) +
    Math.abs(force.sealForce) +
    force.dampingCoefficient +
    Math.abs(force.pressureDrop) +
    force.gasPressure +
    force.lowestPressure +
    Math.abs(force.jetRecoil) +
    force.jetTemperatureRise +
    force.holeReynoldsNumber +
    force.wallShearRate +
    force.leakShare +
    (force.cavitating ? 1 : 0) +
    force.iterations
  );
}

/** Sum over the curve of the size of each output, in the order of one-force.c. */
export function outputs(): readonly number[] {
  const curve = speeds.map((speed) => damperForce(model, { speed, position }));
  const sum = (part: (force: DamperForce) => number) =>
    curve.reduce((all, force) => all + Math.abs(part(force)), 0);
  return [
    sum(({ force }) => force),
    sum(({ dampingForce }) => dampingForce),
    sum(({ gasForce }) => gasForce),
    sum(({ sealForce }) => sealForce),
    sum(({ dampingCoefficient }) => dampingCoefficient),
    sum(({ pressureDrop }) => pressureDrop),
    sum(({ gasPressure }) => gasPressure),
    sum(({ lowestPressure }) => lowestPressure),
    sum(({ jetRecoil }) => jetRecoil),
    sum(({ jetTemperatureRise }) => jetTemperatureRise),
    sum(({ holeReynoldsNumber }) => holeReynoldsNumber),
    sum(({ wallShearRate }) => wallShearRate),
    sum(({ leakShare }) => leakShare),
    sum(({ cavitating }) => (cavitating ? 1 : 0)),
  ];
}

/** Time of the processor: on a busy machine the clock on the wall also counts the others. */
function timed(repeats: number, callsPerRepeat: number, once: () => number): Timing {
  let sum = 0;
  const start = process.cpuUsage();
  for (let repeat = 0; repeat < repeats; repeat++) sum += once();
  const { user, system } = process.cpuUsage(start);
  return { nanoseconds: ((user + system) * 1000) / (repeats * callsPerRepeat), sum: sum / repeats };
}

function oneByOne(): number {
  let sum = 0;
  for (const speed of speeds) sum += read(damperForce(model, { speed, position }));
  return sum;
}

function asCurve(): number {
  let sum = 0;
  for (const force of forceVelocityCurve(model, speeds, position)) sum += read(force);
  return sum;
}

const allSpeeds = Float64Array.from(speeds);
const written = new Float64Array(speeds.length);
function asBatch(): number {
  let sum = 0;
  damperForces(model, allSpeeds, position, written);
  // By place, as C reads them.
  for (let place = 0; place < written.length; place++) sum += Math.abs(written[place] as number);
  return sum;
}

const binding = () => damperModel(shock, fluid).dampingArea;
const bindingAgain = () => bindDamper(shock, fluid).dampingArea;

/** Time of one force. */
export const timedOneByOne = (repeats: number): Timing => timed(repeats, speeds.length, oneByOne);
/** Time of one point of a curve. */
export const timedAsCurve = (repeats: number): Timing => timed(repeats, speeds.length, asCurve);
/** Time of one force of a batch. */
export const timedAsBatch = (repeats: number): Timing => timed(repeats, speeds.length, asBatch);
/** Time of checking and binding, and of binding what was checked. */
export const timedBinding = (repeats: number): Timing => timed(repeats, 1, binding);
export const timedBindingAgain = (repeats: number): Timing => timed(repeats, 1, bindingAgain);
