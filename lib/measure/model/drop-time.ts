import { refuse, requireWithin } from '../../base/checks.js';
import { standardGravity } from '../../base/constants.js';
import { madeWith, record, requireShape, type Shape } from '../../base/shape.js';
import { gaussLegendre, type Quadrature } from '../../numeric/gauss-legendre.js';
import type { SteadyShock, WarmShock } from './shock-law.js';

/**
 * A weight that moves the shaft over a stretch of stroke.
 *
 * @public
 */
export interface Drop {
  /** Mass that hangs on the shaft or stands on it, with shaft and rod end [kg], above 0. */
  readonly mass: number;
  /** Temperature of the oil by the thermometer [K], above 0. */
  readonly temperature: number;
  /** Where the timing begins [m from full extension]. */
  readonly from: number;
  /** Where it ends [m from full extension]: below `from` where the weight pulls the shaft out, above where it pushes it in. */
  readonly to: number;
}

/** Form of {@link Drop}. */
export const dropShape: Shape = {
  mass: 'kg',
  temperature: 'K',
  from: 'm from full extension',
  to: 'm from full extension',
};

/** Five places hold the time to 1e-9 where the net force changes by less than a factor 2 along the stretch. */
const stretchRule = gaussLegendre(5);

/** Step of the logarithm after which the next one, smaller by the error of the secant, would be lost in rounding. */
const smallestStep = 1e-7;
/** Largest one: the power of a curve changes along it. */
const longestStep = 3;

/** A speed and force that belong together, in logarithms, with the slope of the damping curve there. */
interface CurvePoint {
  readonly logSpeed: number;
  readonly logForce: number;
  readonly slope: number;
}

/**
 * Where on the damping curve a force is reached, by secants in logarithms, since damping grows with a power of the speed between 1 and 2.
 *
 * @param from - a point near by
 * @returns the point; not a number where no speed damps as much
 */
function pointAtForce(
  warm: WarmShock,
  force: number,
  position: number,
  sign: number,
  from: CurvePoint,
): CurvePoint {
  const logForce = Math.log(force);
  // What the oil would do at a speed beyond all is no number.
  const excess = (logSpeed: number): number =>
    logSpeed < farthest
      ? Math.log(Math.abs(warm.dampingForce(sign * Math.exp(logSpeed), position))) - logForce
      : Number.NaN;
  let slope = from.slope;
  let here = from.logSpeed + (logForce - from.logForce) / slope;
  let excessHere = excess(here);
  for (let iteration = 0; iteration < 60; iteration++) {
    const step = Math.min(Math.max(excessHere / slope, -longestStep), longestStep);
    const next = here - step;
    if (Math.abs(step) < smallestStep) return { logSpeed: next, logForce, slope };
    const excessNext = excess(next);
    if (Number.isNaN(excessNext)) break;
    const secant = (excessNext - excessHere) / (next - here);
    // Rounding may leave no slope, or a wrong one, next to the root; of oil that thins it may be small.
    if (secant > 0.05 && secant < 3) slope = secant;
    [here, excessHere] = [next, excessNext];
  }
  return { logSpeed: Number.NaN, logForce, slope };
}

/** Logarithm of a speed beyond which none is looked for. */
const farthest = Math.log(1e6);

/** Force that is left for the damping [N] where a weight moves the shaft: weight and gas less friction. */
export function netForce(shock: SteadyShock, drop: Drop, position: number): number {
  return netForceOf(shock, shock.at(drop.temperature), drop, position);
}

function netForceOf(shock: SteadyShock, warm: WarmShock, { mass, from, to }: Drop, position: number): number {
  const gas = warm.gasForce(position);
  return mass * standardGravity + (to < from ? gas : -gas) - shock.friction;
}

/**
 * Time that a weight takes to move the shaft over a stretch, as if it had its final speed everywhere: `t = ∫ dx / v(x)`, with
 * `damping(v) = m g ± gas(x) − F`.
 *
 * The first millimetres, where the weight gathers speed, are to be left out of the stretch.
 *
 * @param shock - the shock
 * @param drop - mass [kg], oil temperature [K], stretch [m]
 * @param rule - rule of the integral
 * @returns the time [s]; infinite where the weight does not overcome friction and gas
 * @throws InputError for a value outside its range, and for a weight that opens a cavity
 * @public
 */
export function dropTime(shock: SteadyShock, drop: Drop, rule: Quadrature = stretchRule): number {
  requireShape({ shock, drop, rule }, { shock: madeWith('at'), drop: dropShape, rule: record });
  requireWithin(drop.temperature, 200, 600, 'temperature', 'K');
  const time = timeOfDrop(shock, drop, rule);
  if (Number.isNaN(time))
    refuse(drop.mass, 'mass', 'kg', 'light enough to sink at a steady speed, before a cavity opens, in');
  return time;
}

/** {@link dropTime} of what was checked before; not a number where the weight opens a cavity. */
export function timeOfDrop(shock: SteadyShock, drop: Drop, rule: Quadrature = stretchRule): number {
  const { from, to } = drop;
  const warm = shock.at(drop.temperature);
  const forces = new Float64Array(rule.places.length);
  for (let index = 0; index < forces.length; index++) {
    const force = netForceOf(shock, warm, drop, from + (to - from) * rule.places[index]!);
    if (!(force > 0)) return Number.POSITIVE_INFINITY;
    forces[index] = force;
  }
  const speeds = warm.speedsAt?.(forces) ?? speedsBySecants(warm, forces, drop, rule);
  let time = 0;
  for (let index = 0; index < speeds.length; index++) time += rule.weights[index]! / speeds[index]!;
  return Math.abs(to - from) * time;
}

/** Sizes of the speeds at the forces of the places of a rule, each looked for from the one before. */
function speedsBySecants(
  warm: WarmShock,
  forces: Float64Array,
  { from, to }: Drop,
  { places }: Quadrature,
): Float64Array {
  const sign = to < from ? -1 : 1;
  const startSpeed = 0.01;
  const startForce = Math.abs(warm.dampingForce(sign * startSpeed, from));
  let point: CurvePoint = { logSpeed: Math.log(startSpeed), logForce: Math.log(startForce), slope: 1 };
  return forces.map((force, index) => {
    point = pointAtForce(warm, force, from + (to - from) * places[index]!, sign, point);
    return Math.exp(point.logSpeed);
  });
}
