import { requirePositive } from '../../base/checks.js';
import { madeWith, requireShape } from '../../base/shape.js';
import type { BenchResult, StrokeCycle } from './bench-stroke.js';
import type { RepeatedStroke } from './stroke.js';
import { repeatedStrokeShape } from './stroke.js';
import type { Trace } from './trace.js';

/**
 * Forces at one speed while the shaft gathers speed and while it loses it [N]: a steady curve would give the same twice.
 *
 * @public
 */
export interface Hysteresis {
  /** Speed of the shaft [m/s], with its sign. */
  readonly speed: number;
  readonly gathering: number;
  readonly losing: number;
}

/**
 * What a test bench would write under the loops of the last cycle.
 *
 * @public
 */
export interface StrokeFigures {
  /** Mean damping [N·s/m]: that of a linear damper that takes as much work from the same sine, `W/(π ω X²)`. */
  readonly equivalentDamping: number;
  /** Part of the force that follows the travel [N/m], `ω/(π X²) ∮ F (x − x_m) dt`: gas, and oil that gives. */
  readonly dynamicStiffness: number;
  /** Force where the shaft turns, fully in and fully out [N]. */
  readonly forceFullyIn: number;
  readonly forceFullyOut: number;
  readonly compression: Hysteresis;
  readonly rebound: Hysteresis;
}

/** Part of the highest speed at which the hysteresis is read. */
const hysteresisShare = 0.7;

/**
 * Figures of the last cycle of a repeated stroke.
 *
 * @param result - from `benchStroke`, with a trace
 * @param stroke - the same stroke; for a triangle, damping and stiffness are those of a sine of its length and frequency
 * @public
 */
export function strokeFigures(result: BenchResult, stroke: RepeatedStroke): StrokeFigures {
  requireShape({ result, stroke }, { result: madeWith('trace'), stroke: repeatedStrokeShape });
  requirePositive(stroke.amplitude, 'amplitude', 'm');
  requirePositive(stroke.frequency, 'frequency', 'Hz');
  const cycle = result.cycles.at(-1) as StrokeCycle;
  const { amplitude, frequency, middle } = stroke;
  const omega = 2 * Math.PI * frequency;
  const { trace } = result;
  const half = (trace.times.length - 1) / 2;
  const highest = trace.speeds.reduce((a, b) => Math.max(a, b), 0);
  const { meanForceTimesTravel, meanForce } = cycle;
  return {
    equivalentDamping: cycle.work / (Math.PI * omega * amplitude ** 2),
    dynamicStiffness: (2 * (meanForceTimesTravel - meanForce * middle)) / amplitude ** 2,
    forceFullyIn: trace.forces[Math.round(half)] as number,
    forceFullyOut: trace.forces.at(-1) as number,
    compression: hysteresis(trace, hysteresisShare * highest, 0, half),
    rebound: hysteresis(trace, -hysteresisShare * highest, half, 2 * half),
  };
}

/** Forces where the speed passes a value in a half cycle: the first time and the last time. */
function hysteresis({ speeds, forces }: Trace, speed: number, from: number, to: number): Hysteresis {
  const passings: number[] = [];
  for (let i = Math.ceil(from); i < Math.floor(to); i++) {
    const before = (speeds[i] as number) - speed;
    const after = (speeds[i + 1] as number) - speed;
    if (before * after > 0 || before === after) continue;
    const share = before / (before - after);
    passings.push((forces[i] as number) + share * ((forces[i + 1] as number) - (forces[i] as number)));
  }
  return {
    speed,
    gathering: passings[0] ?? Number.NaN,
    losing: passings.at(-1) ?? Number.NaN,
  };
}
