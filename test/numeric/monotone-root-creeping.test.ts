import { expect, test } from 'vitest';
import { monotoneRoot } from '../../lib/numeric/monotone-root.js';

// By hand: x^n = c at c^(1/n). Newton alone takes a twentieth off each time, so that ten powers of ten are 450 steps.
test.each([
  [20, 1e-200, 1e-10],
  [20, 1e-20, 0.1],
  [3, 8, 2],
  [1, 1e-30, 1e-30],
])('the root of x^%d = %d is found however far it is below the start', (power, wanted, root) => {
  const f = (x: number) => ({ value: x ** power - wanted, slope: power * x ** (power - 1) });
  for (const start of [400, 1])
    expect(monotoneRoot(f, start, 0, Number.POSITIVE_INFINITY, 'x').root / root).toBeCloseTo(1, 8);
});
