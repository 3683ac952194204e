import { describe, expect, test } from 'vitest';
import { simpson } from '../../lib/numeric/quadrature.js';

describe("Simpson's rule", () => {
  test('is exact for a cubic, in either direction', () => {
    const cubic = (x: number): number => 4 * x ** 3 - 2 * x + 5;
    // x⁴ − x² + 5 x from 1 to 3.
    expect(simpson(cubic, 1, 3, 2)).toBeCloseTo(82, 12);
    expect(simpson(cubic, 3, 1, 2)).toBeCloseTo(-82, 12);
  });

  test('gives ln 2 with the error of its composite form, −h⁴/180 (b − a) f⁗ (Abramowitz & Stegun, Eq. 25.4.6)', () => {
    const error = simpson((x) => 1 / x, 1, 2, 64) - Math.LN2;
    // The mean of f⁗ = 24/x⁵ from 1 to 2 is 6 (1 − 1/16).
    expect(error / (((1 / 64) ** 4 / 180) * 6 * (15 / 16))).toBeCloseTo(1, 2);
  });
});
