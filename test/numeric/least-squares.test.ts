import { Matrix } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import { differenceJacobian } from '../../lib/numeric/least-squares/difference-jacobian.js';
import { FitError } from '../../lib/numeric/least-squares/fit-error.js';
import { leastSquares } from '../../lib/numeric/least-squares/least-squares.js';
import { linearLeastSquares } from '../../lib/numeric/least-squares/linear-least-squares.js';
import { parameterCovariance } from '../../lib/numeric/least-squares/parameter-covariance.js';
import { huberLoss } from '../../lib/numeric/least-squares/robust-loss.js';

/** What a call throws. */
function thrown(call: () => unknown): unknown {
  try {
    call();
  } catch (error) {
    return error;
  }
  return undefined;
}

describe('a fit with lowest values', () => {
  // Points 3, 2, 1 at 0, 1, 2: the line is 3 − x; with a slope of 0 or more the best is the mean, 2.
  const line = ([height = 0, slope = 0]: readonly number[]) =>
    [3, 2, 1].map((value, x) => height + slope * x - value);

  test('finds the line where no bound is in the way', () => {
    const [height, slope] = leastSquares({ residuals: line, start: [0, 0], least: [-5, -5] }).parameters;
    expect(height).toBeCloseTo(3, 10);
    expect(slope).toBeCloseTo(-1, 10);
  });

  test('ends on the bound, with the others where they are best beside it', () => {
    const { parameters, cost } = leastSquares({ residuals: line, start: [0, 1], least: [-5, 0] });
    expect(parameters[0]).toBeCloseTo(2, 10);
    expect(parameters[1]).toBe(0);
    expect(cost).toBeCloseTo(2, 10);
  });

  test('leaves a bound that it starts on, where the way down leads off it', () => {
    const found = leastSquares({ residuals: ([x = 0]) => [x - 4], start: [1], least: [1] });
    expect(found.parameters[0]).toBeCloseTo(4, 10);
  });

  test('stays where every parameter is pushed against its bound', () => {
    const found = leastSquares({
      residuals: ([x = 0, y = 0]) => [x + 1, y + 2],
      start: [0, 0],
      least: [0, 0],
    });
    expect(found.parameters).toEqual([0, 0]);
    expect(found.cost).toBe(5);
  });
});

test('a loss that holds for the first residuals leaves the squares of the others', () => {
  // At rest |r| = 3 and 1 cost 2·1·3 − 1 = 5 and 1 by Huber with threshold 1; 9 and 1 as squares.
  const residuals = () => [3, 1, 3];
  const costs = [3, 2, 1, 0].map(
    (lossCount) => leastSquares({ residuals, start: [], loss: huberLoss(1), lossCount }).cost,
  );
  expect(costs).toEqual([11, 15, 15, 19]);
  expect(leastSquares({ residuals, start: [], loss: huberLoss(1) }).cost).toBe(11);
});

describe('what ends without an answer says why', () => {
  const fault = (call: () => unknown) => {
    const error = thrown(call);
    return error instanceof FitError ? [error.fault, error.parameters, error.indices] : error;
  };

  test('no value at the start', () => {
    const residuals = ([x = 0]: readonly number[]) => [Math.log(x)];
    expect(fault(() => leastSquares({ residuals, start: [-1] }))).toEqual(['not-finite', [-1], []]);
  });

  test('no slope on either side', () => {
    const residuals = ([x = 0]: readonly number[]) => [x === 2 ? 1 : Number.NaN];
    expect(fault(() => leastSquares({ residuals, start: [2] }))).toEqual(['not-finite', [2], []]);
  });

  test('a parameter that nothing depends on', () => {
    const residuals = () => [1, 2];
    expect(fault(() => leastSquares({ residuals, start: [7] }))).toEqual(['rank-deficient', [7], [0]]);
  });
});

describe('slopes by differences', () => {
  test('of a model that ends at the place itself, from the side where it has values', () => {
    const right = ([x = 0]: readonly number[]) => [x < 0 ? Number.NaN : 3 * x + 1];
    const left = ([x = 0]: readonly number[]) => [x > 0 ? Number.NaN : 1 - 7 * x];
    expect(differenceJacobian(right, [0], [1], [1])[0]?.[0]).toBeCloseTo(3, 8);
    expect(differenceJacobian(left, [0], [1], [1])[0]?.[0]).toBeCloseTo(-7, 8);
  });

  test('are exact for a parabola, whatever the size of the parameter', () => {
    for (const x of [1e-6, 1, 1e6]) {
      const slope = differenceJacobian(([y = 0]) => [y * y], [x], [0], [x * x])[0]?.[0] ?? 0;
      expect(slope / (2 * x)).toBeCloseTo(1, 9);
    }
  });
});

describe('covariance of the parameters', () => {
  test('is the inverse of JᵀJ', () => {
    // JᵀJ = [[3, 3], [3, 5]] has the determinant 6.
    const covariance = parameterCovariance(
      new Matrix([
        [1, 0],
        [1, 1],
        [1, 2],
      ]),
      [],
    ).to2DArray();
    const wanted = [
      [5 / 6, -1 / 2],
      [-1 / 2, 1 / 2],
    ];
    covariance.forEach((row, at) => {
      for (const [column, value] of row.entries()) expect(value).toBeCloseTo(wanted[at]?.[column] ?? 0, 12);
    });
  });

  const untold = (jacobian: number[][]) =>
    (thrown(() => parameterCovariance(new Matrix(jacobian), [])) as FitError).indices;

  test('names a parameter that no reading depends on', () => {
    expect(
      untold([
        [1, 0],
        [2, 0],
      ]),
    ).toEqual([1]);
  });

  test('names those that only stand together, and not the one that is told', () => {
    expect(
      untold([
        [1, 0, 2],
        [0, 1, 0],
        [1, 1, 2],
      ]),
    ).toEqual([0, 2]);
    expect(untold([[1, 1]])).toEqual([0, 1]);
  });
});

test('a line needs more readings than coefficients, one row a reading', () => {
  const rows = [
    [1, 0],
    [1, 1],
    [1, 2],
  ];
  expect(linearLeastSquares(rows, [1, 3, 5]).coefficients[1]).toBeCloseTo(2, 12);
  for (const call of [
    () => linearLeastSquares(rows.slice(0, 2), [1, 3]),
    () => linearLeastSquares(rows, [1, 3, 5, 7]),
  ]) {
    expect(call).toThrow(InputError);
    expect(call).toThrow('values must be more than 2');
  }
});
