import type { OilBase } from '../fluid/oil-definition.js';
import { bottleAt, type FillChoice, fillChoices, fillState } from './fill-choice.js';
import { type ViscosityWindow, viscosityWindow } from './match-viscosity.js';
import type { OrderBuild, OrderProblem } from './order-problem.js';
import type { Search } from './search.js';

/** A fill that serves a demand within the tolerance, by every blending rule. */
export interface ServingFill {
  readonly choice: FillChoice;
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

/**
 * Which bottles serve which demands. A blend serves where its viscosity lies in the window by every rule, so that the doubt about
 * the rules is inside the tolerance. Bottles of one base are taken to have the density of the first of them.
 */
export function* orderDemands(problem: OrderProblem): Search<readonly Demand[]> {
  const choices = fillChoices(problem.bottles, problem.parts);
  const demands: Demand[] = [];
  for (const [index, temperature] of problem.temperatures.entries()) {
    const states: { readonly choice: FillChoice; readonly low: number; readonly high: number }[] = [];
    for (const [place, choice] of choices.entries()) {
      const { low, high } = fillState(problem.bottles, choice, temperature);
      states.push({ choice, low: Math.log(low), high: Math.log(high) });
      if (place % 256 === 0) yield (index + (0.7 * place) / choices.length) / problem.temperatures.length;
    }
    for (const [place, build] of problem.builds.entries()) {
      const windows = windowsOf(problem, build, temperature);
      const best = new Map<string, ServingFill>();
      for (const { choice, low, high } of states) {
        const window = windows.get(bottleAt(problem.bottles, choice.first).oil.base);
        if (window === undefined || low < Math.log(window.low) || high > Math.log(window.high)) continue;
        const middle = Math.log(window.best);
        const distance = Math.max(Math.abs(low - middle), Math.abs(high - middle));
        const key = `${choice.first} ${choice.second}`;
        if (distance < (best.get(key)?.distance ?? Number.POSITIVE_INFINITY))
          best.set(key, { choice, distance });
      }
      demands.push({ build, temperature, fills: [...best.values()] });
      yield (index + 0.7 + (0.3 * place) / problem.builds.length) / problem.temperatures.length;
    }
  }
  return demands;
}

/**
 * The least that must be covered: for each demand the bottles or pairs that serve it, without pairs that hold a bottle which serves
 * alone, and without demands that another demand implies.
 */
export function neededSets(demands: readonly Demand[]): readonly (readonly (readonly number[])[])[] {
  const distinct = new Map<string, readonly (readonly number[])[]>();
  for (const { fills } of demands) {
    const alone = new Set(fills.flatMap(({ choice }) => (choice.second === undefined ? [choice.first] : [])));
    const sets = fills.flatMap(({ choice: { first, second } }): (readonly number[])[] => {
      if (second === undefined) return [[first]];
      return alone.has(first) || alone.has(second) ? [] : [[first, second]];
    });
    distinct.set(sets.map((set) => set.join('+')).join(' '), sets);
  }
  const keyed = [...distinct.values()].map((sets) => ({
    sets,
    keys: new Set(sets.map((set) => set.join('+'))),
  }));
  // A demand is implied by one with fewer ways to be served, all of which serve it too, alone or as part of a pair.
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
