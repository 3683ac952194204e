import { type Step, stateWithin } from './dense-output.js';

/** What a quantity did over an integration. */
export interface Course {
  readonly largest: number;
  readonly largestTime: number;
  readonly smallest: number;
  readonly smallestTime: number;
  /** Over time. */
  readonly integral: number;
}

/** Watches quantities of time and state over each step. */
export interface Recorder {
  readonly observe: (step: Step) => void;
  readonly course: (index: number) => Course;
  /** What was found so far, for a recorder that goes on. */
  readonly found: Found;
}

interface Found {
  readonly largest: Float64Array;
  readonly largestTime: Float64Array;
  readonly smallest: Float64Array;
  readonly smallestTime: Float64Array;
  readonly integrals: Float64Array;
}

/** Points of Lobatto's rule with five points on 0 to 1, and its weights: exact to degree 7. */
const inner = Math.sqrt(3 / 7) / 2;
const points = Float64Array.of(0, 0.5 - inner, 0.5, 0.5 + inner, 1);
const weights = Float64Array.of(1 / 20, 49 / 180, 16 / 45, 49 / 180, 1 / 20);
const count = points.length;

/**
 * Finds peaks and integrals of quantities on the dense polynomials, both ends of each step included, so that both sides of an event
 * count. A peak between the points is looked for where a parabola through three of them would rise above the highest so far.
 *
 * @param size - unknowns of the equation
 * @param quantities - how many values `write` gives
 * @param peaks - how many of them, the first ones, are watched for peaks; of the others only the integral counts
 * @param before - a recorder of the same quantities, to go on with
 */
