interface Cost {
  /** Mismatch above the worthwhile one, summed over the times. */
  readonly excess: number;
  readonly rebuilds: number;
  /** Fills that have to be mixed. */
  readonly mixes: number;
  readonly squares: number;
}

function isLess(a: Cost, b: Cost): boolean {
  if (Math.abs(a.excess - b.excess) > 1e-12) return a.excess < b.excess;
  if (a.rebuilds !== b.rebuilds) return a.rebuilds < b.rebuilds;
  if (a.mixes !== b.mixes) return a.mixes < b.mixes;
  return a.squares < b.squares;
}

/**
 * Place of the fill at each time, by dynamic programming.
 *
 * @param fitted - for each time the mismatch of every fill
 * @param mixed - for each fill whether it has to be mixed
 * @param worthwhile - mismatch from which a rebuild is worth its work
 */
export function cheapestPlaces(
  fitted: readonly (readonly number[])[],
  mixed: readonly boolean[],
  worthwhile: number,
): readonly number[] {
  const cameFrom: number[][] = [];
  let costs: readonly Cost[] = [];
  for (const [index, row] of fitted.entries()) {
    let cheapest = 0;
    for (const [place, cost] of costs.entries()) {
      if (isLess(cost, costs[cheapest] ?? cost)) cheapest = place;
    }
    const origins: number[] = [];
    const before = costs;
    costs = row.map((mismatch, place) => {
      const mixes = mixed[place] ? 1 : 0;
      const stay = before[place] ?? { excess: 0, rebuilds: 0, mixes, squares: 0 };
      const leave = before[cheapest];
      const change =
        leave === undefined
          ? undefined
          : { ...leave, rebuilds: leave.rebuilds + 1, mixes: leave.mixes + mixes };
      const changes = index > 0 && change !== undefined && isLess(change, stay);
      origins[place] = changes ? cheapest : place;
      const base = changes ? change : stay;
      return {
        excess: base.excess + Math.max(0, mismatch - worthwhile),
        rebuilds: base.rebuilds,
        mixes: base.mixes,
        squares: base.squares + mismatch ** 2,
      };
    });
    cameFrom.push(origins);
  }
  let place = 0;
  for (const [candidate, cost] of costs.entries()) {
    if (isLess(cost, costs[place] ?? cost)) place = candidate;
  }
  const places: number[] = [];
  for (const origins of cameFrom.toReversed()) {
    places.unshift(place);
    place = origins[place] ?? place;
  }
  return places;
}
