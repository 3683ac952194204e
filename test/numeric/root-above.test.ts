import { describe, expect, test } from 'vitest';
import { bracketedRoot, ConvergenceError, rootAbove } from '../../lib/numeric/root-finding.js';

describe('the root above 0 of a rising function', () => {
  test.each([1e-9, 0.5, 1, 1.4, 7, 1e6])('is found from a first guess of %d', (start) => {
    expect(rootAbove((x) => x * x - 2, start, 1e9, 'root').root).toBeCloseTo(Math.SQRT2, 14);
  });

  test('is the first guess where that is it', () => {
    expect(rootAbove((x) => x - 3, 3, 10, 'root')).toMatchObject({ root: 3, iterations: 0 });
  });

  test('is refused where the function stays below 0 up to the limit, or is no number', () => {
    const seen: number[] = [];
    const low = (x: number): number => {
      seen.push(x);
      return -1;
    };
    expect(() => rootAbove(low, 1, 8, 'speed')).toThrow(new ConvergenceError('speed', 1, 8));
    expect(seen).toEqual([1, 2, 4, 8]);
    expect(() => rootAbove(() => Number.NaN, 1, 8, 'speed')).toThrow(ConvergenceError);
  });
});

describe('the root between two points', () => {
  test('may be either of them', () => {
    const line = (x: number) => x - 3;
    expect(bracketedRoot(line, 3, 10, 'speed')).toEqual({ root: 3, iterations: 0, residual: 0 });
    expect(bracketedRoot(line, -4, 3, 'speed')).toEqual({ root: 3, iterations: 0, residual: 0 });
  });

  test('is refused with its bracket where both have the same sign, or one no value', () => {
    for (const low of [4, 1]) {
      const call = () => bracketedRoot((x) => x - 3, low, low + 1, 'speed');
      expect(call).toThrow(new ConvergenceError('speed', low, low + 1));
    }
    expect(() => bracketedRoot(Math.log, -1, 2, 'speed')).toThrow('no root found between -1 and 2');
  });

  test('is found where the product of the ends is too small for a number', () => {
    expect(bracketedRoot((x) => 1e-300 * (x - 3), 0, 4, 'speed').root).toBeCloseTo(3, 14);
  });
});
