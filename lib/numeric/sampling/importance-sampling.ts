import { CholeskyDecomposition, type Matrix } from 'ml-matrix';
import { normalQuantile } from '../normal-distribution.js';
import { samplePoints } from '../samples.js';
import type { Draws } from './draws.js';

/** A distribution to draw from, known up to a factor. */
export interface Target {
  /** Logarithm of the density up to a constant; minus infinity where there is none. */
  readonly logDensity: (parameters: readonly number[]) => number;
  /** Where it is highest. */
  readonly mode: readonly number[];
  /** Covariance about there, from the curvature. */
  readonly covariance: Matrix;
}

/**
 * Where a draw of independent standard normal numbers is to be looked at: near to the target's own shape, and a map of determinant constant
 * everywhere.
 */
export type Proposal = (normal: Float64Array) => readonly number[];

/** The normal distribution of the target's covariance. */
export function normalProposal({ mode, covariance }: Target): Proposal {
  const root = new CholeskyDecomposition(covariance).lowerTriangularMatrix;
  return (normal) =>
    mode.map((value, row) => {
      let sum = value;
      for (let column = 0; column <= row; column++) sum += root.get(row, column) * normal[column]!;
      return sum;
    });
}

/** Draws by importance, with the largest weight that one of them has. */
export interface WeightedDraws extends Draws {
  readonly largestWeight: number;
}

/** The draws are wider than the proposal by this, so that no draw stands for too much. */
const widening = 1.15;

/**
 * Draws from a distribution near to a normal one: drawn from a wider proposal about the mode and weighted by the ratio of the densities.
 *
 * @param target - what to draw from
 * @param count - draws, 1 or more
 * @param seed - any whole number; the same seed gives the same draws
 * @param proposal - {@link normalProposal} by default
 * @see importance sampling: Robert & Casella, Monte Carlo Statistical Methods, ch. 3; effective number after Kong 1992 (from memory)
 */
export function importanceSample(
  target: Target,
  count: number,
  seed: number,
  proposal: Proposal = normalProposal(target),
): WeightedDraws {
  const dimensions = target.mode.length;
  const points = samplePoints('random', dimensions, seed);
  const values = new Float64Array(count * dimensions);
  const weights = new Float64Array(count);
  const uniform = new Float64Array(dimensions);
  const normal = new Float64Array(dimensions);
  let highest = Number.NEGATIVE_INFINITY;
  for (let draw = 0; draw < count; draw++) {
    points.point(draw, uniform);
    let square = 0;
    for (let index = 0; index < dimensions; index++) {
      const z = normalQuantile(uniform[index]!);
      normal[index] = widening * z;
      square += z * z;
    }
    const parameters = proposal(normal);
    values.set(parameters, draw * dimensions);
    const logWeight = target.logDensity(parameters) + square / 2;
    weights[draw] = Number.isNaN(logWeight) ? Number.NEGATIVE_INFINITY : logWeight;
    highest = Math.max(highest, weights[draw]!);
  }
  let sum = 0;
  for (let draw = 0; draw < count; draw++) {
    weights[draw] = Math.exp(weights[draw]! - highest);
    sum += weights[draw]!;
  }
  let [squares, largestWeight] = [0, 0];
  for (let draw = 0; draw < count; draw++) {
    const weight = weights[draw]! / sum;
    weights[draw] = weight;
    squares += weight * weight;
    largestWeight = Math.max(largestWeight, weight);
  }
  return { dimensions, values, weights, effective: 1 / squares, largestWeight };
}
