import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pairsApart } from '../../lib/decisions/spread/pairs-apart.js';

test('of all pairs, counted one by one, as many are below', () => {
  const force = fc.double({ min: 0.5, max: 90, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(force, { minLength: 2, maxLength: 40 }),
      fc.constantFrom(0.1, 0.5, 0.9, 1),
      (forces, part) => {
        const apart = forces.flatMap((one, place) =>
          forces.slice(place + 1).map((other) => Math.max(one / other, other / one) - 1),
        );
        const found = pairsApart(forces, part);
        const below = (limit: number): number => apart.filter((each) => each <= limit).length / apart.length;
        expect(below(found * (1 + 1e-9) + 1e-12)).toBeGreaterThanOrEqual(part - 1e-12);
        expect(below(found * (1 - 1e-9) - 1e-12)).toBeLessThan(part);
      },
    ),
  );
});

// Two numbers that are even between 0 and 1 are less than t apart in 2t − t² of all pairs (triangular distribution, any textbook of statistics), so that half of them are below
// 1 − √½ and nine of ten below 1 − √0.1.
test.each([
  [0.5, 1 - Math.SQRT1_2],
  [0.9, 1 - Math.sqrt(0.1)],
])('forces even in their logarithm: %d of the pairs within the factor of the triangle', (part, apart) => {
  const forces = Array.from({ length: 2001 }, (_, index) => -Math.exp(index / 2000));
  expect(pairsApart(forces, part)).toBeCloseTo(Math.exp(apart) - 1, 2);
});

test('equal forces are not apart', () => {
  expect(pairsApart([3, 3, 3], 0.9)).toBe(0);
});
