import { describe, expect, test } from 'vitest';
import { FitError } from '../../lib/numeric/least-squares/fit-error.js';
import { leastSquares } from '../../lib/numeric/least-squares/least-squares.js';
import { linearLeastSquares } from '../../lib/numeric/least-squares/linear-least-squares.js';
import { parameterCovariance } from '../../lib/numeric/least-squares/parameter-covariance.js';
import { agreeingDigits, longley, type NonlinearSet, nonlinearSets, norris } from './nist-regression.js';

// NIST Statistical Reference Datasets, https://www.itl.nist.gov/div898/strd/

const residualsOf =
  ({ model, x, y }: NonlinearSet) =>
  (b: readonly number[]): readonly number[] =>
    x.map((value, index) => model(b, value) - (y[index] ?? Number.NaN));

function digits(
  set: NonlinearSet,
  start: readonly number[],
): { readonly parameters: number; readonly deviations: number } {
  const fit = leastSquares({ residuals: residualsOf(set), start });
  const covariance = parameterCovariance(fit.jacobian, fit.parameters);
  const deviations = covariance
    .diagonal()
    .map((variance) => Math.sqrt((variance * fit.cost) / set.degreesOfFreedom));
  return {
    parameters: agreeingDigits(fit.parameters, set.parameters),
    deviations: agreeingDigits(deviations, set.standardDeviations),
  };
}

describe('NIST nonlinear regression', () => {
  test('the data are those of NIST: the certified parameters leave the certified sum of squares', () => {
    expect(nonlinearSets).toHaveLength(26);
    for (const set of nonlinearSets.filter(({ name }) => name !== 'Lanczos1')) {
      const sum = residualsOf(set)(set.parameters).reduce((total, residual) => total + residual ** 2, 0);
      expect(Math.abs(sum / set.residualSumOfSquares - 1), set.name).toBeLessThan(1e-9);
    }
  });

  test.each(nonlinearSets)('$name from start 2: parameters and standard deviations to 6 digits', (set) => {
    const found = digits(set, set.starts[1]);
    expect(found.parameters).toBeGreaterThanOrEqual(6);
    // The residuals of Lanczos1 are rounding of the 13th digit, and so are its standard deviations.
    if (set.name !== 'Lanczos1') expect(found.deviations).toBeGreaterThanOrEqual(6);
  });

  test('24 of 26 reach 6 digits from start 1, and the others end in an error, not in an answer', () => {
    const outcomes = nonlinearSets.map((set): string => {
      try {
        return digits(set, set.starts[0]).parameters >= 6 ? 'reached' : `${set.name} wrong`;
      } catch (error) {
        return error instanceof FitError ? `${set.name} ${error.fault}` : String(error);
      }
    });
    expect(outcomes.filter((outcome) => outcome !== 'reached').sort()).toEqual([
      'BoxBOD rank-deficient',
      'MGH10 stalled',
    ]);
  });
});

describe('NIST linear regression', () => {
  test('Norris to 11 digits', () => {
    const fit = linearLeastSquares(
      norris.x.map((x) => [1, x]),
      norris.y,
    );
    expect(agreeingDigits(fit.coefficients, norris.parameters)).toBeGreaterThanOrEqual(11);
    expect(agreeingDigits(fit.standardDeviations, norris.standardDeviations)).toBeGreaterThanOrEqual(11);
    expect(agreeingDigits([fit.residualSumOfSquares], [norris.residualSumOfSquares])).toBeGreaterThanOrEqual(
      11,
    );
    expect(fit.degreesOfFreedom).toBe(norris.degreesOfFreedom);
  });

  test('Longley to 9 digits', () => {
    const fit = linearLeastSquares(
      longley.x.map((x) => [1, ...x]),
      longley.y,
    );
    expect(agreeingDigits(fit.coefficients, longley.parameters)).toBeGreaterThanOrEqual(9);
    expect(agreeingDigits(fit.standardDeviations, longley.standardDeviations)).toBeGreaterThanOrEqual(9);
    expect(
      agreeingDigits([fit.residualStandardDeviation], [longley.residualStandardDeviation]),
    ).toBeGreaterThanOrEqual(9);
  });

  test('terms that depend on each other are refused', () => {
    const attempt = () =>
      linearLeastSquares(
        norris.x.map((x) => [1, x, 2 * x + 1]),
        norris.y,
      );
    expect(attempt).toThrow(FitError);
    expect(attempt).toThrow(/parameter 1 from 2/u);
  });
});
