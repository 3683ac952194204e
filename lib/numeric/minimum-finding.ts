import { ConvergenceError } from './root-finding.js';

interface Tried {
  readonly place: number;
  readonly value: number;
}

/** Part of the larger side of the bracket that a golden section steps into. */
const golden = (3 - Math.sqrt(5)) / 2;
const iterationLimit = 200;

/** From the first of three points to the vertex of the parabola through all; not a number where they lie on a line. */
function stepToVertex(from: Tried, second: Tried, third: Tried): number {
  const [toSecond, toThird] = [second.place - from.place, third.place - from.place];
  const [bySecond, byThird] = [toThird * (second.value - from.value), toSecond * (third.value - from.value)];
  return (toThird * bySecond - toSecond * byThird) / (2 * (bySecond - byThird));
}

/**
 * Place of a minimum between two ends, by parabolas through the three best points, and golden sections where these do not shrink fast enough
 * (Brent, Algorithms for Minimization without Derivatives, 1973, ch. 5; from memory). A smooth minimum is found in some ten steps.
 *
 * @param f - continuous function with one minimum between the ends
 * @param low - lower end
 * @param start - first guess, between the ends
 * @param high - upper end
 * @param tolerance - the place is right to twice this, as far as the digits of `f` allow: rounding hides all that is nearer to a minimum
 * than about 1e-8 of its width
 * @throws ConvergenceError after 200 steps
 */
export function bracketedMinimum(
  f: (x: number) => number,
  low: number,
  start: number,
  high: number,
  tolerance: number,
): number {
  let [a, b] = [low, high];
  let best: Tried = { place: start, value: f(start) };
  let [second, third] = [best, best];
  let [step, earlier] = [0, 0];
  for (let iteration = 0; iteration < iterationLimit; iteration++) {
    const middle = (a + b) / 2;
    if (Math.abs(best.place - middle) + (b - a) / 2 <= 2 * tolerance) return best.place;
    const inwards = best.place < middle ? tolerance : -tolerance;
    const fitted = stepToVertex(best, second, third);
    const vertex = best.place + fitted;
    // A parabola counts while its steps at least halve with every second one.
    if (earlier > tolerance && Math.abs(fitted) < earlier / 2 && vertex > a && vertex < b) {
      earlier = Math.abs(step);
      step = vertex - a < 2 * tolerance || b - vertex < 2 * tolerance ? inwards : fitted;
    } else {
      const side = (best.place < middle ? b : a) - best.place;
      earlier = Math.abs(side);
      step = golden * side;
    }
    const place = best.place + (Math.abs(step) >= tolerance ? step : step < 0 ? -tolerance : tolerance);
    const tried = { place, value: f(place) };
    const isBest = tried.value <= best.value;
    // The bracket ends at the worse of the two points.
    const end = isBest ? best.place : place;
    if (place >= best.place === isBest) a = end;
    else b = end;
    if (isBest) [best, second, third] = [tried, best, second];
    else if (tried.value <= second.value || second === best) [second, third] = [tried, second];
    else if (tried.value <= third.value || third === best || third === second) third = tried;
  }
  throw new ConvergenceError('minimum', low, high);
}
