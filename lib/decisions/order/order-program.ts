import type { SearchControl } from '../search/search.js';
import { cutOf, type NeededSets, needsOf, serves, withCut } from './order-cuts.js';
import type { SmallestSet } from './smallest-order.js';

/** Longest one of the solves may take [s]; those of a plan of 40 bottles take a fraction of a second. */
const timeLimit = 120;

/**
 * The package declares its types as those of a CommonJS file, whose default strict module rules look for one level deeper; the file
 * that is loaded is a module whose default is the loader.
 */
type Loader = typeof import('highs')['default'];

/** The solver, ready to solve. */
export type Solver = Awaited<ReturnType<Loader>>;

/** Loads the solver. */
export async function loadSolver(): Promise<Solver> {
  const { default: load } = await import('highs');
  return (load as unknown as Loader)();
}

/** Sum of terms in LP format; a line holds few terms, since a reader of the format may cut lines at 510 signs. */
function sum(terms: readonly string[]): string {
  const lines: string[] = [];
  for (let start = 0; start < terms.length; start += 12)
    lines.push(terms.slice(start, start + 12).join(' + '));
  return lines.join('\n + ');
}

/** The integer program: `x` of a bottle is 1 where it is bought; at least one of each cut, and at least so many in all. */
function programText(cuts: readonly (readonly number[])[], costs: readonly number[], fewest: number): string {
  const all = costs.map((_, bottle) => `x${bottle}`);
  return [
    'Minimize',
    `cost: ${sum(costs.map((cost, bottle) => `${cost} x${bottle}`))}`,
    'Subject To',
    ...cuts.map((cut, row) => `c${row}: ${sum(cut.map((bottle) => `x${bottle}`))} >= 1`),
    `fewest: ${sum(all)} >= ${fewest}`,
    'Binary',
    all.join('\n'),
    'End',
  ].join('\n');
}

/** One cost for both wishes: each bottle costs 1, and the prices of all bottles together add less than 1. */
function costsOf(prices: readonly number[]): readonly number[] {
  const total = prices.reduce((sum, price) => sum + price, 0);
  return prices.map((price) => 1 + (total === 0 ? 0 : (0.99 * price) / total));
}

/** A set of bottles that meets all cuts at the least cost. */
function solved(
  solver: Solver,
  cuts: readonly (readonly number[])[],
  costs: readonly number[],
  fewest: number,
): readonly number[] {
  const { Status, Columns } = solver.solve(programText(cuts, costs, fewest), {
    mip_rel_gap: 0,
    mip_abs_gap: 0,
    time_limit: timeLimit,
  });
  if (Status !== 'Optimal') throw new Error(`the integer program ended as "${Status}", without a proof`);
  return costs.flatMap((_, bottle) => ((Columns[`x${bottle}`]?.Primal ?? 0) > 0.5 ? [bottle] : []));
}

/**
 * The smallest set of bottles by integer programming, and of the smallest sets the cheapest. The solver (HiGHS as WebAssembly) proves each
 * of its answers to a gap of 0. It is asked only for sets that meet some cuts; where such a set leaves a demand, a cut that says so joins
 * them, until one leaves none. No complete set misses a cut, so that one is the best of all.
 *
 * @param needed - from `neededSets`
 * @param prices - of each bottle; all 0 where unknown
 * @param control - stops it between two solves
 * @param loading - the solver where it is on its way already; loaded when first needed without it
 * @returns the set, or `undefined` where even all bottles together leave a demand
 * @throws Error where the solver ends without a proof, the reason of the signal where it stops the search
 * @see Moreno-Centeno & Karp, Oper. Res. 61 (2013) 453 for the method (from memory); Huangfu & Hall, Math. Prog. Comp. 10 (2018) 119 for
 * the solver
 */
export async function smallestSetByProgram(
  needed: NeededSets,
  prices: readonly number[],
  { signal }: SearchControl = {},
  loading?: Promise<Solver>,
): Promise<SmallestSet | undefined> {
  if (needed.some((sets) => sets.length === 0)) return undefined;
  const needs = needsOf(needed, prices.length);
  const costs = costsOf(prices);
  const rising = prices.map((_, bottle) => bottle);
  const orders = [rising, rising.toReversed()];
  const solver = await (loading ?? loadSolver());
  let cuts: readonly (readonly number[])[] = [];
  let bottles: readonly number[] = [];
  for (;;) {
    const left = needs.filter((need) => !serves(need, bottles));
    if (left.length === 0) return { bottles };
    for (const need of left) for (const order of orders) cuts = withCut(cuts, cutOf(need, bottles, order));
    await new Promise((resume) => setTimeout(resume, 0));
    signal?.throwIfAborted();
    // With more cuts it never takes fewer bottles; said outright, it spares the solver most of its proof.
    bottles = solved(solver, cuts, costs, bottles.length);
  }
}
