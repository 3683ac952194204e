import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { normalQuantile } from '../normal-distribution.js';
import { samplePoints } from '../samples.js';
import type { Draws } from './draws.js';
import type { Target } from './importance-sampling.js';

/** Share of the walk thrown away while it finds its place and its step. */
const warmUp = 0.2;
/** Steps between two updates of the proposal. */
const updateEvery = 200;

/** Covariance of the places seen, updated one by one. */
interface Running {
  count: number;
  readonly mean: Float64Array;
  readonly products: Matrix;
}

function include(running: Running, place: readonly number[]): void {
  running.count++;
  const before = place.map((value, index) => value - running.mean[index]!);
  for (let index = 0; index < before.length; index++) {
    running.mean[index] = running.mean[index]! + before[index]! / running.count;
  }
  for (let row = 0; row < before.length; row++) {
    const after = place[row]! - running.mean[row]!;
    for (let column = 0; column < before.length; column++) {
      running.products.set(row, column, running.products.get(row, column) + after * before[column]!);
    }
  }
}

/** Lower triangle of the proposal: the covariance seen so far times 2.38² over the dimensions. */
function proposalRoot(covariance: Matrix): Matrix {
  const scale = 2.38 / Math.sqrt(covariance.rows);
  const steadied = covariance.clone();
  for (let row = 0; row < covariance.rows; row++) {
    steadied.set(row, row, covariance.get(row, row) * (1 + 1e-9));
    // Rounding leaves the two halves a digit apart.
    for (let column = 0; column < row; column++) steadied.set(column, row, covariance.get(row, column));
  }
  return new CholeskyDecomposition(steadied).lowerTriangularMatrix.mul(scale);
}

/**
 * Draws from a distribution of any shape by a random walk whose steps learn the covariance.
 *
 * @param target - what to draw from; the walk starts at the mode
 * @param steps - of the walk, 1000 or more; the first fifth is thrown away
 * @param seed - any whole number; the same seed gives the same draws
 * @see Haario, Saksman & Tamminen, Bernoulli 7 (2001) 223 (from memory)
 */
export function adaptiveMetropolis(target: Target, steps: number, seed: number): Draws {
  const dimensions = target.mode.length;
  const points = samplePoints('random', dimensions + 1, seed);
  const uniform = new Float64Array(dimensions + 1);
  const first = Math.floor(steps * warmUp);
  const values = new Float64Array((steps - first) * dimensions);
  const running: Running = {
    count: 0,
    mean: new Float64Array(dimensions),
    products: Matrix.zeros(dimensions, dimensions),
  };
  let root = proposalRoot(target.covariance);
  let place = [...target.mode];
  let density = target.logDensity(place);
  for (let step = 0; step < steps; step++) {
    points.point(step, uniform);
    const tried = place.map((value, row) => {
      let sum = value;
      for (let column = 0; column <= row; column++) {
        sum += root.get(row, column) * normalQuantile(uniform[column]!);
      }
      return sum;
    });
    const triedDensity = target.logDensity(tried);
    if (Math.log(uniform[dimensions]!) < triedDensity - density) [place, density] = [tried, triedDensity];
    include(running, place);
    if (step >= first) values.set(place, (step - first) * dimensions);
    if (running.count >= 10 * dimensions && step % updateEvery === updateEvery - 1) {
      const covariance = Matrix.div(running.products, running.count - 1);
      // A walk that has not moved yet in some direction keeps its first proposal.
      if (covariance.diagonal().every((variance) => variance > 0)) root = proposalRoot(covariance);
    }
  }
  const count = steps - first;
  const weights = new Float64Array(count).fill(1 / count);
  return { dimensions, values, weights, effective: count / correlationLength(values, dimensions) };
}

/**
 * Longest correlation length of the coordinates of a walk, by the sum of its correlations up to five such lengths.
 *
 * @see Sokal, Monte Carlo Methods in Statistical Mechanics, 1997 (from memory)
 */
function correlationLength(values: Float64Array, dimensions: number): number {
  const count = values.length / dimensions;
  let longest = 1;
  for (let index = 0; index < dimensions; index++) {
    const series = new Float64Array(count);
    let mean = 0;
    for (let step = 0; step < count; step++) mean += values[step * dimensions + index]! / count;
    for (let step = 0; step < count; step++) series[step] = values[step * dimensions + index]! - mean;
    const correlation = (lag: number): number => {
      let sum = 0;
      for (let step = 0; step + lag < count; step++) sum += series[step]! * series[step + lag]!;
      return sum;
    };
    const variance = correlation(0);
    let length = 1;
    for (let lag = 1; lag < count / 10 && lag < 5 * length; lag++) {
      length += (2 * correlation(lag)) / variance;
    }
    longest = Math.max(longest, variance > 0 ? length : count);
  }
  return longest;
}
