import { keptResults } from '../../lib/base/kept-results.js';
import { finish } from '../../lib/decisions/search/search.js';
import {
  drawnForces,
  type ForceSpread,
  spreadOf,
  type ToleranceShare,
  toleranceShares,
} from '../../lib/decisions/spread/force-spread.js';
import { pairsApart } from '../../lib/decisions/spread/pairs-apart.js';
import type {
  TolerancedBuild,
  ToleranceName,
  Tolerances,
} from '../../lib/decisions/spread/toleranced-build.js';
import { once } from '../../lib/page/blocks/later.js';
import type { Build } from '../../lib/parts/parts.js';

/** Builds drawn, and base points of the shares: enough for two digits. */
export const drawn = 2048;
export const points = 256;

/** What all four shocks of a car share: one bottle, one day. Everything else each shock has for itself. */
const sharedNames: ReadonlySet<ToleranceName> = new Set(['viscosity', 'temperature']);

/** How far left and right are apart at one speed, by the slower over the quicker. */
export interface PairSpread {
  readonly speed: number;
  /** Difference, as a part, that half of all pairs stay below, and nine of ten. */
  readonly median: number;
  readonly high: number;
}

/** Spread from one kind of cause, with the share of each size; undefined where nothing of the kind is off. */
export interface Cause {
  readonly build: TolerancedBuild;
  /** Forces of the builds drawn, speed by speed for each [N], and how they spread. */
  readonly draws: () => Float64Array;
  readonly spreads: () => readonly ForceSpread[];
  readonly shares: readonly (readonly ToleranceShare[])[];
}

/** What differs from shock to shock, what all share, and both together. */
export interface TwoSpreads {
  readonly own: Cause | undefined;
  readonly shared: Cause | undefined;
  /** Forces of all builds drawn, speed by speed for each [N], and how they spread. */
  readonly draws: () => Float64Array;
  readonly together: () => readonly ForceSpread[];
  /** At each speed; empty where nothing differs from shock to shock. */
  readonly pairs: readonly PairSpread[];
}

function only(tolerances: Tolerances, wanted: (name: ToleranceName) => boolean): Tolerances {
  return Object.fromEntries(
    Object.entries(tolerances).filter(([name]) => wanted(name as ToleranceName)),
  ) as Tolerances;
}

/** All builds of a page, spread as evenly as can be. */
function drawsOf(build: TolerancedBuild, seed: number): Float64Array {
  return drawnForces(build, { count: drawn, seed, sampling: 'low-discrepancy' }, 0, drawn);
}

function causeOf(build: TolerancedBuild, seed: number): Cause | undefined {
  if (Object.keys(build.tolerances).length === 0) return undefined;
  const draws = once(() => drawsOf(build, seed));
  return {
    build,
    draws,
    spreads: once(() => spreadOf(build.speeds, draws())),
    shares: finish(toleranceShares(build, points, seed)),
  };
}

/** What sets left and right apart does not change with what all shocks share, nor the other way round. */
const causes = keptResults<Build, Cause | undefined>(6);
const allPairs = keptResults<Build, readonly PairSpread[]>(3);

/** Spreads of a build of the parts file, parted into what differs from shock to shock and what all shocks of the car share. */
export function twoSpreads(of: Build, build: TolerancedBuild, seed: number): TwoSpreads {
  const { tolerances } = build;
  const own = { ...build, tolerances: only(tolerances, (name) => !sharedNames.has(name)) };
  const shared = { ...build, tolerances: only(tolerances, (name) => sharedNames.has(name)) };
  const known = (one: TolerancedBuild) => causes(of, [one, seed], () => causeOf(one, seed));
  const ownCause = known(own);
  const draws = once(() => drawsOf(build, seed));
  return {
    own: ownCause,
    shared: known(shared),
    draws,
    together: once(() => spreadOf(build.speeds, draws())),
    pairs: ownCause === undefined ? [] : allPairs(of, [own, seed], () => pairSpreads(ownCause)),
  };
}

/** Left against right: each build drawn beside every other, each with sizes of its own. */
function pairSpreads({ build, draws }: Cause): readonly PairSpread[] {
  const { speeds } = build;
  return speeds.map((speed, place) => {
    const forces = draws().filter((_, index) => index % speeds.length === place);
    return { speed, median: pairsApart(forces, 0.5), high: pairsApart(forces, 0.9) };
  });
}

/** The size with the largest share at one speed. */
export function largestCause(cause: Cause | undefined, place: number): ToleranceShare | undefined {
  return [...(cause?.shares[place] ?? [])].sort((a, b) => b.total - a.total)[0];
}

/** Half of the width between which nine of ten builds lie, over the median. */
export function halfWidth({ low, median, high }: ForceSpread): number {
  return Math.abs((high - low) / median / 2);
}
