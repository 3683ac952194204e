import { ConvergenceError, type Root } from './root-finding.js';

/** A rising function and its slope at one point. */
export interface ValueAndSlope {
  readonly value: number;
  readonly slope: number;
}

const stepLimit = 200;

/** Steps after which Newton creeps, as down a high power of the variable. */
const long = 40;

/** Relative change after which one more Newton step, converging quadratically, would change nothing in double precision. */
const settled = 1e-10;

/**
 * Root of a rising function of a variable above 0, by Newton kept inside a bracket that closes with each step. A bend of the
 * function, such as a valve that opens, costs steps but never the root.
 *
 * @param f - value and slope; any unit
 * @param start - first guess, above `low`
 * @param low - below the root
 * @param high - above the root; `Infinity` where unknown
 * @param what - name used in the error
 * @throws ConvergenceError after 200 steps
 */
export function monotoneRoot(
  f: (x: number) => ValueAndSlope,
  start: number,
  low: number,
  high: number,
  what: string,
): Root {
  let below = low;
  let above = high;
  let x = start;
  for (let iterations = 1; iterations <= stepLimit; iterations++) {
    const { value, slope } = f(x);
    if (value === 0) return { root: x, iterations, residual: 0 };
    if (value > 0) above = x;
    else below = x;
    let next = x - value / slope;
    const bracketed = above < Number.POSITIVE_INFINITY;
    const creeping = bracketed && iterations >= long;
    // Every eighth step halves the bracket, so that Newton cannot walk to and fro across a bend; every other one once it has crept for long, and then
    // half way in powers of the variable, since the root may be many of them lower.
    const halve = iterations % (creeping ? 2 : 8) === 0 && bracketed;
    if (halve || !(next > below && next < above)) {
      next = bracketed ? (below + above) / 2 : 4 * x;
      if (creeping) next = below > 0 ? Math.sqrt(below * above) : above / 256;
    }
    const change = Math.abs(next - x);
    x = next;
    if (change <= settled * x && !halve) return { root: x, iterations, residual: value };
    // An unknown upper end is infinitely far, also in parts of itself.
    if (bracketed && above - below <= 4e-16 * above) return { root: x, iterations, residual: value };
  }
  throw new ConvergenceError(what, below, above);
}
