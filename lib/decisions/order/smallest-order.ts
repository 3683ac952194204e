import type { Search } from '../search/search.js';

/** The bottles bought, and how large a set had to be. */
export interface SmallestSet {
  /** Places of the bottles, rising. */
  readonly bottles: readonly number[];
}

/**
 * The smallest set of bottles that serves every demand, and of those the cheapest, by trying all sets of 1, 2, 3 … bottles: that no smaller set
 * was found is the proof. For a shop list of dozens and an answer of up to about 6 bottles.
 *
 * @param needed - from `neededSets`: for each demand the bottles or pairs that serve it
 * @param prices - of each bottle; all 0 where unknown
 * @returns the set, or `undefined` where even all bottles together leave a demand
 */
export function* smallestSetByTrying(
  needed: readonly (readonly (readonly number[])[])[],
  prices: readonly number[],
): Search<SmallestSet | undefined> {
  if (needed.some((sets) => sets.length === 0)) return undefined;
  if (needed.length === 0) return { bottles: [] };
  const served = servedMasks(needed, prices.length);
  const all = (1n << BigInt(needed.length)) - 1n;
  for (let size = 1; size <= prices.length; size++) {
    let best: readonly number[] | undefined;
    let bestPrice = Number.POSITIVE_INFINITY;
    for (let first = 0; first < prices.length; first++) {
      for (const set of completeSets(served, all, size, [first], served.alone[first] ?? 0n)) {
        const price = set.reduce((sum, bottle) => sum + (prices[bottle] ?? 0), 0);
        if (price < bestPrice) [best, bestPrice] = [set, price];
      }
      yield (size - 1 + first / prices.length) / prices.length;
    }
    if (best !== undefined) return { bottles: best };
  }
  return undefined;
}

interface ServedMasks {
  /** Demands that each bottle serves alone. */
  readonly alone: readonly bigint[];
  /** Demands that each pair serves as a blend. */
  readonly blended: readonly (readonly bigint[])[];
}

function servedMasks(needed: readonly (readonly (readonly number[])[])[], count: number): ServedMasks {
  const alone = Array.from({ length: count }, () => 0n);
  const blended = Array.from({ length: count }, () => Array.from({ length: count }, () => 0n));
  needed.forEach((sets, demand) => {
    const bit = 1n << BigInt(demand);
    for (const [first, second] of sets) {
      if (first === undefined) continue;
      if (second === undefined) alone[first] = (alone[first] ?? 0n) | bit;
      else {
        for (const [a, b] of [
          [first, second],
          [second, first],
        ] as const) {
          const row = blended[a];
          if (row !== undefined) row[b] = (row[b] ?? 0n) | bit;
        }
      }
    }
  });
  return { alone, blended };
}

/** Sets of a size that begin with the bottles chosen and serve everything. */
function* completeSets(
  served: ServedMasks,
  all: bigint,
  size: number,
  chosen: readonly number[],
  done: bigint,
): Generator<readonly number[]> {
  if (chosen.length === size) {
    if (done === all) yield chosen;
    return;
  }
  const last = chosen.at(-1) ?? -1;
  for (let next = last + 1; next <= served.alone.length - (size - chosen.length); next++) {
    let more = done | (served.alone[next] ?? 0n);
    for (const bottle of chosen) more |= served.blended[bottle]?.[next] ?? 0n;
    yield* completeSets(served, all, size, [...chosen, next], more);
  }
}
