import { lookAtHole } from '../hole/hole-law.js';
import type { ValveLook, ValvePath } from '../valve/valve-path.js';
import type { ParallelPaths, PistonPressureDrop } from './piston-pressure-drop.js';

const stepLimit = 40;

/** Relative misses after which the step just taken, converging quadratically, leaves nothing to mend; a valve bends more sharply. */
const settled = 1e-5;
const valveSettled = 1e-7;

/** Filled and read within one call and never handed out. */
const both = new Float64Array(2);

/** A valve in the iteration: the pressure under its disc is its unknown. */
interface ValveState {
  readonly valve: ValvePath;
  pressure: number;
  look?: ValveLook;
}

/**
 * Pressure drop of many unlike holes at once: the speed in each hole is an unknown beside the pressure drop, and one Newton step costs one
 * look at each hole, where an inverse of each would cost five. It is Newton on the least dissipation at a given flow, convex for open holes;
 * where a valve upsets it, the answer is `undefined`, and a slower method takes over.
 *
 * @param ways - holes, valves and a gap that does not thin
 * @param flow - wanted [m³/s], not 0
 */
export function jointPressureDrop(ways: ParallelPaths, flow: number): PistonPressureDrop | undefined {
  const { paths, valves, area, gapConductance, creepingConductance } = ways;
  const sign = flow < 0 ? -1 : 1;
  const target = Math.abs(flow);
  let drop = target / creepingConductance;
  // A valve shut at the start may open on the way.
  const states: ValveState[] = [];
  for (const valve of valves) {
    const { opens, openingPressure } = valve;
    if (opens === sign)
      states.push({ valve, pressure: Math.max((openingPressure + drop) / 2, openingPressure) });
  }
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
      const speed = sign * (speeds[index] ?? 0);
      lookAtHole(resistance, speed, both);
      const pressure = sign * (both[0] ?? 0);
      const perSlope = 1 / (both[1] ?? 1);
      drops[index] = pressure;
      perSlopes[index] = perSlope;
      through += area * (Math.abs(speed) - pressure * perSlope);
      conductance += area * perSlope;
      index++;
    }
    for (const state of states) {
      const look = state.valve.atPressureUnderDisc?.(state.pressure);
      if (look === undefined) return undefined;
      state.look = look;
      const perDrop = look.flowSlope / look.dropSlope;
      through += look.flow - perDrop * look.drop;
      conductance += perDrop;
    }
    const next = (target - through) / conductance;
    if (!(next > 0)) return undefined;
    let missed = 0;
    let valveMissed = 0;
    for (let path = 0; path < speeds.length; path++) {
      const gap = next - (drops[path] ?? 0);
      missed = Math.max(missed, Math.abs(gap));
      speeds[path] = (speeds[path] ?? 0) + gap * (perSlopes[path] ?? 1);
      if (!((speeds[path] ?? 0) > 0)) return undefined;
    }
    for (const state of states) {
      const { look } = state;
      if (look === undefined) return undefined;
      const { openingPressure } = state.valve;
      const moved = state.pressure + (next - look.drop) / look.dropSlope;
      // Below its opening pressure a valve is shut and its own pressure does not count.
      if (next > openingPressure) valveMissed = Math.max(valveMissed, Math.abs(next - look.drop));
      state.pressure = Math.min(Math.max(moved, openingPressure), Math.max(next, openingPressure));
    }
    drop = next;
    if (missed <= settled * next && valveMissed <= valveSettled * next)
      return solved(ways, states, speeds, sign, drop, flow, iterations);
  }
  return undefined;
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
    const speed = speeds[index++] ?? 0;
    through += area * speed;
    holeSpeeds.push(sign * speed);
  }
  for (const { valve, pressure } of states) through += valve.atPressureUnderDisc?.(pressure).flow ?? 0;
  return {
    pressureDrop: sign * drop,
    holeSpeeds,
    iterations,
    residual: sign * through - flow,
  };
}
