import { beforeAll, describe, expect, test } from 'vitest';
import { posteriorOf } from '../../lib/measure/answer/posterior.js';
import { fitShock } from '../../lib/measure/fit/fit-shock.js';
import { coordinate, spreadOf } from '../../lib/numeric/sampling/draws.js';
import { toolRuns } from '../project/tools.js';
import {
  allEight,
  checkRow,
  problemA,
  problemB,
  type RowObservation,
  type RowValues,
} from './invented-shock.js';
import { debianPython, type OutsideFits, outsideFits } from './outside-programs.js';

const available = toolRuns(debianPython, ['-c', 'import scipy, emcee']);

describe.skipIf(!available)('SciPy and emcee (skips where python3-scipy or python3-emcee is absent)', () => {
  const rowA = checkRow<{ times: number[]; known: RowValues }, unknown>('shock-A-fit').inputs;
  const rowB = checkRow<{ observations: RowObservation[]; values: number[] }, unknown>('shock-B-fit').inputs;
  const fitA = fitShock(problemA(rowA.times, rowA.known));
  const fitB = fitShock(problemB(rowB.observations, rowB.values));
  let outside: OutsideFits;

  beforeAll(() => {
    outside = outsideFits(3000);
  });

  test('fits A and B agree within 1e-4 of a standard deviation', () => {
    for (const [fit, other] of [
      [fitA, outside.A],
      [fitB, outside.B],
    ] as const) {
      fit.parameters.forEach((value, index) => {
        const deviation = other.sd[index] ?? 0;
        expect(Math.abs(value - (other.x[index] ?? 0)) / deviation).toBeLessThan(1e-4);
        expect(Math.abs((fit.standardDeviations[index] ?? 0) / deviation - 1)).toBeLessThan(1e-6);
      });
    }
    expect(fitB.cost).toBeCloseTo(outside.B.cost, 6);
  });

  test("the posterior agrees with an ensemble walk, within the walk's own error", () => {
    const { walk } = outside;
    if (walk === undefined) throw new Error('no walk');
    // A thousand independent draws know a mean to 0.03 and an end to 0.09 standard deviations.
    expect(walk.effective).toBeGreaterThan(800);
    const error = 1 / Math.sqrt(walk.effective);
    const drawn = posteriorOf(fitB, 32_768);
    allEight.forEach((name, index) => {
      const { mean, standardDeviation, quantiles } = spreadOf(
        coordinate(drawn, index),
        drawn.weights,
        [0.025, 0.975],
      );
      const deviation = walk.sd[index] ?? 0;
      expect(Math.abs(mean - (walk.mean[index] ?? 0)) / deviation, name).toBeLessThan(4 * error);
      expect(Math.abs(standardDeviation / deviation - 1), name).toBeLessThan(4 * error);
      quantiles.forEach((value, end) => {
        expect(Math.abs(value - (walk.ends[end]?.[index] ?? 0)) / deviation, name).toBeLessThan(11 * error);
      });
    });
  });
});
