import { refuse, requireCount, requireWithin } from '../../base/checks.js';
import { listOf, madeWith, numbers, requireShape } from '../../base/shape.js';

/**
 * Draws from a distribution, each with a weight.
 *
 * @public
 */
export interface Draws {
  /** Number of coordinates of a draw. */
  readonly dimensions: number;
  /** All draws, one after the other. */
  readonly values: Float64Array;
  /** Weight of each draw; together 1. */
  readonly weights: Float64Array;
  /** How many independent draws of equal weight would say as much. */
  readonly effective: number;
}

/**
 * Mean, spread and quantiles of one number over draws.
 *
 * @public
 */
export interface Spread {
  readonly mean: number;
  readonly standardDeviation: number;
  /** Quantiles in the order asked for. */
  readonly quantiles: readonly number[];
}

/**
 * One coordinate of all draws.
 *
 * @param draws - the draws
 * @param index - of the coordinate, from 0 and below `draws.dimensions`
 * @throws InputError for an index that no draw has
 * @public
 */
export function coordinate(draws: Draws, index: number): Float64Array {
  requireShape({ draws, index }, { draws: madeWith('values'), index: '' });
  requireCount(draws.dimensions, 'draws.dimensions');
  requireWithin(index, 0, draws.dimensions - 1, 'index', '');
  if (!Number.isInteger(index)) refuse(index, 'index', '', 'a whole number');
  const values = new Float64Array(draws.weights.length);
  for (let draw = 0; draw < values.length; draw++)
    values[draw] = draws.values[draw * draws.dimensions + index] ?? 0;
  return values;
}

/** By so much rounding may take the weights of a million draws off their sum. */
const weightError = 1e-6;

/** Throws unless there is a weight for each value, none below 0, and all are 1 together. */
function requireWeights(values: Float64Array, weights: Float64Array): void {
  const { length } = values;
  requireCount(length, 'values.length');
  if (weights.length !== length)
    refuse(weights.length, 'weights.length', '', `${length}, one for each value`);
  let sum = 0;
  weights.forEach((weight, index) => {
    requireWithin(weight, 0, 1, `weights[${index}]`, '');
    sum += weight;
  });
  requireWithin(sum, 1 - weightError, 1 + weightError, 'the sum of weights', '');
}

/** A number of each draw, in rising order, with the weight up to and half of each. */
interface Ranked {
  readonly values: Float64Array;
  readonly middles: Float64Array;
}

function ranked(values: Float64Array, weights: Float64Array): Ranked {
  const order = Uint32Array.from(values, (_, index) => index).sort(
    (first, second) => values[first]! - values[second]!,
  );
  const sorted = Float64Array.from(order, (index) => values[index]!);
  const middles = new Float64Array(values.length);
  let below = 0;
  order.forEach((index, place) => {
    const weight = weights[index]!;
    middles[place] = below + weight / 2;
    below += weight;
  });
  return { values: sorted, middles };
}

/** Value below which a share of the weight lies, on a line between the draws. */
function rankedQuantile({ values, middles }: Ranked, probability: number): number {
  let [low, high] = [0, middles.length - 1];
  if (probability <= middles[low]!) return values[low]!;
  if (probability >= middles[high]!) return values[high]!;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (middles[middle]! <= probability) low = middle;
    else high = middle;
  }
  const [left, right] = [middles[low]!, middles[high]!];
  return values[low]! + ((probability - left) / (right - left)) * (values[high]! - values[low]!);
}

/**
 * Mean, standard deviation and quantiles of a number over weighted draws.
 *
 * @param values - the number at each draw
 * @param weights - weight of each draw, 0 or more, together 1
 * @param probabilities - of the quantiles, 0 to 1
 * @throws InputError for lists of unlike length, for weights that are not 1 together and for a probability outside its range
 * @public
 */
export function spreadOf(
  values: Float64Array,
  weights: Float64Array,
  probabilities: readonly number[],
): Spread {
  requireShape(
    { values, weights, probabilities },
    {
      values: numbers,
      weights: numbers,
      probabilities: listOf((value, field) => requireWithin(value as number, 0, 1, field, '')),
    },
  );
  requireWeights(values, weights);
  let mean = 0;
  for (let index = 0; index < values.length; index++) mean += weights[index]! * values[index]!;
  let variance = 0;
  for (let index = 0; index < values.length; index++) {
    variance += weights[index]! * (values[index]! - mean) ** 2;
  }
  const order = ranked(values, weights);
  const quantiles = probabilities.map((probability) => rankedQuantile(order, probability));
  return { mean, standardDeviation: Math.sqrt(variance), quantiles };
}

/**
 * Shortest interval that holds a share of the weight.
 *
 * @param values - the number at each draw
 * @param weights - weight of each draw, 0 or more, together 1
 * @param share - above 0 and below 1
 * @throws InputError for lists of unlike length, for weights that are not 1 together and for a share outside its range
 * @see JCGM 101:2008 (GUM Supplement 1), 5.3.4 and 7.7.4
 * @public
 */
export function shortestInterval(
  values: Float64Array,
  weights: Float64Array,
  share: number,
): readonly [number, number] {
  requireShape({ values, weights, share }, { values: numbers, weights: numbers, share: '' });
  requireWeights(values, weights);
  if (!(share > 0 && share < 1)) refuse(share, 'share', '', 'above 0 and below 1', { above: 0, below: 1 });
  const order = ranked(values, weights);
  const steps = 1000;
  let best: readonly [number, number] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let step = 0; step <= steps; step++) {
    const below = ((1 - share) * step) / steps;
    const [low, high] = [rankedQuantile(order, below), rankedQuantile(order, below + share)];
    if (high - low < best[1] - best[0]) best = [low, high];
  }
  return best;
}
