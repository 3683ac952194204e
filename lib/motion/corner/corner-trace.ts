import { type Step, stateWithin } from '../../numeric/integrator/dense-output.js';
import { unknown } from './corner-equation.js';
import { cornerRecorded } from './corner-record.js';

/**
 * A run of a corner at equal times.
 *
 * @public
 */
export interface CornerTrace {
  /** [s] */
  readonly times: Float64Array;
  /** Shaft travel [m] and speed [m/s]. */
  readonly travels: Float64Array;
  readonly speeds: Float64Array;
  /** Heights of body and wheel [m], both 0 at full extension with the wheel on flat ground. */
  readonly bodies: Float64Array;
  readonly wheels: Float64Array;
  /** Forces of shock and tyre [N]. */
  readonly shockForces: Float64Array;
  readonly tyreForces: Float64Array;
  /** Absolute pressures [Pa]. */
  readonly blindPressures: Float64Array;
  readonly shaftPressures: Float64Array;
  /** [m³] */
  readonly cavities: Float64Array;
}

/** Fills a trace step by step; what was followed until a time is given back. */
export function cornerTracer(
  duration: number,
  parts: number,
  size: number,
  write: (time: number, state: Float64Array, values: Float64Array) => void,
): { readonly until: (time: number) => CornerTrace; readonly observe: (step: Step) => void } {
  const empty = () => new Float64Array(parts === 0 ? 0 : parts + 1);
  const trace: CornerTrace = {
    times: empty().map((_, i) => (duration * i) / parts),
    travels: empty(),
    speeds: empty(),
    bodies: empty(),
    wheels: empty(),
    shockForces: empty(),
    tyreForces: empty(),
    blindPressures: empty(),
    shaftPressures: empty(),
    cavities: empty(),
  };
  const state = new Float64Array(size);
  const values = new Float64Array(cornerRecorded.count);
  let next = 0;
  const observe = (step: Step): void => {
    if (parts === 0) return;
    const end = step.time + step.covered * step.length;
    for (; next <= parts; next++) {
      const time = trace.times[next] as number;
      // The last point must not fall off by a rounding.
      if (time > end && !(next === parts && end >= duration)) break;
      stateWithin(step, Math.min(step.covered, (time - step.time) / step.length), state);
      write(time, state, values);
      trace.travels[next] = values[cornerRecorded.travel] as number;
      trace.speeds[next] = values[cornerRecorded.shaftSpeed] as number;
      trace.bodies[next] = state[unknown.body] as number;
      trace.wheels[next] = state[unknown.wheel] as number;
      trace.shockForces[next] = values[cornerRecorded.shockForce] as number;
      trace.tyreForces[next] = values[cornerRecorded.tyreForce] as number;
      trace.blindPressures[next] = values[cornerRecorded.blindPressure] as number;
      trace.shaftPressures[next] = values[cornerRecorded.shaftPressure] as number;
      trace.cavities[next] = values[cornerRecorded.cavity] as number;
    }
  };
  const until = (time: number): CornerTrace => {
    if (time >= duration) return trace;
    const followed = Object.entries(trace).map(([name, values]) => [name, values.subarray(0, next)]);
    return Object.fromEntries(followed) as Record<keyof CornerTrace, Float64Array>;
  };
  return { until, observe };
}
