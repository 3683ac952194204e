import { benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import { moveCorner } from '../../lib/motion/corner/move-corner.js';
import { sampleCorner } from '../../test/motion/sample-corner.js';
import { sampleShock } from '../../test/motion/sample-shock.js';

/** One run at one tolerance. */
export interface Timing {
  readonly run: string;
  readonly tolerance: number;
  readonly milliseconds: number;
  /** Largest and smallest force, then cavity and work of a stroke, tyre force and travel of a landing. */
  readonly values: readonly number[];
}

const shock = sampleShock();
const stroke = { kind: 'sine', middle: 0.012, amplitude: 0.01, frequency: 10, cycles: 2 } as const;

function strokeValues(tolerance: number): readonly number[] {
  const result = benchStroke(shock, stroke, { tolerance, parts: 0 });
  const work = result.cycles.reduce((sum, cycle) => sum + cycle.work, 0);
  return [result.largestForce.value, result.smallestForce.value, result.largestCavity.value, work];
}

function landingValues(tolerance: number): readonly number[] {
  const r = moveCorner(shock, sampleCorner, { kind: 'landing', dropHeight: 0.15 }, { tolerance, parts: 0 });
  return [
    r.largestShockForce.value,
    r.smallestShockForce.value,
    r.largestTyreForce.value,
    r.largestTravel.value,
  ];
}

export const runs = { stroke: strokeValues, landing: landingValues } as const;

/** Processor time of the fastest of many runs, after the engine has warmed up. */
export function timed(run: keyof typeof runs, tolerance: number, repeats: number): Timing {
  const values = runs[run](tolerance);
  let milliseconds = Number.POSITIVE_INFINITY;
  for (let i = 0; i < repeats; i++) {
    const start = process.cpuUsage();
    runs[run](tolerance);
    const { user, system } = process.cpuUsage(start);
    milliseconds = Math.min(milliseconds, (user + system) / 1000);
  }
  return { run, tolerance, milliseconds, values };
}
