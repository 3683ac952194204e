import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deviationAt } from '../../lib/decisions/spread/uncertain.js';
import { samplePoints } from '../../lib/numeric/samples.js';
import { sobolSequence } from '../../lib/numeric/sobol-sequence.js';

const anySeed = fc.integer({ min: -(2 ** 31), max: 2 ** 31 - 1 });

describe('sample points', () => {
  it('a scrambled sequence keeps one point in each of 2^m equal slices of each axis', () => {
    fc.assert(
      fc.property(
        anySeed,
        fc.integer({ min: 1, max: 41 }),
        fc.integer({ min: 1, max: 8 }),
        (seed, dimensions, m) => {
          const sequence = sobolSequence(dimensions, seed);
          const point = new Float64Array(dimensions);
          const filled = Array.from({ length: dimensions }, () => new Set<number>());
          for (let index = 0; index < 2 ** m; index++) {
            sequence.point(index, point);
            for (const [axis, value] of point.entries()) filled[axis]?.add(Math.floor(value * 2 ** m));
          }
          return filled.every((slices) => slices.size === 2 ** m);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('the first two axes keep the (0, m, 2)-net property: one point in every box of area 2^-m', () => {
    const sequence = sobolSequence(2, 99);
    const point = new Float64Array(2);
    for (let rows = 0; rows <= 6; rows++) {
      const boxes = new Set<string>();
      for (let index = 0; index < 64; index++) {
        sequence.point(index, point);
        const [x = 0, y = 0] = point;
        boxes.add(`${Math.floor(x * 2 ** rows)} ${Math.floor(y * 2 ** (6 - rows))}`);
      }
      expect(boxes.size).toBe(64);
    }
  });

  it('any index gives the same point whether or not those before it were asked for', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('random' as const, 'low-discrepancy' as const),
        anySeed,
        fc.integer({ min: 0, max: 5000 }),
        (sampling, seed, index) => {
          const [walked, jumped] = [new Float64Array(3), new Float64Array(3)];
          const walk = samplePoints(sampling, 3, seed);
          for (let i = Math.max(0, index - 1100); i <= index; i++) walk.point(i, walked);
          samplePoints(sampling, 3, seed).point(index, jumped);
          expect(jumped).toEqual(walked);
          expect(Math.min(...jumped)).toBeGreaterThan(0);
          expect(Math.max(...jumped)).toBeLessThan(1);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('drawn deviations have the mean and the standard deviation that were asked for', () => {
    const samples = samplePoints('low-discrepancy', 1, 3);
    const point = new Float64Array(1);
    const count = 2 ** 14;
    let [normal, uniform] = [0, 0];
    for (let i = 0; i < count; i++) {
      samples.point(i, point);
      const [p = 0] = point;
      normal += deviationAt({ kind: 'normal', standardDeviation: 3 }, p) ** 2;
      uniform += deviationAt({ kind: 'uniform', halfWidth: 3 }, p) ** 2;
    }
    // Variance of a normal cut at 4 standard deviations: 9 (1 − 2·4 φ(4)/(1 − 2 Φ(−4))) = 8.9904; of a uniform: h²/3.
    expect(normal / count).toBeCloseTo(8.9904, 2);
    expect(uniform / count).toBeCloseTo(3, 3);
    expect(deviationAt({ kind: 'exact' }, 0.9)).toBe(0);
  });
});
