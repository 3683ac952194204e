import { ConvergenceError, type Root } from './root-finding.js';

/** A rising function and its slope at one point. */
export interface ValueAndSlope {
  readonly value: number;
  readonly slope: number;
}

const stepLimit = 200;

/** Steps after which Newton creeps, as down a high power of the variable. */
const long = 40;

/** A place inside a bracket: half way; of a search that takes long half way in powers of the variable, since its root may be many of them lower. */
function between(below: number, above: number, creeping: boolean): number {
  if (!creeping || above < 4 * below) return (below + above) / 2;
  return below === 0 ? above / 256 : Math.sqrt(below) * Math.sqrt(above);
}

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
    // Every eighth step halves the bracket, so that Newton cannot walk to and fro across a bend; every other one once it has crept for long.
    const halve = iterations % (iterations < long ? 8 : 2) === 0 && above !== Number.POSITIVE_INFINITY;
    if (halve || !(next > below && next < above))
      next = above === Number.POSITIVE_INFINITY ? 4 * x : between(below, above, iterations >= long);
    const change = Math.abs(next - x);
    x = next;
    if (change <= settled * x && !halve) return { root: x, iterations, residual: value };
    // An unknown upper end is infinitely far, also in parts of itself.
    if (above !== Number.POSITIVE_INFINITY && above - below <= 4e-16 * above)
      return { root: x, iterations, residual: value };
  }
  throw new ConvergenceError(what, below, above);
}
