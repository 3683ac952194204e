import { Matrix } from 'ml-matrix';
import { expect, test } from 'vitest';
import { adaptiveMetropolis } from '../../lib/numeric/sampling/adaptive-metropolis.js';
import { coordinate, shortestInterval, spreadOf } from '../../lib/numeric/sampling/draws.js';
import { importanceSample, type Target } from '../../lib/numeric/sampling/importance-sampling.js';

const normal = (dimensions: number): Target => ({
  logDensity: (place) => place.reduce((sum, x) => sum - (x * x) / 2, 0),
  mode: Array.from({ length: dimensions }, () => 0),
  covariance: Matrix.eye(dimensions, dimensions),
});

test('a walk in one normal number with the best step says as much as 0.23 of its draws', () => {
  // Gelman, Roberts & Gilks, Bayesian Statistics 5 (1996) 599, table 1: efficiency 0.233 at the step 2.4 (from memory).
  const { effective, weights } = adaptiveMetropolis(normal(1), 40_000, 5);
  expect(weights).toHaveLength(32_000);
  expect(Math.abs(effective / weights.length / 0.233 - 1)).toBeLessThan(0.12);
});

test('the slowest direction of a walk counts', () => {
  const one = adaptiveMetropolis(normal(1), 20_000, 5);
  const four = adaptiveMetropolis(normal(4), 20_000, 5);
  expect(four.effective).toBeLessThan(one.effective / 2);
});

test('a walk that is never let go says as much as one draw', () => {
  const stuck: Target = { ...normal(2), logDensity: ([x]) => (x === 0 ? 0 : Number.NEGATIVE_INFINITY) };
  const draws = adaptiveMetropolis(stuck, 2000, 5);
  expect(draws.effective).toBe(1);
  expect(new Set(draws.values)).toEqual(new Set([0]));
});

test('a draw where the model has no value weighs nothing: half of a normal distribution has the mean √(2/π)', () => {
  const half: Target = { ...normal(1), logDensity: ([x = 0]) => (x < 0 ? Number.NaN : -(x * x) / 2) };
  const draws = importanceSample(half, 40_000, 5);
  const values = coordinate(draws, 0);
  const outside = draws.weights.filter((_, index) => (values[index] ?? 0) < 0);
  expect(outside.length).toBeGreaterThan(15_000);
  expect(Math.max(...outside)).toBe(0);
  expect(spreadOf(values, draws.weights, []).mean).toBeCloseTo(Math.sqrt(2 / Math.PI), 2);
});

test('quantiles of weighted draws lie on lines between the middles of their weights', () => {
  // Values 1, 2, 4 with weights 0.2, 0.5, 0.3: middles at 0.1, 0.45, 0.85.
  const values = Float64Array.of(4, 1, 2);
  const weights = Float64Array.of(0.3, 0.2, 0.5);
  const { mean, standardDeviation, quantiles } = spreadOf(
    values,
    weights,
    [0, 0.1, 0.275, 0.45, 0.65, 0.85, 1],
  );
  expect(mean).toBeCloseTo(2.4, 12);
  expect(standardDeviation).toBeCloseTo(Math.sqrt(0.2 * 1.96 + 0.5 * 0.16 + 0.3 * 2.56), 12);
  for (const [index, wanted] of [1, 1, 1.5, 2, 3, 4, 4].entries()) {
    expect(quantiles[index]).toBeCloseTo(wanted, 12);
  }
});

test('draws and weights that do not belong together are refused by name, and so is a share or a coordinate that there is not', () => {
  const [values, weights] = [Float64Array.of(1, 2, 3, 4), Float64Array.of(0.25, 0.25, 0.25, 0.25)];
  expect(shortestInterval(values, weights, 0.5)[0]).toBeLessThan(2.1);
  for (const wrong of [
    Float64Array.of(0.5, 0.5),
    Float64Array.of(0, 0, 0, 0),
    Float64Array.of(0.5, 0.5, 0.5, -0.5),
  ]) {
    expect(() => shortestInterval(values, wrong, 0.5)).toThrow('weights');
    expect(() => spreadOf(values, wrong, [])).toThrow('weights');
  }
  for (const share of [0, 1, -0.5, 2])
    expect(() => shortestInterval(values, weights, share)).toThrow('share must be above 0 and below 1');
  expect(() => spreadOf(values, weights, [0.5, 1.5])).toThrow('probabilities[1] must be 0 to 1');
  expect(() => spreadOf(Float64Array.of(), Float64Array.of(), [])).toThrow('values.length');
  const draws = {
    dimensions: 2,
    values: Float64Array.of(1, 2, 3, 4),
    weights: Float64Array.of(0.5, 0.5),
    effective: 2,
  };
  expect(coordinate(draws, 1)).toEqual(Float64Array.of(2, 4));
  for (const index of [-1, 2, 0.5]) expect(() => coordinate(draws, index)).toThrow('index must be');
});
