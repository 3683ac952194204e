import { describe, expect, test } from 'vitest';
import { correctedAkaike } from '../../lib/measure/answer/fit-quality.js';
import { intervalBelief, jointBelief } from '../../lib/measure/fit/prior.js';
import { frameUncertainty } from '../../lib/measure/reading/reading.js';
import { runsProbability } from '../../lib/measure/statistics/runs-test.js';
import { leastSquares } from '../../lib/numeric/least-squares/least-squares.js';
import { huberLoss } from '../../lib/numeric/least-squares/robust-loss.js';
import { checkRow } from '../measure/invented-shock.js';

describe('goodness and beliefs', () => {
  test('Birge 1932: three readings that disagree, as a fit of one number', () => {
    const { inputs, expected } = checkRow<
      { x: number[]; u: number[] },
      { mean: number; u: number; birge: number }
    >('birge');
    const fit = leastSquares({
      residuals: ([value = 0]) => inputs.x.map((x, index) => (value - x) / (inputs.u[index] ?? 1)),
      start: [385],
    });
    expect(fit.parameters[0]).toBeCloseTo(expected.mean, 8);
    expect(1 / fit.jacobian.getColumnVector(0).norm()).toBeCloseTo(expected.u, 8);
    expect(Math.sqrt(fit.cost / 2)).toBeCloseTo(expected.birge, 9);
  });

  test('Swed & Eisenhart 1943: 6 runs or fewer of 10 and 10 signs', () => {
    const even = [2, 2, 4, 4, 4, 4].flatMap((length, run) =>
      Array.from({ length }, () => (run % 2 === 0 ? 1 : -1)),
    );
    expect(even.filter((sign) => sign > 0)).toHaveLength(10);
    expect(Math.abs(runsProbability(even) / checkRow<unknown, number>('runs-10').expected - 1)).toBeLessThan(
      1e-6,
    );
  });

  test('Hurvich & Tsai 1989 on four models of one NIST set', () => {
    type Sums = { residualSumOfSquares: Record<string, number>; n: number };
    const { inputs, expected } = checkRow<Sums, Record<string, number>>('aicc-misra');
    const scores = Object.entries(inputs.residualSumOfSquares).map(([name, sum]) => ({
      name,
      score: correctedAkaike(inputs.n * Math.log(sum / inputs.n), 3, inputs.n),
    }));
    const best = Math.min(...scores.map(({ score }) => score));
    for (const { name, score } of scores) expect(score - best).toBeCloseTo(expected[name] ?? 0, 6);
  });

  test('GUM 4.3.7: a printed interval, and a label beside a ball', () => {
    const uniform = checkRow<{ low: number; high: number }, { mean: number; sd: number }>('prior-uniform');
    const belief = intervalBelief(uniform.inputs.low, uniform.inputs.high);
    expect(belief.mean).toBe(uniform.expected.mean);
    expect(belief.standardDeviation).toBeCloseTo(uniform.expected.sd, 8);
    type Two = { label: [number, number]; ball: [number, number] };
    const joint = checkRow<Two, { nu: number; relativeSd: number }>('prior-combine');
    const of = ([value, relative]: [number, number]) => ({
      mean: Math.log(value),
      standardDeviation: relative,
    });
    const both = jointBelief(of(joint.inputs.label), of(joint.inputs.ball));
    expect(Math.exp(both.mean)).toBeCloseTo(joint.expected.nu, 6);
    expect(both.standardDeviation).toBeCloseTo(joint.expected.relativeSd, 10);
  });

  test('GUM 4.3.7: frames of a film', () => {
    const { inputs, expected } = checkRow<{ fps: number }, number>('frames-240');
    expect(frameUncertainty(inputs.fps) / expected).toBeCloseTo(1, 9);
    expect(frameUncertainty(inputs.fps, 0.008)).toBeCloseTo(Math.hypot(expected, 0.008), 12);
  });

  test('Venables & Ripley: copper in flour by Huber, with the scale fixed', () => {
    const { inputs, expected } = checkRow<{ x: number[] }, { mu: number; s: number; plainMean: number }>(
      'huber-chem',
    );
    const residuals = ([mu = 0]: readonly number[]) => inputs.x.map((x) => (mu - x) / expected.s);
    expect(leastSquares({ residuals, start: [3], loss: huberLoss(1.5) }).parameters[0]).toBeCloseTo(
      expected.mu,
      5,
    );
    expect(leastSquares({ residuals, start: [3] }).parameters[0]).toBeCloseTo(expected.plainMean, 6);
  });
});
