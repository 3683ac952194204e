import { standardGravity } from '../../lib/base/constants.js';
import { InputError } from '../../lib/base/input-error.js';
import { pullOutTime } from '../../lib/fill/friction/creep-speed.js';
import { HydraulicLock } from '../../lib/gas/hydraulic-lock.js';
import { type BuiltShock, type Deviation, damperAt, workingStroke } from './built-shock.js';

/** What a builder may be off by. */
export interface Tolerances {
  /** Of each hole diameter, either way [m]. */
  readonly hole: number;
  /** Of the oil temperature, either way [K]. */
  readonly temperature: number;
}

/** Time that a weight takes over the working stroke [s]. */
export interface HangTime {
  readonly mass: number;
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/** Why a weight has no time. */
export type NoTime = 'too light, friction holds the shaft' | 'the shaft locks before';

/** Stretch over which the weight is timed [m]. */
export function timedStretch({ build }: BuiltShock): { readonly from: number; readonly to: number } {
  const { stroke } = build.shock;
  return { from: workingStroke.to * stroke, to: workingStroke.from * stroke };
}

/** Time of a hung weight with its interval, over the working stroke unless said otherwise, or why there is none. */
export function hangTime(
  built: BuiltShock,
  temperature: number,
  mass: number,
  tolerances: Tolerances,
  stretch: { readonly from: number; readonly to: number } = timedStretch(built),
): HangTime | NoTime {
  const time = (at: number, deviation: Deviation): number =>
    pullOutTime(damperAt(built, at, deviation), built.shock, {
      pull: mass * standardGravity,
      ...stretch,
    });
  try {
    return {
      mass,
      low: time(temperature + tolerances.temperature, { bound: 'low', holes: tolerances.hole }),
      typical: time(temperature, { bound: 'typical', holes: 0 }),
      high: time(temperature - tolerances.temperature, { bound: 'high', holes: -tolerances.hole }),
    };
  } catch (error) {
    if (error instanceof HydraulicLock) return 'the shaft locks before';
    if (error instanceof InputError && error.field === 'pull') return 'too light, friction holds the shaft';
    throw error;
  }
}
