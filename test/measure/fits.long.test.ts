import { describe, expect, test } from 'vitest';
import { dampingAnswers, type ForcePlace } from '../../lib/measure/answer/damping-answer.js';
import { correctedAkaike, fitQuality } from '../../lib/measure/answer/fit-quality.js';
import { exactLaw, usualLawError } from '../../lib/measure/answer/law-error.js';
import { drawnForces, posteriorOf } from '../../lib/measure/answer/posterior.js';
import { profileInterval } from '../../lib/measure/answer/profile.js';
import { fitShock, type ShockFit } from '../../lib/measure/fit/fit-shock.js';
import { chiSquareTail } from '../../lib/numeric/quantiles.js';
import { coordinate, spreadOf } from '../../lib/numeric/sampling/draws.js';
import {
  allEight,
  checkRow,
  problemA,
  problemB,
  type RowObservation,
  type RowValues,
} from './invented-shock.js';

// The shock is invented; what it shows was computed by NumPy, SciPy and emcee, which share no code with the library.

const place: ForcePlace = { position: 0.014, temperature: 295.15 };
const ends = [0.025, 0.5, 0.975];

interface RowA {
  readonly times: readonly number[];
  readonly known: RowValues;
}
interface RowB {
  readonly observations: readonly RowObservation[];
  readonly values: readonly number[];
}
const rowA = checkRow<
  RowA,
  { lnNu: number; F: number; sd: [number, number]; correlation: number; chi2: number; chi2P: number }
>('shock-A-fit');
const rowB = checkRow<
  RowB,
  {
    x: number[];
    sd: number[];
    correlation: number[][];
    chi2: number;
    cost: number;
    force: number[];
    relativeForceSd: number[];
    speeds: number[];
  }
>('shock-B-fit');
const fitA = fitShock(problemA(rowA.inputs.times, rowA.inputs.known));
const fitB = fitShock(problemB(rowB.inputs.observations, rowB.inputs.values));

const correlation = ({ covariance, standardDeviations }: ShockFit, row: number, column: number): number =>
  (covariance[row]?.[column] ?? 0) / ((standardDeviations[row] ?? 1) * (standardDeviations[column] ?? 1));

describe('fit A: two unknowns, no prior', () => {
  test('parameters within 1e-4 of a standard deviation of SciPy, with standard deviations, correlation and chi-square', () => {
    const { expected } = rowA;
    expect(Math.abs((fitA.parameters[0] ?? 0) - expected.lnNu) / expected.sd[0]).toBeLessThan(1e-4);
    expect(Math.abs((fitA.parameters[1] ?? 0) - expected.F) / expected.sd[1]).toBeLessThan(1e-4);
    fitA.standardDeviations.forEach((deviation, index) => {
      expect(Math.abs(deviation / (expected.sd[index] ?? 0) - 1)).toBeLessThan(1e-5);
    });
    expect(correlation(fitA, 0, 1)).toBeCloseTo(expected.correlation, 6);
    expect(fitA.chiSquare).toBeCloseTo(expected.chi2, 6);
    expect(fitA.degreesOfFreedom).toBe(8);
    expect(fitQuality(fitA).scatterChance).toBeCloseTo(expected.chi2P, 6);
    expect(fitQuality(fitA).verdict).toBe('plausible');
  });

  test('profile likelihood: both ends of both', () => {
    const { expected } = checkRow<RowA, { lnNu: [number, number]; F: [number, number] }>('shock-A-profile');
    profileInterval(fitA, 'kinematicViscosity').forEach((end, index) => {
      expect(Math.abs(end - (expected.lnNu[index] ?? 0))).toBeLessThan(1e-5);
    });
    profileInterval(fitA, 'friction').forEach((end, index) => {
      expect(Math.abs(end - (expected.F[index] ?? 0))).toBeLessThan(1e-5);
    });
  });

  test.each([
    ['shock-A-posterior', 'plain'],
    ['shock-A2', 'friction cut at 0'],
  ])('%s: posterior against a grid, %s', (id) => {
    type Posterior = { lnNu: [number, number]; F: [number, number]; nu: number[]; Fq: number[] };
    const row = checkRow<RowA, Posterior & { posterior?: Posterior }>(id);
    const expected = row.expected.posterior ?? row.expected;
    const fit = fitShock(problemA(row.inputs.times, row.inputs.known));
    const drawn = posteriorOf(fit, 32_768);
    expect(drawn.method).toBe('importance');
    const viscosity = spreadOf(coordinate(drawn, 0), drawn.weights, ends);
    const friction = spreadOf(coordinate(drawn, 1), drawn.weights, ends);
    expect(Math.abs(viscosity.mean - expected.lnNu[0]) / expected.lnNu[1]).toBeLessThan(0.05);
    expect(Math.abs(friction.mean - expected.F[0]) / expected.F[1]).toBeLessThan(0.05);
    expect(Math.abs(viscosity.standardDeviation / expected.lnNu[1] - 1)).toBeLessThan(0.03);
    expect(Math.abs(friction.standardDeviation / expected.F[1] - 1)).toBeLessThan(0.03);
    viscosity.quantiles.forEach((value, index) => {
      expect(Math.abs(value - Math.log((expected.nu[index] ?? 0) * 1e-6)) / expected.lnNu[1]).toBeLessThan(
        0.1,
      );
    });
    friction.quantiles.forEach((value, index) => {
      expect(Math.abs(value - (expected.Fq[index] ?? 0)) / expected.F[1]).toBeLessThan(0.1);
    });
  });

  test('with or without friction: the corrected criterion keeps it, and chi-square without it is unlikely', () => {
    const { inputs, expected } = checkRow<
      RowA,
      { withFriction: number; withoutFriction: number; chi2Without: number; nuWithout: number }
    >('shock-D');
    const without = fitShock(problemA(inputs.times, { ...inputs.known, F: 0 }, ['lnNu']));
    expect(correctedAkaike(fitA.chiSquare, 2, 10)).toBeCloseTo(expected.withFriction, 5);
    expect(correctedAkaike(without.chiSquare, 1, 10)).toBeCloseTo(expected.withoutFriction, 5);
    expect(without.chiSquare).toBeCloseTo(expected.chi2Without, 5);
    expect(without.state.kinematicViscosity * 1e6).toBeCloseTo(expected.nuWithout, 3);
    expect(chiSquareTail(without.chiSquare, 9)).toBeCloseTo(
      checkRow<unknown, number>('chi2-tail').expected,
      7,
    );
    expect(fitQuality(without).verdict).toBe('scattered');
  });
});

