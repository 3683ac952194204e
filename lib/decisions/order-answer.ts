import { damperModel } from '../damper/damper-model.js';
import { logMismatch } from './damping-mismatch.js';
import { bottleAt, type FillChoice, fillState } from './fill-choice.js';
import type { Demand, ServingFill } from './order-coverage.js';
import type { FurtherBottle, OrderLine, OrderPlan, PlannedFill } from './order-plan.js';
import type { OrderBuild, OrderProblem } from './order-problem.js';
import type { Search } from './search.js';
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
  if (set === undefined) {
    const unserved = demands
      .filter(({ fills }) => fills.length === 0)
      .map(({ build, temperature }) => ({ build: build.name, temperature }));
    return { possible: false, unserved };
  }
  const fills = plannedFills(problem, demands, set.bottles);
  const lines = orderLines(problem, demands, set.bottles);
  const prices = lines.map(
    ({ bottle, count }) => count * (bottleAt(problem.bottles, bottle).price ?? Number.NaN),
  );
  const price = prices.reduce((sum, one) => sum + one, 0);
  return {
    possible: true,
    lines,
    ...(Number.isNaN(price) ? {} : { price }),
    fills,
    ...summary(fills),
    further: yield* furtherBottles(problem, demands, set.bottles, fills),
  };
}

/** A blend costs work, so that any bottle alone comes before it. */
function isBetter(a: ServingFill, b: ServingFill | undefined): boolean {
  if (b === undefined || a.bottles.length !== b.bottles.length)
    return b === undefined || a.bottles.length < b.bottles.length;
  return a.distance < b.distance;
}

/** The fill of a demand from bottles at hand: one alone where one serves, else the blend nearest to the wanted damping. */
function bestFill({ fills }: Demand, bottles: readonly number[]): ServingFill | undefined {
  let best: ServingFill | undefined;
  for (const fill of fills) {
    if (isBetter(fill, best) && fill.bottles.every((bottle) => bottles.includes(bottle))) best = fill;
  }
  return best;
}

function planned(
  problem: OrderProblem,
  { build, temperature }: Demand,
  { choice }: ServingFill,
): PlannedFill {
  const mismatch = mismatchOf(problem, build, choice, temperature);
  return { build: build.name, temperature, choice, mismatch };
}

function plannedFills(
  problem: OrderProblem,
  demands: readonly Demand[],
  bottles: readonly number[],
): readonly PlannedFill[] {
  return demands.flatMap((demand): PlannedFill[] => {
    const fill = bestFill(demand, bottles);
    return fill === undefined ? [] : [planned(problem, demand, fill)];
  });
}

function mismatchOf(
  problem: OrderProblem,
  build: OrderBuild,
  choice: FillChoice,
  temperature: number,
): number {
  const { low, high, density } = fillState(problem.bottles, choice, temperature);
  // A bottle alone has one viscosity by every rule.
  const typical = (low === high ? [low] : [low, high]).map((kinematicViscosity) =>
    Math.expm1(
      logMismatch(damperModel(build.damper, { kinematicViscosity, density }), build.wanted).rootMeanSquare,
    ),
  );
  return Math.max(...typical);
}

function orderLines(
  problem: OrderProblem,
  demands: readonly Demand[],
  bottles: readonly number[],
): readonly OrderLine[] {
  const each = problem.fills / problem.temperatures.length;
  return bottles.map((bottle) => {
    const used = demands.reduce((sum, demand) => {
      const choice = bestFill(demand, bottles)?.choice;
      if (choice === undefined) return sum;
      const share =
        choice.first === bottle ? 1 - choice.secondShare : choice.second === bottle ? choice.secondShare : 0;
      return sum + share * each * demand.build.fillVolume;
    }, 0);
    // A bottle is needed even if so little is used that rounding hides it; 1e-9 of a bottle is no reason for another one.
    const count = Math.max(1, Math.ceil(used / bottleAt(problem.bottles, bottle).volume - 1e-9));
    return { bottle, used, count };
  });
}

function summary(fills: readonly PlannedFill[]) {
  return {
    meanMismatch: fills.reduce((sum, { mismatch }) => sum + mismatch, 0) / fills.length,
    worstMismatch: Math.max(...fills.map(({ mismatch }) => mismatch)),
    aloneShare: fills.filter(({ choice }) => choice.second === undefined).length / fills.length,
  };
}

/** For each bottle that is not in the order, the fills that it would improve are looked at and no others. */
function* furtherBottles(
  problem: OrderProblem,
  demands: readonly Demand[],
  bottles: readonly number[],
  fills: readonly PlannedFill[],
): Search<readonly FurtherBottle[]> {
  const improved = problem.bottles.map(() => [...fills]);
  for (const [place, demand] of demands.entries()) {
    const now = bestFill(demand, bottles);
    const best = new Map<number, ServingFill>();
    for (const fill of demand.fills) {
      const [extra, second] = fill.bottles.filter((bottle) => !bottles.includes(bottle));
      if (extra === undefined || second !== undefined) continue;
      if (isBetter(fill, best.get(extra) ?? now)) best.set(extra, fill);
    }
    for (const [extra, fill] of best) improved[extra]?.splice(place, 1, planned(problem, demand, fill));
    yield (place + 1) / demands.length;
  }
  return problem.bottles
    .map((_, bottle) => ({ bottle, ...summary(improved[bottle] ?? fills) }))
    .filter(({ bottle }) => !bottles.includes(bottle))
    .sort((a, b) => b.aloneShare - a.aloneShare || a.meanMismatch - b.meanMismatch);
}
