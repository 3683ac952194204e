import { Matrix } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import { normalQuantile } from '../../lib/numeric/normal-distribution.js';
import { studentQuantile } from '../../lib/numeric/quantiles.js';
import { samplePoints } from '../../lib/numeric/samples.js';
import { adaptiveMetropolis } from '../../lib/numeric/sampling/adaptive-metropolis.js';
import { curvedProposal } from '../../lib/numeric/sampling/curved-proposal.js';
import { coordinate, type Draws, shortestInterval, spreadOf } from '../../lib/numeric/sampling/draws.js';
import { importanceSample, type Target } from '../../lib/numeric/sampling/importance-sampling.js';
import { checkRow } from './invented-shock.js';

const tail95 = [0.025, 0.975];

/** Mean of a coordinate within four of its own errors, by the effective number that the sampler claims. */
function requireMean(draws: Draws, index: number, mean: number, deviation: number): void {
  const found = spreadOf(coordinate(draws, index), draws.weights, []).mean;
  expect(Math.abs(found - mean) / deviation).toBeLessThan(4 / Math.sqrt(draws.effective));
}

describe('samplers against closed forms', () => {
  const gauss: Target = {
    logDensity: ([x = 0, y = 0]) => {
      const [a, b] = [x - 1, (y + 2) / 3];
      return -(a * a - 2 * 0.95 * a * b + b * b) / (2 * (1 - 0.95 ** 2));
    },
    mode: [1, -2],
    covariance: new Matrix([
      [1, 2.85],
      [2.85, 9],
    ]),
  };

  test.each([
    ['importance', () => importanceSample(gauss, 20_000, 3)],
    ['walk', () => adaptiveMetropolis(gauss, 40_000, 3)],
    [
      'walk from a wrong guess',
      () => adaptiveMetropolis({ ...gauss, mode: [3, 3], covariance: Matrix.eye(2, 2, 0.01) }, 40_000, 3),
    ],
  ])('two normal numbers with correlation 0.95, by %s', (_, draw) => {
    const draws = draw();
    expect(draws.effective).toBeGreaterThan(1000);
    requireMean(draws, 0, 1, 1);
    requireMean(draws, 1, -2, 3);
    const [first, second] = [coordinate(draws, 0), coordinate(draws, 1)];
    expect(spreadOf(second, draws.weights, []).standardDeviation).toBeCloseTo(3, 0);
    const product = first.map((value, index) => (value - 1) * ((second[index] ?? 0) + 2));
    expect(Math.abs(spreadOf(product, draws.weights, []).mean / 3 - 0.95)).toBeLessThan(0.06);
  });

  test('twisted normal of Haario, Saksman & Tamminen 1999: a walk of 300 000 steps finds the variances', () => {
    const { inputs, expected } = checkRow<{ b: number }, { mean: number[]; variance: number[] }>(
      'sample-banana',
    );
    const draws = adaptiveMetropolis(
      {
        logDensity: ([x = 0, y = 0]) => -(x * x) / 200 - (y - inputs.b * x * x + 100 * inputs.b) ** 2 / 2,
        mode: [0, -100 * inputs.b],
        covariance: new Matrix([
          [100, 0],
          [0, 1],
        ]),
      },
      300_000,
      5,
    );
    [0, 1].forEach((index) => {
      const deviation = Math.sqrt(expected.variance[index] ?? 0);
      requireMean(draws, index, expected.mean[index] ?? 0, deviation);
      expect(
        Math.abs(spreadOf(coordinate(draws, index), draws.weights, []).standardDeviation / deviation - 1),
      ).toBeLessThan(0.1);
    });
  });

  test('the same twist as residuals: a proposal that bends draws it nearly without loss', () => {
    const residuals = ([x = 0, y = 0]: readonly number[]): readonly number[] => [
      x / 10,
      (y - 0.03 * x * x + 3) / 0.05,
    ];
    const target: Target = {
      logDensity: (place) => -residuals(place).reduce((sum, value) => sum + value * value, 0) / 2,
      mode: [0, -3],
      covariance: new Matrix([
        [100, 0],
        [0, 0.0025],
      ]),
    };
    const bent = importanceSample(target, 10_000, 1, curvedProposal(residuals, target.mode, [10, 1]));
    const straight = importanceSample(target, 10_000, 1);
    expect(bent.effective / 10_000).toBeGreaterThan(0.9);
    expect(straight.effective / 10_000).toBeLessThan(0.02);
    requireMean(bent, 0, 0, 10);
    requireMean(bent, 1, 0, Math.sqrt(2) * 3);
  });

  test('friction near zero: normal 0.02 ± 0.05 N, cut at 0', () => {
    const { inputs, expected } = checkRow<
      { mean: number; sd: number },
      { mean: number; sd: number; upper95: number }
    >('sample-cut');
    const draws = importanceSample(
      {
        logDensity: ([friction = 0]) =>
          friction < 0 ? Number.NEGATIVE_INFINITY : -(((friction - inputs.mean) / inputs.sd) ** 2) / 2,
        mode: [inputs.mean],
        covariance: new Matrix([[inputs.sd ** 2]]),
      },
      200_000,
      9,
    );
    const found = spreadOf(coordinate(draws, 0), draws.weights, [0.95]);
    expect(found.mean / expected.mean).toBeCloseTo(1, 2);
    expect(found.standardDeviation / expected.sd).toBeCloseTo(1, 2);
    expect((found.quantiles[0] ?? 0) / expected.upper95).toBeCloseTo(1, 2);
  });
});