export function recorder(
  size: number,
  quantities: number,
  peaks: number,
  write: (time: number, state: Float64Array, values: Float64Array) => void,
  before?: Recorder,
): Recorder {
  const state = new Float64Array(size);
  const values = new Float64Array(quantities);
  const samples = new Float64Array(count * quantities);
  let lastEnd = Number.NaN;
  const found = before?.found ?? {
    largest: new Float64Array(quantities).fill(Number.NEGATIVE_INFINITY),
    smallest: new Float64Array(quantities).fill(Number.POSITIVE_INFINITY),
    largestTime: new Float64Array(quantities),
    smallestTime: new Float64Array(quantities),
    integrals: new Float64Array(quantities),
  };
  const { largest, smallest, largestTime, smallestTime, integrals } = found;

  function valueAt(step: Step, share: number, index: number): number {
    stateWithin(step, share, state);
    write(step.time + share * step.length, state, values);
    return values[index] as number;
  }

  /** Keeps a value if it is the highest (side 1) or lowest (side −1) so far. */
  function keep(index: number, side: 1 | -1, value: number, time: number): void {
    if (side > 0 && value > (largest[index] as number)) {
      largest[index] = value;
      largestTime[index] = time;
    } else if (side < 0 && value < (smallest[index] as number)) {
      smallest[index] = value;
      smallestTime[index] = time;
    }
  }

  /** Refines a peak between two shares of the step by successive parabolas. */
  function refine(step: Step, index: number, side: 1 | -1, from: number, middle: number, to: number): void {
    let a = from;
    let b = middle;
    let c = to;
    let fa = side * valueAt(step, a, index);
    let fb = side * valueAt(step, b, index);
    let fc = side * valueAt(step, c, index);
    for (let iteration = 0; iteration < 12; iteration++) {
      const share = vertex(a, fa, b, fb, c, fc);
      const middleOfLonger = b - a > c - b ? (a + b) / 2 : (b + c) / 2;
      const x = share > a && share < c && Math.abs(share - b) > 1e-6 ? share : middleOfLonger;
      const fx = side * valueAt(step, x, index);
      if (fx > fb) {
        if (x > b) {
          a = b;
          fa = fb;
        } else {
          c = b;
          fc = fb;
        }
        b = x;
        fb = fx;
      } else if (x > b) {
        c = x;
        fc = fx;
      } else {
        a = x;
        fa = fx;
      }
      keep(index, side, side * fb, step.time + b * step.length);
      if (Math.max(fb - fa, fb - fc) <= 1e-7 * Math.abs(fb)) break;
    }
  }

  /** Highest sample of a side in this step, and whether a peak between samples might rise above the record. */
  function mayRise(index: number, side: 1 | -1): boolean {
    let top = Number.NEGATIVE_INFINITY;
    let bottom = Number.POSITIVE_INFINITY;
    for (let k = 0; k < count; k++) {
      const value = side * (samples[k * quantities + index] as number);
      if (value > top) top = value;
      if (value < bottom) bottom = value;
    }
    const record = side * ((side > 0 ? largest[index] : smallest[index]) as number);
    // Between its samples a smooth value does not rise by more than its range in the step.
    return top > bottom && 2 * top - bottom > record;
  }

  function lookForPeaks(step: Step, index: number, side: 1 | -1): void {
    for (let k = 0; k < count - 2; k++) {
      const fa = side * (samples[k * quantities + index] as number);
      const fb = side * (samples[(k + 1) * quantities + index] as number);
      const fc = side * (samples[(k + 2) * quantities + index] as number);
      // A valley has no peak inside.
      if (fb <= fa && fb <= fc) continue;
      const a = (points[k] as number) * step.covered;
      const b = (points[k + 1] as number) * step.covered;
      const c = (points[k + 2] as number) * step.covered;
      const x = vertex(a, fa, b, fb, c, fc);
      if (!(x > a && x < c)) continue;
      const record = side * ((side > 0 ? largest[index] : smallest[index]) as number);
      const height = parabola(a, fa, b, fb, c, fc, x);
      if (height > record + 1e-9 * Math.abs(record)) refine(step, index, side, a, b, c);
    }
  }

  /** Writes the samples of a step; its first is the last of the step before, unless an event stands between. */
  function takeSamples(step: Step): void {
    const goesOn = step.time === lastEnd;
    if (goesOn) samples.copyWithin(0, (count - 1) * quantities, count * quantities);
    for (let k = goesOn ? 1 : 0; k < count; k++) {
      const share = (points[k] as number) * step.covered;
      stateWithin(step, share, state);
      write(step.time + share * step.length, state, values);
      samples.set(values, k * quantities);
    }
    lastEnd = step.cut ? Number.NaN : step.time + step.length;
  }

  function observe(step: Step): void {
    takeSamples(step);
    for (let k = 0; k < count; k++) {
      const time = step.time + (points[k] as number) * step.covered * step.length;
      const weight = (weights[k] as number) * step.covered * step.length;
      for (let i = 0; i < quantities; i++) {
        const value = samples[k * quantities + i] as number;
        integrals[i] = (integrals[i] as number) + weight * value;
        if (i >= peaks) continue;
        keep(i, 1, value, time);
        keep(i, -1, value, time);
      }
    }
    for (let i = 0; i < peaks; i++) {
      if (mayRise(i, 1)) lookForPeaks(step, i, 1);
      if (mayRise(i, -1)) lookForPeaks(step, i, -1);
    }
  }

  return {
    observe,
    found,
    course: (index) => ({
      largest: largest[index] as number,
      largestTime: largestTime[index] as number,
      smallest: smallest[index] as number,
      smallestTime: smallestTime[index] as number,
      integral: integrals[index] as number,
    }),
  };
}

/** Where a parabola through three points turns. */
function vertex(a: number, fa: number, b: number, fb: number, c: number, fc: number): number {
  const left = (b - a) * (fb - fc);
  const right = (b - c) * (fb - fa);
  return b - ((b - a) * left - (b - c) * right) / (2 * (left - right));
}

function parabola(a: number, fa: number, b: number, fb: number, c: number, fc: number, x: number): number {
  return (
    (fa * (x - b) * (x - c)) / ((a - b) * (a - c)) +
    (fb * (x - a) * (x - c)) / ((b - a) * (b - c)) +
    (fc * (x - a) * (x - b)) / ((c - a) * (c - b))
  );
}
