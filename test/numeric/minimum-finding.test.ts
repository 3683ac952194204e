import { describe, expect, it } from 'vitest';
import { bracketedMinimum } from '../../lib/numeric/minimum-finding.js';
import { ConvergenceError } from '../../lib/numeric/root-finding.js';

/**
 * Places of the minima of `Σ ((2i − 5)/(x − i²))²`, i = 1 … 20, between its poles i² and (i + 1)²: Brent, Algorithms for Minimization without
 * Derivatives (1973), ch. 5, as open test suites of minimisers reprint his table; the book itself was not at hand.
 */
const brent: readonly (readonly [place: number, value: number])[] = [
  [3.0229153, 3.6766990169],
  [6.6837536, 1.11185001],
  [11.2387017, 1.2182217637],
  [19.6760001, 2.1621103109],
  [29.8282273, 3.0322905193],
];

function sumOfPoles(x: number): number {
  let sum = 0;
  for (let i = 1; i <= 20; i++) sum += ((2 * i - 5) / (x - i * i)) ** 2;
  return sum;
}

describe('bracketed minimum', () => {
  it.each(brent.map(([place, value], index) => ({ n: index + 1, place, value })))(
    'finds the minimum that Brent gives between $n² and the next square',
    ({ n, place, value }) => {
      const [low, high] = [n * n + 1e-9, (n + 1) ** 2 - 1e-9];
      const found = bracketedMinimum(sumOfPoles, low, low + 0.4 * (high - low), high, 1e-9);
      expect(Math.abs(found - place)).toBeLessThan(1e-7);
      expect(Math.abs(sumOfPoles(found) - value)).toBeLessThan(1e-10);
    },
  );

  it('takes few steps for a parabola, whose vertex a parabola hits', () => {
    let calls = 0;
    const found = bracketedMinimum(
      (x) => {
        calls++;
        return (x - 0.3) ** 2;
      },
      -2,
      0,
      1,
      1e-9,
    );
    expect(Math.abs(found - 0.3)).toBeLessThan(2e-9);
    // Golden sections alone take ln(3/2e-9)/ln 1.618 = 44.
    expect(calls).toBeLessThan(12);
  });

  it('finds a corner, and an end of the bracket', () => {
    expect(Math.abs(bracketedMinimum((x) => Math.abs(x - 1 / 3), 0, 0.9, 1, 1e-9) - 1 / 3)).toBeLessThan(
      2e-9,
    );
    expect(bracketedMinimum((x) => x, 2, 2, 3, 1e-9)).toBeLessThan(2 + 2e-9);
    expect(bracketedMinimum((x) => -x, 2, 2.5, 3, 1e-9)).toBeGreaterThan(3 - 2e-9);
  });

  it('gives up on a tolerance that no number can meet', () => {
    expect(() => bracketedMinimum((x) => (x - 1) ** 2, 0, 0.5, 3, 1e-30)).toThrow(ConvergenceError);
  });
});
