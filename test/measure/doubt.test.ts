import { Matrix } from 'ml-matrix';
import { expect, test } from 'vitest';
import { afterReadings, doubtOf, forceVariance } from '../../lib/measure/answer/doubt.js';

// By hand: with P = diag(4, 9) and a reading of the sum, h = (1, 1) and told = 1 + 13 = 14, the variance of the first falls to 4 − 16/14, that of the second to 9 − 81/14.
test('a reading of a sum takes from both, and leaves them against each other', () => {
  const doubt = doubtOf(
    new Matrix([
      [1 / 4, 0],
      [0, 1 / 9],
    ]),
  );
  const left = afterReadings(doubt, new Matrix([[1, 1]]));
  const covariance = left.mmul(left.transpose());
  expect(covariance.get(0, 0)).toBeCloseTo(4 - 16 / 14, 12);
  expect(covariance.get(1, 1)).toBeCloseTo(9 - 81 / 14, 12);
  expect(covariance.get(0, 1)).toBeCloseTo(-36 / 14, 12);
  // Mean of the variances of the first alone and of the difference: d = P₁ + P₂ − 2 P₁₂.
  const difference = 4 - 16 / 14 + 9 - 81 / 14 + 72 / 14;
  expect(
    forceVariance(
      left,
      new Matrix([
        [1, 0],
        [1, -1],
      ]),
    ),
  ).toBeCloseTo((4 - 16 / 14 + difference) / 2, 12);
});

test('a second reading of the same takes no doubt back, however sure both are', () => {
  const gradients = new Matrix([[1, 0.3, -0.2]]);
  const prior = [1, 1e-3, 10];
  for (const sureness of [1e3, 1e6, 1e9]) {
    let doubt = doubtOf(Matrix.diag(prior.map((size) => size ** -2)));
    let before = forceVariance(doubt, gradients);
    for (const share of [1, 0.999, 1, 1.001]) {
      doubt = afterReadings(doubt, new Matrix([[sureness, 0.4 * sureness, share * 0.01 * sureness]]));
      const after = forceVariance(doubt, gradients);
      expect(after).toBeLessThanOrEqual(before);
      before = after;
    }
  }
});
