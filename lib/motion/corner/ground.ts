import { refuse, requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { byKind, listOf, type Shape } from '../../base/shape.js';
import { risingTable } from '../input/table.js';

/**
 * What happens to the corner. All but a landing begin at rest on flat ground.
 *
 * - `landing`: it falls from a height (wheel above the ground) onto flat ground, the shock in balance as in free fall
 * - `step`: the ground rises at once
 * - `bump`: one cosine bump, `height` high and `length` long, driven over at a speed
 * - `washboard`: cosine bumps without end, `height` from valley to crest, `frequency` a second
 * - `table`: heights against time, with a line between that never overshoots
 *
 * Lengths [m], of a bump 1 mm or more, drop height 0 to 3 m, speed up to 100 m/s, frequency [Hz], times [s], 1 µs or more apart.
 *
 * @public
 */
export type CornerEvent =
  | { readonly kind: 'landing'; readonly dropHeight: number }
  | { readonly kind: 'step'; readonly height: number }
  | { readonly kind: 'bump'; readonly height: number; readonly length: number; readonly speed: number }
  | { readonly kind: 'washboard'; readonly height: number; readonly frequency: number }
  | { readonly kind: 'table'; readonly times: readonly number[]; readonly heights: readonly number[] };

/** Form of {@link CornerEvent}. */
export const cornerEventShape: Shape = byKind({
  landing: { dropHeight: '' },
  step: { height: '' },
  bump: { height: '', length: '', speed: '' },
  washboard: { height: '', frequency: '' },
  table: { times: listOf(''), heights: listOf('') },
});

/** Height of the ground under the wheel; `evaluate` writes what it finds. */
export interface Ground {
  height: number;
  slope: number;
  bend: number;
  readonly evaluate: (time: number) => void;
  /** Times at which it bends [s]. */
  readonly knots: readonly number[];
  /** Longest step that cannot jump over a bump [s]. */
  readonly longestStep: number;
}

const highestDrop = 3;
const highestFrequency = 200;
/** A bump is at least this long [m] and driven at most this fast [m/s], and rows of a table are so far apart [s]: below it no wheel follows, nor does the integrator. */
const shortestBump = 1e-3;
const fastestDriven = 100;
const shortestRow = 1e-6;

/** The ground of an event. */
export function groundOf(event: CornerEvent): Ground {
  switch (event.kind) {
    case 'landing':
      requireNotNegative(event.dropHeight, 'event.dropHeight', 'm');
      requireWithin(event.dropHeight, 0, highestDrop, 'event.dropHeight', 'm');
      return constant(0);
    case 'step':
      requireWithin(event.height, -1, 1, 'event.height', 'm');
      return constant(event.height);
    case 'bump': {
      requireWithin(event.height, -1, 1, 'event.height', 'm');
      requireWithin(event.length, shortestBump, 1000, 'event.length', 'm');
      requirePositive(event.speed, 'event.speed', 'm/s');
      requireWithin(event.speed, 0, fastestDriven, 'event.speed', 'm/s');
      const time = event.length / event.speed;
      return waves(event.height, 1 / time, time);
    }
    case 'washboard':
      requireWithin(event.height, -1, 1, 'event.height', 'm');
      requirePositive(event.frequency, 'event.frequency', 'Hz');
      requireWithin(event.frequency, 0, highestFrequency, 'event.frequency', 'Hz');
      return waves(event.height, event.frequency, Number.POSITIVE_INFINITY);
    case 'table': {
      const table = risingTable(event.times, event.heights, 'event.times', 'event.heights');
      event.times.forEach((time, index) => {
        const before = event.times[index - 1];
        if (before !== undefined && time - before < shortestRow)
          refuse(time, `event.times[${index}]`, 's', `${shortestRow} s or more after ${before}, in`);
      });
      const ground: Ground = {
        height: 0,
        slope: 0,
        bend: 0,
        // A bend nearer to the start than that falls together with it.
        knots: event.times.filter((time) => time >= shortestRow),
        longestStep: Number.POSITIVE_INFINITY,
        evaluate: (time) => {
          table.evaluate(time);
          ground.height = table.value;
          ground.slope = table.slope;
          ground.bend = table.bend;
        },
      };
      return ground;
    }
  }
}

function constant(height: number): Ground {
  return { height, slope: 0, bend: 0, knots: [], longestStep: Number.POSITIVE_INFINITY, evaluate: () => {} };
}

/** `height/2 (1 − cos 2πft)` up to an end. */
function waves(height: number, frequency: number, end: number): Ground {
  const omega = 2 * Math.PI * frequency;
  const ground: Ground = {
    height: 0,
    slope: 0,
    bend: 0,
    longestStep: 1 / (20 * frequency),
    knots: end < Number.POSITIVE_INFINITY ? [end] : [],
    evaluate: (time) => {
      if (time >= end || time <= 0) {
        ground.height = 0;
        ground.slope = 0;
        ground.bend = 0;
        return;
      }
      const half = height / 2;
      const cosine = Math.cos(omega * time);
      ground.height = half * (1 - cosine);
      ground.slope = half * omega * Math.sin(omega * time);
      ground.bend = half * omega * omega * cosine;
    },
  };
  return ground;
}
