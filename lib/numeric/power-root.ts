import { ConvergenceError, type Root } from './root-finding.js';

const stepLimit = 200;

/** Change of the logarithm after which one more step, converging quadratically, would change nothing in double precision. */
const settled = 1e-9;

/** Largest factor of one step, as a logarithm, so that a flat start cannot throw the root out of sight. */
const longestStride = 40;

/**
 * Root above 0 of a rising function that goes about as a power of its variable: Newton in logarithms, where a power is a straight line, kept inside a bracket that
 * closes with each step.
 *
 * @param f - writes the logarithm of the function over what is wanted, and the slope of that over the logarithm of the variable, into the first two places
 * @param start - first guess, above 0
 * @param what - name used in the error
 * @param least - below the root; 0 where unknown
 * @throws ConvergenceError after 200 steps
 */
export function powerRoot(
  f: (x: number, out: Float64Array) => void,
  start: number,
  what: string,
  least = 0,
): Root {
  const out = new Float64Array(2);
  let below = Math.log(least);
  let above = Number.POSITIVE_INFINITY;
  let place = Math.log(start);
  for (let iterations = 1; iterations <= stepLimit; iterations++) {
    f(Math.exp(place), out);
    const [value = 0, power = 1] = out;
    if (value > 0) above = place;
    else below = place;
    const stride = -value / power;
    if (Math.abs(stride) <= settled) return { root: Math.exp(place + stride), iterations, residual: value };
    const bracketed = above - below < Number.POSITIVE_INFINITY;
    if (bracketed && above - below <= 4e-16 * Math.abs(above))
      return { root: Math.exp(place), iterations, residual: value };
    const next = place + Math.min(Math.max(stride, -longestStride), longestStride);
    // Every eighth step halves the bracket, so that Newton cannot walk to and fro across a bend.
    if (next > below && next < above && !(iterations % 8 === 0 && bracketed)) place = next;
    else place = bracketed ? (below + above) / 2 : place - 2 * Math.sign(value);
  }
  throw new ConvergenceError(what, Math.exp(below), Math.exp(above));
}
