import fc from 'fast-check';
import { expect, test } from 'vitest';
import { powerRoot } from '../../lib/numeric/power-root.js';

test('a power is a straight line in logarithms: its root takes two steps from anywhere', () =>
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 3, noNaN: true }),
      fc.double({ min: -9, max: 9, noNaN: true }),
      (power, decades) => {
        const wanted = 10 ** decades;
        const f = (x: number, out: Float64Array) => {
          out[0] = power * Math.log(x / wanted);
          out[1] = power;
        };
        const { root, iterations } = powerRoot(f, 1, 'a power');
        expect(root / wanted).toBeCloseTo(1, 9);
        expect(iterations).toBeLessThanOrEqual(3);
      },
    ),
  ));

test('a nearly flat power that turns into a square is found from both sides', () =>
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 0.5, noNaN: true }),
      fc.double({ min: -6, max: 6, noNaN: true }),
      fc.double({ min: -6, max: 6, noNaN: true }),
      (power, decades, from) => {
        const value = (x: number) => x ** power + x ** 2;
        const wanted = 10 ** decades;
        const f = (x: number, out: Float64Array) => {
          out[0] = Math.log(value(x) / value(wanted));
          out[1] = (power * x ** power + 2 * x ** 2) / value(x);
        };
        expect(powerRoot(f, 10 ** from, 'a bent power').root / wanted).toBeCloseTo(1, 8);
      },
    ),
  ));

test('what never rises above 0, or is no number, has no root', () => {
  const never = (value: number) => (_: number, out: Float64Array) => {
    out[0] = value;
    out[1] = 1;
  };
  expect(() => powerRoot(never(-1), 1, 'a root')).toThrow('a root: no root found');
  expect(() => powerRoot(never(Number.NaN), 1, 'a root')).toThrow('a root: no root found');
});