describe('fit B: eight unknowns with priors', () => {
  const { expected } = rowB;

  test('parameters within 1e-4 of a standard deviation of SciPy, standard deviations, correlations and cost', () => {
    allEight.forEach((name, index) => {
      const deviation = expected.sd[index] ?? 0;
      expect(
        Math.abs((fitB.parameters[index] ?? 0) - (expected.x[index] ?? 0)) / deviation,
        name,
      ).toBeLessThan(1e-4);
      expect(Math.abs((fitB.standardDeviations[index] ?? 0) / deviation - 1), name).toBeLessThan(1e-4);
      allEight.forEach((_, other) => {
        expect(correlation(fitB, index, other)).toBeCloseTo(expected.correlation[index]?.[other] ?? 0, 5);
      });
    });
    expect(fitB.chiSquare).toBeCloseTo(expected.chi2, 6);
    expect(fitB.cost).toBeCloseTo(expected.cost, 6);
    expect(fitB.degreesOfFreedom).toBe(19);
  });

  test('force and its relative standard deviation at three speeds', () => {
    const answers = dampingAnswers(fitB, expected.speeds, place, exactLaw);
    answers.forEach(({ dampingForce, readingDeviation }, index) => {
      expect(Math.abs(dampingForce / (expected.force[index] ?? 0) - 1)).toBeLessThan(1e-6);
      expect(Math.abs(readingDeviation / (expected.relativeForceSd[index] ?? 0) - 1)).toBeLessThan(1e-4);
    });
  });

  test('the band grows beyond the speeds measured, where it says so', () => {
    const [inside, near, far] = dampingAnswers(fitB, [0.015, 0.3, 1], place, usualLawError);
    expect(inside).toMatchObject({ measured: true, lawDeviation: 0.02 });
    expect(near?.measured).toBe(false);
    // The quickest drop of 22 mm took 1.04 s: 0.3 m/s is 14.2 times its speed.
    expect(near?.lawDeviation).toBeCloseTo(0.02 + (0.02 * Math.log(0.3 / (0.022 / 1.04))) / Math.log(3), 10);
    expect(far?.lawDeviation).toBeGreaterThan(near?.lawDeviation ?? 1);
    expect(
      (far?.interval[0] ?? 0) < (far?.dampingForce ?? 0) &&
        (far?.dampingForce ?? 0) < (far?.interval[1] ?? 0),
    ).toBe(true);
  });

  test('posterior of parameters and force against importance sampling and an ensemble walk of other programs', () => {
    type Summary = { mean: number; sd: number; q: number[] };
    const rows = checkRow<
      unknown,
      { importance: Record<string, Summary>; ensemble: Record<string, Summary> }
    >('shock-B-posterior').expected;
    const drawn = posteriorOf(fitB, 32_768);
    expect(drawn.method).toBe('importance');
    expect(drawn.effective).toBeGreaterThan(0.6 * 32_768);
    const found: Record<string, Float64Array> = Object.fromEntries(
      allEight.map((name, index) => [name, coordinate(drawn, index)]),
    );
    for (const speed of ['0.05', '0.3', '1.0'])
      found[`force${speed}`] = drawnForces(fitB, drawn, Number(speed), place);
    for (const [name, values] of Object.entries(found)) {
      const { mean, standardDeviation, quantiles } = spreadOf(values, drawn.weights, ends);
      const row = rows.importance[name];
      if (row === undefined) throw new Error(`no row of ${name}`);
      expect(Math.abs(mean - row.mean) / row.sd, name).toBeLessThan(0.05);
      expect(Math.abs(standardDeviation / row.sd - 1), name).toBeLessThan(0.03);
      quantiles.forEach((value, index) => {
        expect(Math.abs(value - (row.q[index] ?? 0)) / row.sd, name).toBeLessThan(0.1);
      });
    }
  });

  test('few draws stand for many, whichever are drawn', () => {
    for (const seed of [2, 3, 4, 5]) {
      const { method, effective } = posteriorOf(fitB, 8192, seed);
      expect(method).toBe('importance');
      expect(effective / 8192).toBeGreaterThan(0.7);
    }
  });

  test('the same seed draws the same bytes, another seed others', () => {
    const [first, second, other] = [
      posteriorOf(fitB, 500, 7),
      posteriorOf(fitB, 500, 7),
      posteriorOf(fitB, 500, 8),
    ];
    expect(second.values).toEqual(first.values);
    expect(second.weights).toEqual(first.weights);
    expect(other.values).not.toEqual(first.values);
  });
});
