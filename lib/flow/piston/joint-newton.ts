import { evaluateHole } from '../hole/hole-law.js';
import type { ValvePath, ValvePoint } from '../valve/valve-path.js';
import type { ParallelPaths, PistonPressureDrop } from './piston-pressure-drop.js';

const stepLimit = 25;

/** Relative miss after which the step just taken, converging quadratically, leaves nothing to mend. */
const settled = 1e-5;

/** Filled and read within one call and never handed out. */
const dropAndSlope = new Float64Array(2);

/** A valve in the iteration: its opening is its unknown. */
interface ValveState {
  readonly valve: ValvePath;
  point?: ValvePoint;
}

/** Largest change of an opening in one step, as a logarithm. */
const longestStride = 1.5;

/**
 * Pressure drop of many unlike holes at once: the speed in each hole is an unknown beside the pressure drop, and one Newton step costs one
 * evaluation of each hole, where an inverse of each would cost five. It is Newton on the least dissipation at a given flow, convex for open holes;
 * where a valve upsets it, the answer is `undefined`, and a slower method takes over.
 *
 * @param ways - holes and a gap that does not thin
 * @param open - valves that stand open, where their pressure rises with the flow
 * @param flow - wanted [m³/s], not 0
 */
export function jointPressureDrop(
  ways: ParallelPaths,
  open: readonly ValvePath[],
  flow: number,
): PistonPressureDrop | undefined {
  const { paths, area, gapConductance, creepingConductance } = ways;
  const sign = flow < 0 ? -1 : 1;
  const target = Math.abs(flow);
  let drop = target / creepingConductance;
  const states: ValveState[] = [];
  for (const valve of open) states.push({ valve });
  const mean = ((1 - gapConductance / creepingConductance) * target) / area;
  const speeds: number[] = [];
  const drops: number[] = [];
  const perSlopes: number[] = [];
  // Half way between one speed for all holes, as inertia has it, and the speeds by viscosity alone.
  for (const { resistance } of paths) speeds.push(Math.sqrt((mean * drop) / resistance.creepingSlope));
  for (let iterations = 1; iterations <= stepLimit; iterations++) {
    let through = 0;
    let conductance = gapConductance;
    let index = 0;
    for (const { area, resistance } of paths) {
      const speed = sign * speeds[index]!;
      evaluateHole(resistance, speed, dropAndSlope);
      const pressure = sign * dropAndSlope[0]!;
      const perSlope = 1 / dropAndSlope[1]!;
      drops[index] = pressure;
      perSlopes[index] = perSlope;
      through += area * (Math.abs(speed) - pressure * perSlope);
      conductance += area * perSlope;
      index++;
    }
    for (const state of states) {
      // The holes, at their first speeds, say about where the valves stand.
      state.point ??= state.valve.evaluate(state.valve.openingNear(meanDrop(ways, drops, drop), target));
      const { point } = state;
      const perDrop = point.flowSlope / point.dropSlope;
      through += point.flow - perDrop * point.drop;
      conductance += perDrop;
    }
    const next = (target - through) / conductance;
    if (!(next > 0)) return undefined;
    let missed = 0;
    for (let path = 0; path < speeds.length; path++) {
      const gap = next - drops[path]!;
      missed = Math.max(missed, Math.abs(gap));
      speeds[path] = speeds[path]! + gap * perSlopes[path]!;
      if (!(speeds[path]! > 0)) return undefined;
    }
    for (const state of states) {
      if (state.point === undefined) return undefined;
      const { drop: at, dropSlope, opening } = state.point;
      const { leastOpenLift } = state.valve;
      if (!(dropSlope > 0)) return undefined;
      missed = Math.max(missed, Math.abs(next - at));
      // In logarithms a film is nearly straight.
      const stride = (Math.log(next / at) * at) / dropSlope;
      const moved = opening * Math.exp(Math.min(Math.max(stride, -longestStride), longestStride));
      state.point = state.valve.evaluate(Math.max(moved, leastOpenLift));
    }
    drop = next;
    if (missed <= settled * next) return solved(ways, states, speeds, sign, drop, flow, iterations);
  }
  return undefined;
}

/** Pressure drop of the open holes, by their area; without holes what the gap would need. */
function meanDrop({ paths, area }: ParallelPaths, drops: readonly number[], otherwise: number): number {
  if (paths.length === 0) return otherwise;
  let sum = 0;
  let index = 0;
  for (const path of paths) sum += path.area * drops[index++]!;
  return sum / area;
}

function solved(
  ways: ParallelPaths,
  states: readonly ValveState[],
  speeds: readonly number[],
  sign: number,
  drop: number,
  flow: number,
  iterations: number,
): PistonPressureDrop {
  let through = ways.gapConductance * drop;
  const holeSpeeds: number[] = [];
  let index = 0;
  // Counted, since an iterator of pairs would cost as much as the physics.
  for (const { area } of ways.paths) {
    const speed = speeds[index++]!;
    through += area * speed;
    holeSpeeds.push(sign * speed);
  }
  for (const { point } of states) through += point?.flow ?? 0;
  return {
    pressureDrop: sign * drop,
    holeSpeeds,
    iterations,
    residual: sign * through - flow,
  };
}