describe('examples of JCGM 101:2008, GUM Supplement 1', () => {
  /** A number of each of many draws of independent inputs, spread evenly, all of the same weight. */
  const simulated = (
    count: number,
    inputs: readonly ((uniform: number) => number)[],
    model: (values: readonly number[]) => number,
  ) => {
    const points = samplePoints('low-discrepancy', inputs.length, 101);
    const uniform = new Float64Array(inputs.length);
    const values = Float64Array.from({ length: count }, (_, draw) => {
      points.point(draw, uniform);
      return model(inputs.map((input, index) => input(uniform[index] ?? 0.5)));
    });
    return { values, weights: new Float64Array(count).fill(1 / count) };
  };
  const normal = (mean: number, deviation: number) => (uniform: number) =>
    mean + deviation * normalQuantile(uniform);
  const even = (low: number, high: number) => (uniform: number) => low + (high - low) * uniform;
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

  test.each([
    ['s1-normal', normal(0, 1)],
    ['s1-rectangular', even(-Math.sqrt(3), Math.sqrt(3))],
  ])('%s, 9.2: four inputs added', (id, input) => {
    const { expected } = checkRow<unknown, { u: number; low: number; high: number }>(id);
    const { values, weights } = simulated(524_288, [input, input, input, input], sum);
    const found = spreadOf(values, weights, tail95);
    // Printed to three digits.
    expect(Math.abs(found.standardDeviation - expected.u)).toBeLessThan(0.005);
    expect(Math.abs((found.quantiles[0] ?? 0) - expected.low)).toBeLessThan(0.015);
    expect(Math.abs((found.quantiles[1] ?? 0) - expected.high)).toBeLessThan(0.015);
  });

  test('9.3, calibration of a mass: first order is 29 % low, the shortest interval 1.083 to 1.383 mg', () => {
    const { expected } = checkRow<unknown, { mean: number; u: number; low: number; high: number }>('s1-mass');
    const { values, weights } = simulated(
      65_536,
      [normal(1e5, 0.05), normal(1.234, 0.02), even(1.1, 1.3), even(7000, 9000), even(7950, 8050)],
      ([mass = 0, small = 0, air = 0, weight = 1, reference = 1]) =>
        (mass + small) * (1 + (air - 1.2) * (1 / weight - 1 / reference)) - 1e5,
    );
    const found = spreadOf(values, weights, []);
    expect(Math.abs(found.mean - expected.mean)).toBeLessThan(0.0005);
    expect(Math.abs(found.standardDeviation - expected.u)).toBeLessThan(0.0005);
    const [low, high] = shortestInterval(values, weights, 0.95);
    expect(Math.abs(low - expected.low)).toBeLessThan(0.004);
    expect(Math.abs(high - expected.high)).toBeLessThan(0.004);
  });

  test('9.5, the gauge block of H.1: 36 nm, where first order says 32', () => {
    const { expected } = checkRow<unknown, { mean: number; u: number }>('s1-gauge');
    // A table of each quantile, since a million of Student's would take a minute.
    const tables = new Map<number, Float64Array>();
    const student = (mean: number, deviation: number, freedom: number) => {
      const table =
        tables.get(freedom) ??
        Float64Array.from({ length: 4096 }, (_, index) => studentQuantile((index + 0.5) / 4096, freedom));
      tables.set(freedom, table);
      return (uniform: number) => mean + deviation * (table[Math.floor(uniform * 4096)] ?? 0);
    };
    const arcsine = (half: number) => (uniform: number) => half * Math.sin(Math.PI * (uniform - 0.5));
    const half = even(-1, 1);
    const { values, weights } = simulated(
      65_536,
      [
        student(50_000_623, 25, 18),
        student(215, 6, 24),
        student(0, 4, 5),
        student(0, 7, 8),
        even(9.5e-6, 13.5e-6),
        normal(-0.1, 0.2),
        arcsine(0.5),
        half,
        half,
        half,
        half,
      ],
      ([ls = 0, d = 0, d1 = 0, d2 = 0, alpha = 0, theta = 0, cycle = 0, a = 0, b = 0, c = 0, e = 0]) => {
        // Limits that are not exact themselves: a width from 0.9e-6 to 1.1e-6, and from 0.025 to 0.075.
        const dAlpha = (1e-6 + 0.1e-6 * a) * b;
        const dTheta = (0.05 + 0.025 * c) * e;
        return ls + d + d1 + d2 - ls * (dAlpha * (theta + cycle) + alpha * dTheta);
      },
    );
    const found = spreadOf(values, weights, []);
    expect(Math.round(found.mean)).toBe(expected.mean);
    expect(Math.abs(found.standardDeviation - expected.u)).toBeLessThan(0.5);
  });

  test('GUM H.1.7: with the second order, the uncertainty of the gauge block is 34 nm', () => {
    const normals = [normal(50_000_623, 25), normal(215, 9.7)];
    const { values, weights } = simulated(
      65_536,
      [...normals, even(-1e-6, 1e-6), normal(-0.1, 0.41), even(9.5e-6, 13.5e-6), even(-0.05, 0.05)],
      ([ls = 0, d = 0, da = 0, theta = 0, as = 0, dt = 0]) => ls + d - ls * (da * theta + as * dt),
    );
    expect(Math.round(spreadOf(values, weights, []).standardDeviation)).toBe(34);
  });
});
