import { describe, expect, test } from 'vitest';
import { grubbsCritical, oddValue } from '../../lib/measure/statistics/grubbs.js';
import { repeatabilityOf } from '../../lib/measure/statistics/repeatability.js';
import { runsProbability } from '../../lib/measure/statistics/runs-test.js';

describe('runs of signs', () => {
  // By writing out all orders. One plus and two minuses: + − −, − + −, − − +, with 2, 3 and 2 runs.
  test('one plus among two minuses', () => {
    expect(runsProbability([1, -1, -1])).toBeCloseTo(2 / 3, 12);
    expect(runsProbability([-1, 1, -1])).toBeCloseTo(1, 12);
  });

  /** Number of runs of a row of signs, written as bits. */
  const runsOf = (bits: number, length: number) => {
    let runs = 1;
    for (let at = 1; at < length; at++) if (((bits >> at) & 1) !== ((bits >> (at - 1)) & 1)) runs++;
    return runs;
  };
  const onesOf = (bits: number) => bits.toString(2).replaceAll('0', '').length;

  test('every order of up to nine signs, by counting all orders of the same signs', () => {
    for (const length of [2, 5, 9]) {
      const all = Array.from({ length: 2 ** length }, (_, bits) => bits);
      for (let bits = 0; bits < 2 ** length; bits += 7) {
        const alike = all.filter((other) => onesOf(other) === onesOf(bits));
        const few = alike.filter((other) => runsOf(other, length) <= runsOf(bits, length));
        const signs = Array.from({ length }, (_, at) => ((bits >> at) & 1 ? 1 : -1));
        expect(runsProbability(signs)).toBeCloseTo(few.length / alike.length, 10);
      }
    }
  });

  test('signs all alike say nothing', () => {
    expect(runsProbability([1, 1, 1])).toBe(1);
    expect(runsProbability([-1, -1])).toBe(1);
  });
});

describe('a repeat that is odd', () => {
  test('none where all are the same, or there are fewer than five', () => {
    expect(oddValue([2, 2, 2, 2, 2])).toBeUndefined();
    expect(oddValue([2, 2.1, 2, 9])).toBeUndefined();
    expect(oddValue([2, 2.1, 2, 2.05, 9])?.index).toBe(4);
  });

  test('no distance is critical for fewer than three values', () => {
    expect(() => grubbsCritical(2)).toThrow('count must be a whole number of 3 or more');
    expect(() => grubbsCritical(4.5)).toThrow('count must be a whole number of 3 or more');
  });
});

describe('repeats of several persons', () => {
  test.each([
    ['one person', [[1, 2]]],
    ['one repeat', [[1], [2]]],
    [
      'not as many each',
      [
        [1, 2],
        [1, 2, 3],
      ],
    ],
    ['nobody', []],
  ])('%s is refused', (_, groups) => {
    expect(() => repeatabilityOf(groups)).toThrow('groups must be 2 or more groups of 2 or more values');
  });

  test('by hand: 1, 3 and 5, 7 scatter by √2 within and more between', () => {
    // Means 2 and 6: between 2·(4 + 4)/1 = 16, within (1 + 1 + 1 + 1)/2 = 2; between persons (16 − 2)/2 = 7.
    expect(
      repeatabilityOf([
        [1, 3],
        [5, 7],
      ]),
    ).toEqual({
      repeatability: Math.SQRT2,
      betweenPersons: Math.sqrt(7),
      reproducibility: 3,
      meanSquareBetween: 16,
      meanSquareWithin: 2,
      ratio: 8,
    });
  });
});
