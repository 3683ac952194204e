import type { OilBase } from '../fluid/oil-definition.js';
import { bottleAt, type FillChoice, fillChoices, fillState } from './fill-choice.js';
import { type ViscosityWindow, viscosityWindow } from './match-viscosity.js';
import type { OrderBuild, OrderProblem } from './order-problem.js';
import type { Search } from './search.js';

/** A fill that serves a demand within the tolerance, by every blending rule. */
export interface ServingFill {
  readonly choice: FillChoice;
  /** Bottles of the fill, the thinner one at this temperature first. */
  readonly bottles: readonly number[];
  /** Largest distance from the best viscosity, in its logarithm. */
  readonly distance: number;
}

/** One build at one temperature, with the best fill of each bottle or pair of bottles that serves it. */
export interface Demand {
  readonly build: OrderBuild;
  readonly temperature: number;
  readonly fills: readonly ServingFill[];
}

function windowsOf(
  problem: OrderProblem,
  build: OrderBuild,
  temperature: number,
): ReadonlyMap<OilBase, ViscosityWindow> {
  const windows = new Map<OilBase, ViscosityWindow>();
  problem.bottles.forEach(({ oil }, place) => {
    if (windows.has(oil.base)) return;
    const { density } = fillState(problem.bottles, { first: place, secondShare: 0 }, temperature);
    const { damper, wanted } = build;
    const window = viscosityWindow({ damper, density, wanted }, problem.tolerance);
    if (window !== undefined) windows.set(oil.base, window);
  });
  return windows;
}

/** A bottle by itself at one temperature, with what a first look at its blends needs. */
interface Alone {
  readonly logarithm: number;
  readonly cubeRoot: number;
  readonly density: number;
}

function aloneOf(problem: OrderProblem, first: number, temperature: number): Alone {
  const { typical, density } = fillState(problem.bottles, { first, secondShare: 0 }, temperature);
  return { logarithm: Math.log(typical), cubeRoot: Math.cbrt(typical), density };
}

/**
 * Whether a blend may lie in a window. Two of the rules, additive logarithms and additive cube roots by mass, are worked out here in a
 * few operations; where either leaves the window the blend is out, and the other rules need no look.
 */
function mayLieWithin(first: Alone, second: Alone, share: number, lowest: number, highest: number): boolean {
  const mass = share * second.density;
  const part = mass / (mass + (1 - share) * first.density);
  const logarithm = first.logarithm + part * (second.logarithm - first.logarithm);
  if (logarithm < lowest || logarithm > highest) return false;
  return 3 * Math.log(first.cubeRoot + part * (second.cubeRoot - first.cubeRoot)) <= highest;
}

/** Fills of one temperature with the logarithms of their viscosity, by every rule; worked out when first asked for. */
function lazyStates(problem: OrderProblem, choices: readonly FillChoice[], temperature: number) {
  const low = new Float64Array(choices.length).fill(Number.NaN);
  const high = new Float64Array(choices.length);
  return (place: number, choice: FillChoice): { readonly low: number; readonly high: number } => {
    if (Number.isNaN(low[place])) {
      const state = fillState(problem.bottles, choice, temperature);
      low[place] = Math.log(state.low);
      high[place] = Math.log(state.high);
    }
    return { low: low[place] ?? 0, high: high[place] ?? 0 };
  };
}

function fillsWithin(
  problem: OrderProblem,
  choices: readonly FillChoice[],
  alone: readonly Alone[],
  windows: ReadonlyMap<OilBase, ViscosityWindow>,
  stateOf: ReturnType<typeof lazyStates>,
): readonly ServingFill[] {
  const best = new Map<number, ServingFill>();
  for (const [place, choice] of choices.entries()) {
    const window = windows.get(bottleAt(problem.bottles, choice.first).oil.base);
    if (window === undefined) continue;
    const [lowest, middle, highest] = [Math.log(window.low), Math.log(window.best), Math.log(window.high)];
    const first = alone[choice.first];
    const second = alone[choice.second ?? choice.first];
    if (first === undefined || second === undefined) continue;
    if (!mayLieWithin(first, second, choice.secondShare, lowest, highest)) continue;
    const { low, high } = stateOf(place, choice);
    if (low < lowest || high > highest) continue;
    const distance = Math.max(Math.abs(low - middle), Math.abs(high - middle));
    const key = choice.first * problem.bottles.length + (choice.second ?? choice.first);
    if (distance >= (best.get(key)?.distance ?? Number.POSITIVE_INFINITY)) continue;
    const bottles =
      choice.second === undefined
        ? [choice.first]
        : first.logarithm <= second.logarithm
          ? [choice.first, choice.second]
          : [choice.second, choice.first];
    best.set(key, { choice, bottles, distance });
  }
  return [...best.values()];
}

/**
 * Which bottles serve which demands. A blend serves where its viscosity lies in the window by every rule, so that the doubt about
 * the rules is inside the tolerance. Bottles of one base are taken to have the density of the first of them.
 */
export function* orderDemands(problem: OrderProblem): Search<readonly Demand[]> {
  const choices = fillChoices(problem.bottles, problem.parts);
  const demands: Demand[] = [];
  const count = problem.temperatures.length * problem.builds.length;
  for (const temperature of problem.temperatures) {
    const alone = problem.bottles.map((_, first) => aloneOf(problem, first, temperature));
    const stateOf = lazyStates(problem, choices, temperature);
    for (const build of problem.builds) {
      const windows = windowsOf(problem, build, temperature);
      const fills = fillsWithin(problem, choices, alone, windows, stateOf);
      demands.push({ build, temperature, fills });
      yield demands.length / count;
    }
  }
  return demands;
}

/**
 * The least that must be covered: for each demand the bottles or pairs (the thinner first) that serve it, without pairs that hold a
 * bottle which serves alone, and without demands that another demand implies.
 */
export function neededSets(demands: readonly Demand[]): readonly (readonly (readonly number[])[])[] {
  const distinct = new Map<string, readonly (readonly number[])[]>();
  for (const { fills } of demands) {
    const alone = new Set(fills.flatMap(({ bottles }) => (bottles.length === 1 ? bottles : [])));
    const sets = fills
      .map(({ bottles }) => bottles)
      .filter((bottles) => bottles.length === 1 || !bottles.some((bottle) => alone.has(bottle)));
    distinct.set(sets.map((set) => set.join('+')).join(' '), sets);
  }
  const keyed = [...distinct.values()].map((sets) => ({
    sets,
    keys: new Set(sets.map((set) => set.join('+'))),
  }));
  // A demand is implied by one with fewer ways to be served, each of which serves it too, alone or as a part of a pair.
  const implies = (a: (typeof keyed)[number], b: (typeof keyed)[number]): boolean =>
    a.sets.every((set) => b.keys.has(set.join('+')) || set.some((bottle) => b.keys.has(String(bottle))));
  return keyed
    .filter(
      (one, index) =>
        !keyed.some(
          (other, place) => place !== index && implies(other, one) && (!implies(one, other) || place < index),
        ),
    )
    .map(({ sets }) => sets);
}
