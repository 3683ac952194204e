import { DashpotError } from '../base/dashpot-error.js';

/**
 * Signals that an iteration did not settle; carries the bracket so that the case can be repeated.
 *
 * @public
 */
export class ConvergenceError extends DashpotError {
  override readonly name = 'ConvergenceError';
  readonly low: number;
  readonly high: number;

  constructor(what: string, low: number, high: number) {
    super(`${what}: no root found between ${low} and ${high}`);
    this.low = low;
    this.high = high;
  }
}

/** A root, with how it was reached. */
export interface Root {
  readonly root: number;
  readonly iterations: number;
  /** Value of the function at the root, in the function's own unit. */
  readonly residual: number;
}

const iterationLimit = 200;

/**
 * Root of a continuous function between two points where its sign differs, by the Illinois form of regula
 * falsi with bisection as the fallback (Dowell & Jarratt, BIT 11 (1971) 168).
 *
 * @param f - the function; any unit
 * @param low - lower end of the bracket
 * @param high - upper end of the bracket
 * @param what - name used in the error
 * @throws ConvergenceError where both ends have the same sign, or after 200 steps
 */
export function bracketedRoot(f: (x: number) => number, low: number, high: number, what: string): Root {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return { root: a, iterations: 0, residual: 0 };
  if (fb === 0) return { root: b, iterations: 0, residual: 0 };
  // By signs, since a product of two small values may be 0; written so that a NaN at an end is refused too.
  if (!(Math.sign(fa) * Math.sign(fb) < 0)) throw new ConvergenceError(what, low, high);
  for (let iterations = 1; iterations <= iterationLimit; iterations++) {
    // Every fourth step halves the bracket, so that a badly scaled function cannot crawl.
    const secant = (fa * b - fb * a) / (fa - fb);
    const x =
      iterations % 4 === 0 || !(secant > Math.min(a, b) && secant < Math.max(a, b)) ? (a + b) / 2 : secant;
    const fx = f(x);
    const width = Math.abs(b - a);
    if (fx === 0 || width <= 4e-16 * Math.abs(x)) return { root: x, iterations, residual: fx };
    if (Math.sign(fx) * Math.sign(fb) < 0) {
      a = b;
      fa = fb;
    } else {
      fa /= 2;
    }
    b = x;
    fb = fx;
    if (Math.abs(b - a) <= 4e-16 * Math.abs(b)) return { root: b, iterations, residual: fb };
  }
  throw new ConvergenceError(what, low, high);
}

/**
 * Root above 0 of a rising function whose size is known roughly: the bracket is doubled from a first guess.
 *
 * @param f - the function, not above 0 at 0; any unit
 * @param start - first upper end of the bracket, above 0
 * @param limit - no upper end is taken above twice this
 * @param what - name used in the error
 * @throws ConvergenceError where the function stays below 0 up to the limit, or after 200 steps
 */
export function rootAbove(f: (x: number) => number, start: number, limit: number, what: string): Root {
  let low = 0;
  let high = start;
  // Written so that a NaN ends the search too.
  while (!(f(high) >= 0)) {
    if (!(high < limit)) throw new ConvergenceError(what, start, high);
    low = high;
    high *= 2;
  }
  return bracketedRoot(f, low, high, what);
}
