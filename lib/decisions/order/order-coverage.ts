import type { OilBase } from '../../fluid/oil/oil-definition.js';
import { bottleAt, type FillChoice, fillChoices, fillDensity } from '../day/fill-choice.js';
import { type ViscosityWindow, viscosityWindow } from '../match/match-viscosity.js';
import type { Search } from '../search/search.js';
import type { OrderBuild, OrderProblem } from './order-problem.js';
import { type OrderScreen, orderScreen } from './order-screen.js';

/** A fill that serves a demand within the tolerance, by every blending rule. */
export interface ServingFill {
  readonly choice: FillChoice;
  /** Its place among all choices. */
  readonly place: number;
  /** Bottles of the fill, the thinner one at this temperature first. */
  readonly bottles: readonly number[];
  /** Its lowest and highest viscosity by every rule [m²/s]. */
  readonly low: number;
  readonly high: number;
  /** Largest distance from the best viscosity, in its logarithm. */
  readonly distance: number;
}

/** One build at one temperature, with the best fill of each bottle or pair of bottles that serves it. */
export interface Demand {
  readonly build: OrderBuild;
  readonly temperature: number;
  readonly fills: readonly ServingFill[];
}

/** The logarithms of a viscosity window. */
type LogWindow = ViscosityWindow;

function windowsOf(
  problem: OrderProblem,
  build: OrderBuild,
  temperature: number,
): ReadonlyMap<OilBase, LogWindow> {
  const windows = new Map<OilBase, LogWindow>();
  problem.bottles.forEach(({ oil }, place) => {
    if (windows.has(oil.base)) return;
    const density = fillDensity(problem.bottles, { first: place, secondShare: 0 }, temperature);
    const { damper, wanted } = build;
    const window = viscosityWindow({ damper, density, wanted }, problem.tolerance);
    if (window === undefined) return;
    const { low, best, high } = window;
    windows.set(oil.base, { low: Math.log(low), best: Math.log(best), high: Math.log(high) });
  });
  return windows;
}

/** The best fill of each bottle and each pair that lies in a window; `fillChoices` lists all shares of a pair in a row. */
function fillsWithin(
  { bottles }: OrderProblem,
  choices: readonly FillChoice[],
  screen: OrderScreen,
  windows: ReadonlyMap<OilBase, LogWindow>,
): readonly ServingFill[] {
  const within: ServingFill[] = [];
  const ofBottle = bottles.map(({ oil }) => windows.get(oil.base));
  let best: ServingFill | undefined;
  for (let place = 0; place < choices.length; place++) {
    const choice = bottleAt(choices, place);
    if (best !== undefined && (best.choice.first !== choice.first || best.choice.second !== choice.second)) {
      within.push(best);
      best = undefined;
    }
    const window = ofBottle[choice.first];
    if (window === undefined || !mayLieWithin(screen, place, window)) continue;
    // The ends of all rules lie no nearer than these two of them.
    if (best !== undefined && leastDistance(screen, place, window) >= best.distance) continue;
    const [low, high] = [screen.lowest(place), screen.highest(place)];
    if (low < window.low || high > window.high) continue;
    const distance = Math.max(Math.abs(low - window.best), Math.abs(high - window.best));
    if (best === undefined || distance < best.distance)
      best = {
        choice,
        place,
        bottles: thinnerFirst(choice, screen),
        low: Math.exp(low),
        high: Math.exp(high),
        distance,
      };
  }
  if (best !== undefined) within.push(best);
  return within;
}

function mayLieWithin(
  { byLogarithm, byCubeRoot }: OrderScreen,
  place: number,
  { low, high }: LogWindow,
): boolean {
  const logarithm = byLogarithm[place] ?? 0;
  return logarithm >= low && logarithm <= high && (byCubeRoot[place] ?? 0) <= high;
}

function leastDistance({ byLogarithm, byCubeRoot }: OrderScreen, place: number, { best }: LogWindow): number {
  return Math.max(Math.abs((byLogarithm[place] ?? 0) - best), Math.abs((byCubeRoot[place] ?? 0) - best));
}

function thinnerFirst({ first, second }: FillChoice, { alone }: OrderScreen): readonly number[] {
  if (second === undefined) return [first];
  return (alone[first] ?? 0) <= (alone[second] ?? 0) ? [first, second] : [second, first];
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
    const screen = orderScreen(problem, choices, temperature);
    for (const build of problem.builds) {
      const windows = windowsOf(problem, build, temperature);
      const fills = fillsWithin(problem, choices, screen, windows);
      demands.push({ build, temperature, fills });
      yield demands.length / count;
    }
  }
  return demands;
}

/**
 * The least that must be covered: for each demand the bottles or pairs (the thinner first) that serve it, without pairs that hold a
 * bottle which serves alone, and without demands that another demand implies, that nothing serves, or that bottles at hand serve.
 *
 * @param owned - places of bottles at hand
 */
export function neededSets(
  demands: readonly Demand[],
  owned: readonly number[] = [],
): readonly (readonly (readonly number[])[])[] {
  const distinct = new Map<string, readonly (readonly number[])[]>();
  for (const { fills } of demands) {
    // What is at hand need not be bought: a blend with it needs the other bottle alone.
    const bought = fills.map(({ bottles }) => bottles.filter((bottle) => !owned.includes(bottle)));
    // Without a fill nothing serves, and with one of bottles at hand nothing is needed.
    if (bought.length === 0 || bought.some(({ length }) => length === 0)) continue;
    const alone = new Set(bought.flatMap((bottles) => (bottles.length === 1 ? bottles : [])));
    const sets = bought.filter(
      (bottles) => bottles.length === 1 || !bottles.some((bottle) => alone.has(bottle)),
    );
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
