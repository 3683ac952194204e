import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutOf, type NeededSets, needsOf, serves, withCut } from '../../lib/decisions/order/order-cuts.js';
import { smallestSetByProgram } from '../../lib/decisions/order/order-program.js';
import { smallestSetByTrying } from '../../lib/decisions/order/smallest-order.js';
import { finish } from '../../lib/decisions/search/search.js';

const count = 7;
const bottle = fc.integer({ min: 0, max: count - 1 });
const pair = fc.tuple(bottle, bottle).filter(([a, b]) => a !== b);
const way = fc.oneof({ weight: 1, arbitrary: fc.tuple(bottle) }, { weight: 4, arbitrary: pair });
/** Demands of up to 8 ways each, a bottle alone or two as a blend. */
const anyNeeded: fc.Arbitrary<NeededSets> = fc.array(fc.array(way, { minLength: 1, maxLength: 8 }), {
  minLength: 1,
  maxLength: 10,
});
const anyPrices = fc.array(fc.integer({ min: 0, max: 20 }), { minLength: count, maxLength: count });

const everySet = Array.from({ length: 2 ** count }, (_, mask) =>
  Array.from({ length: count }, (_bottle, place) => place).filter((place) => (mask >> place) & 1),
);

/** Whether a set holds a way for every demand, straight from the lists. */
const isComplete = (needed: NeededSets, set: readonly number[]): boolean =>
  needed.every((ways) => ways.some((one) => one.every((part) => set.includes(part))));

const priceOf = (set: readonly number[], prices: readonly number[]): number =>
  set.reduce((sum, place) => sum + (prices[place] ?? 0), 0);

/** Size and price of the best set, by trying every one of them. */
function bestByForce(needed: NeededSets, prices: readonly number[]): readonly [size: number, price: number] {
  const complete = everySet.filter((set) => isComplete(needed, set));
  const size = Math.min(...complete.map((set) => set.length));
  const smallest = complete.filter((set) => set.length === size);
  return [size, Math.min(...smallest.map((set) => priceOf(set, prices)))];
}

describe('the smallest order', () => {
  it('is that of every set tried, in size and price, by both solvers', async () => {
    await fc.assert(
      fc.asyncProperty(anyNeeded, anyPrices, async (needed, prices) => {
        const expected = bestByForce(needed, prices);
        const tried = finish(smallestSetByTrying(needed, prices));
        const solved = await smallestSetByProgram(needed, prices);
        for (const set of [tried?.bottles ?? [], solved?.bottles ?? []]) {
          expect(isComplete(needed, set)).toBe(true);
          expect([set.length, priceOf(set, prices)]).toEqual(expected);
        }
      }),
      { numRuns: 20 },
    );
  });

  it('is none where a demand has no way', async () => {
    const prices = [1, 1];
    expect(await smallestSetByProgram([[[0]], []], prices)).toBe(undefined);
    expect(finish(smallestSetByTrying([[[0]], []], prices))).toBe(undefined);
  });

  it('of three equal demands in a ring takes two bottles, which half a bottle of each would seem to serve', async () => {
    const ring: NeededSets = [
      [[0], [1]],
      [[1], [2]],
      [[2], [0]],
    ];
    expect(await smallestSetByProgram(ring, [3, 1, 2])).toEqual({ bottles: [1, 2] });
  });

  it('stops before a solve when asked to', async () => {
    const stop = AbortSignal.abort(new Error('enough'));
    await expect(smallestSetByProgram([[[0]]], [1], { signal: stop })).rejects.toThrow('enough');
  });
});

describe('a cut', () => {
  const order = fc.shuffledSubarray(
    Array.from({ length: count }, (_, place) => place),
    { minLength: count },
  );

  it('leaves out the set it was made for, and meets every set that serves the demand', () => {
    fc.assert(
      fc.property(anyNeeded, fc.shuffledSubarray([0, 1, 2, 3, 4, 5, 6]), order, (needed, set, tries) => {
        for (const [place, need] of needsOf(needed, count).entries()) {
          const ways = [needed[place] ?? []];
          expect(serves(need, set)).toBe(isComplete(ways, set));
          if (serves(need, set)) continue;
          const cut = cutOf(need, set, tries);
          expect(cut.length).toBeGreaterThan(0);
          expect(set.filter((one) => cut.includes(one))).toEqual([]);
          for (const other of everySet)
            if (isComplete(ways, other)) expect(other.some((one) => cut.includes(one))).toBe(true);
        }
      }),
    );
  });

  it('joins others without those that it implies, unless another implies it', () => {
    const cuts = [
      [1, 2, 3],
      [2, 5],
    ];
    expect(withCut(cuts, [1, 3])).toEqual([
      [2, 5],
      [1, 3],
    ]);
    expect(withCut(cuts, [2, 4, 5])).toEqual(cuts);
    expect(withCut(cuts, [6])).toEqual([...cuts, [6]]);
  });
});
