import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blendViscosity } from '../../lib/fluid/blend/blend.js';
import { blendEnds } from '../../lib/fluid/blend/blend-ends.js';
import { anyPair, anyTemperature, between } from './fluid-arbitraries.js';

describe('the ends of a blend, bound once', () => {
  test('are those of all rules, for every pair, labels at their middle', () => {
    fc.assert(
      fc.property(anyPair, anyTemperature, between(0.01, 0.99), (pair, temperature, share) => {
        const { rules } = blendViscosity({ pair, temperature }, share);
        const { low, high } = blendEnds(pair, temperature)(share);
        expect(low).toBe(Math.min(...Object.values(rules)));
        expect(high).toBe(Math.max(...Object.values(rules)));
      }),
    );
  });
});
