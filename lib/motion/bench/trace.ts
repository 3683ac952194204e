import { type Step, stateWithin } from '../../numeric/integrator/dense-output.js';
import type { Piece, Place } from './stroke.js';
import { recorded } from './stroke-equation.js';

/**
 * A cycle at equal times.
 *
 * @public
 */
export interface Trace {
  /** [s] */
  readonly times: Float64Array;
  /** [m] */
  readonly travels: Float64Array;
  /** [m/s] */
  readonly speeds: Float64Array;
  /** [N] */
  readonly forces: Float64Array;
  /** Absolute [Pa]. */
  readonly blindPressures: Float64Array;
  readonly shaftPressures: Float64Array;
  /** [m³] */
  readonly cavities: Float64Array;
}

/** Fills a trace step by step. */
export interface TraceWriter {
  readonly trace: Trace;
  readonly observe: (step: Step) => void;
  /** Points filled so far. */
  readonly filled: () => number;
}

/** Goes on where the writer of the piece before stopped. */
export function traceWriter(
  from: number,
  to: number,
  parts: number,
  piece: Piece,
  write: (time: number, state: Float64Array, values: Float64Array) => void,
  before: TraceWriter | undefined,
): TraceWriter {
  const trace = before?.trace ?? emptyTrace(from, to, parts);
  const state = new Float64Array(1);
  const values = new Float64Array(recorded.count);
  const place: Place = { travel: 0, speed: 0, acceleration: 0 };
  let next = before?.filled() ?? 0;
  const observe = (step: Step): void => {
    if (parts === 0) return;
    const end = step.time + step.covered * step.length;
    for (; next <= parts; next++) {
      const time = trace.times[next] as number;
      // The last point must not fall off by a rounding.
      if (time > end && !(next === parts && end >= to)) break;
      const share = Math.min(step.covered, (time - step.time) / step.length);
      stateWithin(step, share, state);
      piece.evaluate(time, place);
      write(time, state, values);
      trace.travels[next] = place.travel;
      trace.speeds[next] = place.speed;
      trace.forces[next] = values[recorded.force] as number;
      trace.blindPressures[next] = values[recorded.blindPressure] as number;
      trace.shaftPressures[next] = values[recorded.shaftPressure] as number;
      trace.cavities[next] = values[recorded.cavity] as number;
    }
  };
  return { trace, observe, filled: () => next };
}

function emptyTrace(from: number, to: number, parts: number): Trace {
  const empty = () => new Float64Array(parts === 0 ? 0 : parts + 1);
  return {
    times: empty().map((_, i) => from + ((to - from) * i) / parts),
    travels: empty(),
    speeds: empty(),
    forces: empty(),
    blindPressures: empty(),
    shaftPressures: empty(),
    cavities: empty(),
  };
}
