import { bottleAt, fillDensity } from '../day/fill-choice.js';
import { type BoundMismatch, boundMismatch } from '../match/bound-mismatch.js';
import type { Search } from '../search/search.js';
import type { Demand, ServingFill } from './order-coverage.js';
import type { FurtherBottle, OrderLine, OrderPlan, PlannedFill } from './order-plan.js';
import type { OrderBuild, OrderProblem } from './order-problem.js';
import type { SmallestSet } from './smallest-order.js';

/** Price of each bottle; all 0 where one is unknown. */
export function pricesOf(problem: OrderProblem): readonly number[] {
  const known = problem.bottles.every(({ price }) => price !== undefined);
  return problem.bottles.map(({ price }) => (known ? (price ?? 0) : 0));
}

/** The plan that a set of bottles makes. */
export function* planOf(
  problem: OrderProblem,
  demands: readonly Demand[],
  set: SmallestSet | undefined,
): Search<OrderPlan> {
  const unserved = demands
    .filter(({ fills }) => fills.length === 0)
    .map(({ build, temperature }) => ({ build: build.name, temperature }));
  if (set === undefined || unserved.length === demands.length) return { possible: false, unserved };
  const served = demands.filter(({ fills }) => fills.length > 0);
  const owned = problem.owned ?? [];
  const bottles = new Set([...set.bottles, ...owned]);
  const chosen = served.map((demand) => bestFill(demand, bottles));
  const plan = planning(problem);
  const fills = served.flatMap((demand, place) => {
    const fill = chosen[place];
    return fill === undefined ? [] : [plan(demand, fill)];
  });
  const lines = [...set.bottles, ...owned]
    .map((bottle) => orderLine(problem, served, chosen, bottle))
    .filter(({ owned: atHand, used }) => !atHand || used > 0);
  const prices = lines.map(({ bottle, count }) =>
    count === 0 ? 0 : count * (bottleAt(problem.bottles, bottle).price ?? Number.NaN),
  );
  const price = prices.reduce((sum, one) => sum + one, 0);
  return {
    possible: true,
    unserved,
    lines,
    ...(Number.isNaN(price) ? {} : { price }),
    fills,
    ...summary(fills),
    further: yield* furtherBottles(problem, served, bottles, chosen, fills, plan),
  };
}

/** A blend costs work, so that any bottle alone comes before it. */
function isBetter(a: ServingFill, b: ServingFill | undefined): boolean {
  if (b === undefined || a.bottles.length !== b.bottles.length)
    return b === undefined || a.bottles.length < b.bottles.length;
  return a.distance < b.distance;
}

/** The fill of a demand from bottles at hand: one alone where one serves, else the blend nearest to the wanted damping. */
function bestFill({ fills }: Demand, bottles: ReadonlySet<number>): ServingFill | undefined {
  let best: ServingFill | undefined;
  for (const fill of fills) {
    const [first = -1, second = first] = fill.bottles;
    if (bottles.has(first) && bottles.has(second) && isBetter(fill, best)) best = fill;
  }
  return best;
}

/** Plans a fill for a demand. */
type Planning = (demand: Demand, fill: ServingFill) => PlannedFill;

function planning({ bottles }: OrderProblem): Planning {
  const bound = new Map<OrderBuild, BoundMismatch>();
  return ({ build, temperature }, { choice, low, high }) => {
    const density = fillDensity(bottles, choice, temperature);
    const before = bound.get(build);
    const mismatch =
      before ?? boundMismatch(build.damper, build.wanted, { kinematicViscosity: low, density });
    if (before === undefined) bound.set(build, mismatch);
    const atLow = mismatch(low, density);
    // A bottle alone has one viscosity by every rule.
    const worst = low === high ? atLow : Math.max(atLow, mismatch(high, density));
    return { build: build.name, temperature, choice, mismatch: Math.expm1(worst) };
  };
}

function orderLine(
  problem: OrderProblem,
  demands: readonly Demand[],
  chosen: readonly (ServingFill | undefined)[],
  bottle: number,
): OrderLine {
  const each = problem.fills / problem.temperatures.length;
  const used = demands.reduce((sum, { build }, place) => {
    const choice = chosen[place]?.choice;
    if (choice === undefined) return sum;
    const share =
      choice.first === bottle ? 1 - choice.secondShare : choice.second === bottle ? choice.secondShare : 0;
    return sum + share * each * build.fillVolume;
  }, 0);
  // A bottle is needed even if so little is used that rounding hides it; 1e-9 of a bottle is no reason for another one.
  const needed = Math.max(1, Math.ceil(used / bottleAt(problem.bottles, bottle).volume - 1e-9));
  const owned = (problem.owned ?? []).includes(bottle);
  return { bottle, used, count: owned ? needed - 1 : needed, owned };
}

function summary(fills: readonly PlannedFill[]) {
  return {
    meanMismatch: fills.reduce((sum, { mismatch }) => sum + mismatch, 0) / fills.length,
    worstMismatch: Math.max(...fills.map(({ mismatch }) => mismatch)),
    aloneShare: fills.filter(({ choice }) => choice.second === undefined).length / fills.length,
  };
}

/** The bottle that a fill needs besides those at hand; none where they make it, or where it takes two more. */
function oneMore(
  { bottles: [first = -1, second = first] }: ServingFill,
  bottles: ReadonlySet<number>,
): number | undefined {
  if (bottles.has(second)) return bottles.has(first) ? undefined : first;
  return first === second || bottles.has(first) ? second : undefined;
}

/** For each bottle that is not in the order, the fills that it would improve are looked at and no others. */
function* furtherBottles(
  problem: OrderProblem,
  demands: readonly Demand[],
  bottles: ReadonlySet<number>,
  chosen: readonly (ServingFill | undefined)[],
  fills: readonly PlannedFill[],
  plan: Planning,
): Search<readonly FurtherBottle[]> {
  const improved = problem.bottles.map(() => [...fills]);
  for (const [place, demand] of demands.entries()) {
    const now = chosen[place];
    const best = new Map<number, ServingFill>();
    for (const fill of demand.fills) {
      const extra = oneMore(fill, bottles);
      if (extra !== undefined && isBetter(fill, best.get(extra) ?? now)) best.set(extra, fill);
    }
    for (const [extra, fill] of best) improved[extra]?.splice(place, 1, plan(demand, fill));
    yield (place + 1) / demands.length;
  }
  return problem.bottles
    .map((_, bottle) => ({ bottle, ...summary(improved[bottle] ?? fills) }))
    .filter(({ bottle }) => !bottles.has(bottle))
    .sort((a, b) => b.aloneShare - a.aloneShare || a.meanMismatch - b.meanMismatch);
}
