import { ConvergenceError } from '../../numeric/root-finding.js';
import type { DiscState, DiscTable } from './disc-table.js';

/** Pressure, flow and their slopes over the logarithm of the lift; filled by a curve. */
export interface CurvePoint {
  pressure: number;
  pressureSlope: number;
  flow: number;
  flowSlope: number;
}

/** Pressure and flow of a disc at any lift, in the units of its table. */
export interface DiscCurve {
  readonly table: DiscTable;
  /** Lift of the first balance in the table: below, the curve is a join to the tight seat. */
  readonly firstLift: number;
  /** Last lift of the table; beyond, the curve goes on as it ended. */
  readonly lastLift: number;
  /** Lift at which a stop holds the disc; infinite without one. */
  readonly largestLift: number;
  /** Writes pressure and flow at a lift above 0; beyond the largest the disc keeps its shape, and both grow alike. */
  readonly write: (lift: number, out: CurvePoint) => void;
  /** A lift at which about this much flows, for a start. */
  readonly liftNear: (flow: number) => number;
  /** Anything else in the table, at a lift. */
  readonly at: (lift: number, of: (state: DiscState) => number) => number;
}

/** Slopes at even steps that keep a cubic from overshooting: harmonic means, none at a turn. */
function evenSlopes(values: readonly number[], step: number): readonly number[] {
  const between = values.slice(1).map((value, index) => (value - values[index]!) / step);
  return values.map((_, index) => {
    const before = between[index - 1] ?? between[index]!;
    const after = between[index] ?? before;
    return before * after > 0 ? (2 * before * after) / (before + after) : 0;
  });
}

/** Coefficients of a cubic for each step of a table in one quantity, by the part of the step. */
function cubics(values: readonly number[], step: number): Float64Array {
  const slopes = evenSlopes(values, step);
  const coefficients = new Float64Array(4 * Math.max(values.length - 1, 1));
  for (let index = 0; index < coefficients.length / 4; index++) {
    const [a, b] = [values[index]!, values[index + 1] ?? values[index]!];
    const [c, d] = [step * slopes[index]!, step * slopes[index + 1]!];
    coefficients.set([a, c, 3 * (b - a) - 2 * c - d, 2 * (a - b) + c + d], 4 * index);
  }
  return coefficients;
}

/** A cubic of a table at a part of a step. */
function cubicValue(cubic: Float64Array, index: number, part: number): number {
  const at = 4 * index;
  return cubic[at]! + part * (cubic[at + 1]! + part * (cubic[at + 2]! + part * cubic[at + 3]!));
}

/** Its slope over the part. */
function cubicSlope(cubic: Float64Array, index: number, part: number): number {
  const at = 4 * index;
  return cubic[at + 1]! + part * (2 * cubic[at + 2]! + 3 * part * cubic[at + 3]!);
}

/**
 * A curve through the table of a disc.
 *
 * Below the first lift: pressure in a straight line from the tight seat, flow with the fourth power of the lift, as films have it; beyond the last
 * lift of the table: both as powers of the lift, up to a stop.
 *
 * @param largestLift - of a stop, over the thickness; infinite without one
 * @throws ConvergenceError where the table is empty
 */
export function discCurve(table: DiscTable, largestLift: number): DiscCurve {
  const { states, openingPressure } = table;
  const [first, last] = [states[0], states.at(-1)];
  if (first === undefined || last === undefined) throw new ConvergenceError('lift of a disc valve', 0, 0);
  const count = states.length;
  const step = count > 1 ? Math.log(last.lift / first.lift) / (count - 1) : 1;
  const pressures = states.map(({ pressure }) => Math.log(pressure));
  const flows = states.map(({ flow }) => Math.log(flow));
  const [pressureCubics, flowCubics] = [cubics(pressures, step), cubics(flows, step)];
  // Without a second balance: a film's third power of the lift, and pressure by bending.
  const end = Math.max(count - 2, 0);
  const pressureEnd = count > 1 ? (pressures[end + 1]! - pressures[end]!) / step : 1;
  const flowEnd = count > 1 ? (flows[end + 1]! - flows[end]!) / step : 4;
  const held = Math.max(largestLift, last.lift);
  const write = (lift: number, out: CurvePoint) => {
    if (lift < first.lift) {
      const part = lift / first.lift;
      out.pressure = openingPressure + (first.pressure - openingPressure) * part;
      out.pressureSlope = (first.pressure - openingPressure) * part;
      out.flow = first.flow * part ** 4;
      out.flowSlope = 4 * out.flow;
      return;
    }
    if (lift >= last.lift) {
      const powers = Math.log(Math.min(lift, held) / last.lift);
      const beyond = Math.max(lift / held, 1);
      out.pressure = last.pressure * Math.exp(pressureEnd * powers) * beyond;
      out.flow = last.flow * Math.exp(flowEnd * powers) * beyond;
      out.pressureSlope = out.pressure * (lift < held ? pressureEnd : 1);
      out.flowSlope = out.flow * (lift < held ? flowEnd : 1);
      return;
    }
    const place = Math.log(lift / first.lift) / step;
    const index = Math.min(Math.floor(place), end);
    const part = place - index;
    out.pressure = Math.exp(cubicValue(pressureCubics, index, part));
    out.pressureSlope = (out.pressure * cubicSlope(pressureCubics, index, part)) / step;
    out.flow = Math.exp(cubicValue(flowCubics, index, part));
    out.flowSlope = (out.flow * cubicSlope(flowCubics, index, part)) / step;
  };
  return {
    table,
    firstLift: first.lift,
    lastLift: last.lift,
    largestLift: held,
    write,
    liftNear: (flow) => {
      let above = last;
      for (const state of states) {
        if (state.flow < flow) continue;
        above = state;
        break;
      }
      return above.lift * Math.sqrt(Math.sqrt(flow / above.flow));
    },
    at: (lift, of) => {
      if (lift <= first.lift) return (of(first) * lift) / first.lift;
      const place = Math.min(Math.log(lift / first.lift) / step, count - 1);
      const index = Math.min(Math.floor(place), end);
      return cubicValue(cubics(states.map(of), step), index, place - index);
    },
  };
}
