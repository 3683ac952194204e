import { describe, expect, test } from 'vitest';
import { grubbsCritical, oddValue } from '../../lib/measure/statistics/grubbs.js';
import { repeatabilityOf } from '../../lib/measure/statistics/repeatability.js';
import { checkRow } from '../measure/invented-shock.js';

describe("Grubbs' test", () => {
  test.each([
    ['grubbs-5-one', 1],
    ['grubbs-5-two', 2],
  ] as const)('%s: the table of Grubbs & Beck 1972 and of ISO 5725-2', (id, sided) => {
    const { inputs, expected } = checkRow<{ n: number[] }, number[]>(id);
    inputs.n.forEach((count, index) => {
      expect(Math.abs(grubbsCritical(count, 0.05, sided) - (expected[index] ?? 0))).toBeLessThan(0.0015);
    });
  });

  test('NIST/SEMATECH e-Handbook 1.3.5.17.1: 245.57 is odd', () => {
    const { inputs, expected } = checkRow<{ x: number[] }, { G: number; outlier: number }>('grubbs-example');
    const odd = oddValue(inputs.x);
    expect(odd?.value).toBe(expected.outlier);
    expect(odd?.distance).toBeCloseTo(expected.G, 6);
  });

  test('nothing is odd among even values, nor among four', () => {
    expect(oddValue([2.18, 2.31, 2.29, 2.12, 2.14])).toBeUndefined();
    expect(oddValue([1, 1.01, 0.99, 50])).toBeUndefined();
  });
});

test('NIST SiRstv: scatter within and between groups by ISO 5725-2', () => {
  type Groups = { groups: number[][] };
  const { inputs, expected } = checkRow<Groups, { between: number; within: number; F: number }>(
    'nist-SiRstv',
  );
  const found = repeatabilityOf(inputs.groups);
  expect(found.meanSquareBetween / expected.between).toBeCloseTo(1, 8);
  expect(found.meanSquareWithin / expected.within).toBeCloseTo(1, 8);
  expect(found.ratio / expected.F).toBeCloseTo(1, 8);
  const iso = checkRow<Groups, { sr: number; sL: number; sR: number }>('repeatability-SiRstv').expected;
  expect(found.repeatability).toBeCloseTo(iso.sr, 9);
  expect(found.betweenPersons).toBeCloseTo(iso.sL, 9);
  expect(found.reproducibility).toBeCloseTo(iso.sR, 9);
});
