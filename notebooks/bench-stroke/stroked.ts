import { InputError } from '../../lib/base/input-error.js';
import { type BenchResult, benchStroke, type StrokeCycle } from '../../lib/motion/bench/bench-stroke.js';
import type { RepeatedStroke } from '../../lib/motion/bench/stroke.js';
import { type StrokeFigures, strokeFigures } from '../../lib/motion/bench/stroke-figures.js';
import { longestRun } from '../../lib/motion/input/options.js';
import type { Build, Parts } from '../../lib/parts/parts.js';
import { millimetres } from '../base/bench-wording.js';
import { type AirEnd, type MovingBuild, movingBuild } from '../base/moving-build.js';

/** What is put on the bench and how it is moved. */
export interface Asked {
  readonly build: Build;
  readonly wave: 'sine' | 'triangle';
  /** [m] */
  readonly amplitude: number;
  /** [Hz] */
  readonly frequency: number;
  /** [K] */
  readonly temperature: number;
}

/** A build that was moved to and fro. */
export interface Stroked {
  /** What air does in its oil. */
  readonly end: AirEnd;
  readonly moving: MovingBuild;
  readonly stroke: RepeatedStroke;
  readonly result: BenchResult;
  /** Whether the last stroke takes as much work as the one before it, and all of it is heat. */
  readonly repeats: boolean;
  /** The last stroke. */
  readonly cycle: StrokeCycle;
  readonly figures: StrokeFigures;
}

/** Parts of the trace of a cycle; it is drawn at every fourth point. */
const traceParts = 480;

/** Strokes from rest: most shocks repeat the second, foam needs more. */
const [leastStrokes, mostStrokes] = [2, 32];
/** How far the work of one stroke may be from that of the one before, of it. */
const alike = 1e-3;

/** How far the heat of a stroke may be from its work, of it: the rest is gas that still settles, or too coarse steps. */
const balanced = 5e-3;
/** Errors of a step: usual, and where the heat of a stroke is all about small differences. */
const [usual, fine] = [1e-5, 1e-7];

/** What the parts turn into heat in a cycle [J]. */
export function heatOf({ lost }: StrokeCycle): number {
  return Object.values(lost).reduce((sum, one) => sum + one, 0);
}

/** Whether the last cycle takes as much work as the one before it. */
function isSteady({ cycles }: BenchResult): boolean {
  const [before, last] = cycles.slice(-2).map(({ work }) => work) as [number, number];
  return Math.abs(last - before) <= alike * Math.abs(last);
}

/** Whether the last cycle gives back all the work as heat. */
function isBalanced({ cycles }: BenchResult): boolean {
  const last = cycles.at(-1) as StrokeCycle;
  return Math.abs(last.work - heatOf(last)) <= balanced * Math.abs(last.work);
}

/** Moves it until its strokes repeat: each time from rest, with smaller errors and then twice as often. */
function untilRepeated(shock: MovingBuild['shock'], stroke: RepeatedStroke, tolerance = usual): BenchResult {
  const result = benchStroke(shock, stroke, { parts: traceParts, tolerance });
  const steady = isSteady(result);
  if (steady && isBalanced(result)) return result;
  if (steady && tolerance === usual) return untilRepeated(shock, stroke, fine);
  const more = 2 * stroke.cycles;
  if (more > mostStrokes || more / stroke.frequency > longestRun) return result;
  return untilRepeated(shock, { ...stroke, cycles: more }, tolerance);
}

/** Moves a build to and fro about the middle of its travel. */
export function stroked(
  { build, wave, amplitude, frequency, temperature }: Asked,
  end: AirEnd = 'likely',
): Stroked {
  const moving = movingBuild(build, temperature, end);
  const middle = build.shock.stroke / 2;
  const stroke: RepeatedStroke = { kind: wave, middle, amplitude, frequency, cycles: leastStrokes };
  const result = untilRepeated(moving.shock, stroke);
  const cycle = result.cycles.at(-1) as StrokeCycle;
  return {
    end,
    moving,
    stroke,
    result,
    repeats: isSteady(result) && isBalanced(result),
    cycle,
    figures: strokeFigures(result, stroke),
  };
}

/** The same, or undefined where the gas has no room for it. */
export function strokedOrLocked(asked: Asked, end: AirEnd): Stroked | undefined {
  try {
    return stroked(asked, end);
  } catch (error) {
    if (error instanceof InputError && error.field === 'gas.capacity') return undefined;
    throw error;
  }
}

/** Moves a build to and fro, or refuses a stroke that locks it in words of the bench. */
export function strokedOrRefused(asked: Asked): Stroked {
  const own = strokedOrLocked(asked, 'likely');
  if (own !== undefined) return own;
  throw new InputError({
    field: 'frequency',
    value: `${asked.frequency} Hz`,
    accepted:
      'lower, or the amplitude smaller or the oil warmer: shaft and cavity together ask for more room than the gas has, and the shock locks',
  });
}

/** Refuses an amplitude beyond the travel, in words of the bench. */
export function requireWithinTravel(build: Build, amplitude: number): void {
  const { stroke, name } = build.shock;
  if (2 * amplitude <= stroke) return;
  throw new InputError({
    field: 'amplitude',
    value: millimetres(amplitude),
    accepted: `at most half the stroke of ${name}, ${millimetres(stroke / 2)}`,
  });
}

/** An amplitude that leaves room at both ends [m]: two fifths of the stroke of the first build, 10 mm at most. */
export function usualAmplitude({ builds: [build] }: Parts): number | undefined {
  return build && Math.min(0.01, Math.floor(800 * build.shock.stroke) / 2000);
}
