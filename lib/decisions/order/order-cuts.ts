/** For each demand the bottles or pairs that serve it, from `neededSets`. */
export type NeededSets = readonly (readonly (readonly number[])[])[];

/** What serves one demand, by place of the bottle. */
export interface Need {
  /** 1 where the bottle serves alone. */
  readonly alone: Uint8Array;
  /** 1 where the two bottles serve as a blend. */
  readonly blended: readonly Uint8Array[];
}

/** The demands as tables to look things up in. */
export function needsOf(needed: NeededSets, count: number): readonly Need[] {
  return needed.map((sets) => {
    const alone = new Uint8Array(count);
    const blended = Array.from({ length: count }, () => new Uint8Array(count));
    for (const [first, second] of sets) {
      if (first === undefined) continue;
      if (second === undefined) {
        alone[first] = 1;
        continue;
      }
      for (const [a, b] of [
        [first, second],
        [second, first],
      ] as const)
        blended[a]?.fill(1, b, b + 1);
    }
    return { alone, blended };
  });
}

/** Whether a bottle serves the demand, alone or blended with one of a set. */
function servesWith({ alone, blended }: Need, bottle: number, set: readonly number[]): boolean {
  return alone[bottle] === 1 || set.some((other) => blended[bottle]?.[other] === 1);
}

/** Whether a set of bottles serves a demand. */
export function serves(need: Need, set: readonly number[]): boolean {
  return set.some((bottle) => servesWith(need, bottle, set));
}

/**
 * Bottles of which every complete set holds at least one: those outside a largest set that leaves the demand, found by adding bottles to a
 * set that leaves it.
 *
 * @param need - the demand
 * @param set - bottles that leave it
 * @param order - all bottles, in the order in which they are tried
 */
export function cutOf(need: Need, set: readonly number[], order: readonly number[]): readonly number[] {
  const leaving = [...set];
  const cut: number[] = [];
  for (const bottle of order) {
    if (set.includes(bottle)) continue;
    if (servesWith(need, bottle, leaving)) cut.push(bottle);
    else leaving.push(bottle);
  }
  return cut.sort((a, b) => a - b);
}

/** Cuts with one more, without those that another implies. */
export function withCut(
  cuts: readonly (readonly number[])[],
  cut: readonly number[],
): readonly (readonly number[])[] {
  if (cuts.some((other) => isWithin(other, cut))) return cuts;
  return [...cuts.filter((other) => !isWithin(cut, other)), cut];
}

function isWithin(one: readonly number[], other: readonly number[]): boolean {
  return one.every((bottle) => other.includes(bottle));
}
