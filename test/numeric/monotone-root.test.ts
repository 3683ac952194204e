import fc from 'fast-check';
import { expect, test } from 'vitest';
import { monotoneRoot } from '../../lib/numeric/monotone-root.js';

test('finds the root of a power above any start, with an upper end unknown', () =>
  fc.assert(
    fc.property(
      fc.double({ min: 0.3, max: 1.5, noNaN: true }),
      fc.double({ min: -3, max: 3, noNaN: true }),
      (power, decades) => {
        const root = 10 ** decades;
        const f = (x: number) => ({
          value: (x / root) ** power - 1,
          slope: (power / root) * (x / root) ** (power - 1),
        });
        expect(monotoneRoot(f, 1, 0, Number.POSITIVE_INFINITY, 'a power').root / root).toBeCloseTo(1, 9);
      },
    ),
  ));
