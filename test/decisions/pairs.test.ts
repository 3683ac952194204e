import { describe, expect, it } from 'vitest';
import { drilledShock, timedShock } from '../../lib/decisions/pair/measured-shock.js';
import { bestPairing, comparedShocks, rankedPairs } from '../../lib/decisions/pair/pairs.js';
import { fluid, shockWith } from './demo.js';

const shock = (name: string, damping: number, relativeUncertainty = 0.01) => ({
  name,
  damping,
  relativeUncertainty,
});

describe('pairs', () => {
  it('two equal shocks differ by more than two of their joint standard deviations in 4.55 % of cases', () => {
    // Abramowitz & Stegun Table 26.1: 2 (1 − P(2)) = 0.0455003.
    const joint = Math.SQRT2 * 0.01;
    const pair = comparedShocks(shock('a', 3), shock('b', 3), Math.expm1(2 * joint));
    expect(pair.unlikeProbability).toBeCloseTo(0.0455003, 7);
    expect(pair.ratio).toBe(1);
  });

  it('a shock on the limit is over it in half of all cases', () => {
    const pair = comparedShocks(shock('a', 1), shock('b', 1.05, 1e-4), 0.05);
    expect(pair.unlikeProbability).toBeCloseTo(0.5, 6);
    const reversed = comparedShocks(shock('b', 1.05, 1e-4), shock('a', 1), 0.05);
    expect(reversed.unlikeProbability).toBeCloseTo(pair.unlikeProbability, 12);
  });

  it('measured without doubt a pair is alike or it is not', () => {
    expect(comparedShocks(shock('a', 1, 0), shock('b', 1.04, 0), 0.05).unlikeProbability).toBe(0);
    expect(comparedShocks(shock('a', 1, 0), shock('b', 1.06, 0), 0.05).unlikeProbability).toBe(1);
  });

  it('ranks every two and pairs all as a list by hand says', () => {
    const shocks = [shock('a', 1), shock('b', 1.1), shock('c', 1.01), shock('d', 1.12)];
    const ranked = rankedPairs(shocks, 0.05);
    expect(ranked.length).toBe(6);
    expect([ranked[0]?.first, ranked[0]?.second]).toEqual(['a', 'c']);
    const { pairs, left } = bestPairing(shocks, 0.05);
    expect(pairs.map(({ first, second }) => `${first}${second}`).sort()).toEqual(['ac', 'bd']);
    expect(left).toBe(undefined);
  });

  it('of pairs that are as likely unlike, the one that differs less comes first', () => {
    // Without doubt all three are beyond 5 %; by hand a and b are 0.18 apart in the logarithm, a and c 0.51, b and c 0.69.
    const sure = [shock('a', 1, 0), shock('b', 1.2, 0), shock('c', 0.6, 0)];
    const names = rankedPairs(sure, 0.05).map(({ first, second }) => `${first}${second}`);
    expect(names).toEqual(['ab', 'ac', 'bc']);
  });

  it('gives up the very best pair where that leaves a bad one', () => {
    // b and c are nearest, but then a and d are 12 % apart.
    const shocks = [shock('a', 1), shock('b', 1.05), shock('c', 1.06), shock('d', 1.12)];
    const names = bestPairing(shocks, 0.05).pairs.map(({ first, second }) => `${first}${second}`);
    expect(names.sort()).toEqual(['ab', 'cd']);
  });

  it('leaves the odd one out of three', () => {
    expect(bestPairing([shock('a', 1), shock('b', 2), shock('c', 1.01)], 0.05).left).toBe('b');
  });

  it('takes the mean of the times, and no less doubt than the hand has', () => {
    const steady = timedShock('a', [4, 4, 4, 4], 0.15);
    expect(steady.damping).toBe(4);
    expect(steady.relativeUncertainty).toBeCloseTo(0.15 / 2 / 4, 12);
    // Scatter of 3 and 5 is √2 s, over √2 for two times, over 4 s.
    expect(timedShock('a', [3, 5], 0.15).relativeUncertainty).toBeCloseTo(0.25, 12);
  });

  it('carries the uncertainty of a hole to the damping: four times it in slow flow through long holes', () => {
    const long = shockWith(4, 0.6e-3, 6e-3);
    const tight = { ...long, piston: { ...long.piston, diameter: 11.99e-3 } };
    const drilled = drilledShock('a', tight, fluid(350), -1e-5, 0.6e-6);
    // Poiseuille d⁻⁴ less the ends, which go with d⁻³ and are 3πd/16/L = 6 % of it, and what leaks at the rim.
    expect(drilled.relativeUncertainty / 1e-3).toBeGreaterThan(3.7);
    expect(drilled.relativeUncertainty / 1e-3).toBeLessThan(4);
    expect(() => drilledShock('a', tight, fluid(350), 0, 1e-6)).toThrow(
      'size of speed must be greater than 0',
    );
  });

  it('refuses what cannot be paired', () => {
    expect(() => timedShock('a', [], 0.1)).toThrow('times must be 1 or more, got 0');
    expect(() => timedShock('a', [1, -1], 0.1)).toThrow('times[1] must be greater than 0 s');
    expect(() => bestPairing([shock('a', 1)], 0.05)).toThrow('shocks must be 2 to 10, got 1');
    expect(() => rankedPairs([shock('a', 1), shock('a', 2)], 0.05)).toThrow(
      'shocks must be shocks of different names, got a',
    );
    expect(() => comparedShocks(shock('a', 1), shock('b', 1), 0)).toThrow('limit must be greater than 0');
  });
});

// By hand: 2.0, 2.2 and 2.4 s scatter by √((0.04 + 0 + 0.04)/2) = 0.2 s, of which √3 takes 0.1155 s, 5.249 % of 2.2 s.
it('the uncertainty of a timed shock is its scatter, but never less than the hand', () => {
  expect(timedShock('a', [2, 2.2, 2.4], 0.1).relativeUncertainty).toBeCloseTo(0.2 / Math.sqrt(3) / 2.2, 12);
  expect(timedShock('a', [2, 2.2, 2.4], 0.3).relativeUncertainty).toBeCloseTo(0.3 / Math.sqrt(3) / 2.2, 12);
});
