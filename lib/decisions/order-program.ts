import type { SmallestSet } from './smallest-order.js';

type NeededSets = readonly (readonly (readonly number[])[])[];

/** Longest a solve may take [s]; a plan of 40 bottles takes a fraction of a second. */
const timeLimit = 120;

/**
 * The package declares its types as those of a CommonJS file, whose default strict module rules look for one level deeper; the file
 * that is loaded is a module whose default is the loader.
 */
type Loader = typeof import('highs')['default'];

async function loader(): Promise<Loader> {
  const { default: load } = await import('highs');
  return load as unknown as Loader;
}

/** Sum of terms in LP format; a line holds few terms, since a reader of the format may cut lines at 510 signs. */
function sum(terms: readonly string[]): string {
  const lines: string[] = [];
  for (let start = 0; start < terms.length; start += 12)
    lines.push(terms.slice(start, start + 12).join(' + '));
  return lines.join('\n + ');
}

/**
 * The integer program: `x` of a bottle is 1 where it is bought, `y` of a pair is at most the `x` of both, and each demand needs one.
 * `exactly` fixes the number of bottles.
 */
function programText(needed: NeededSets, costs: readonly number[], exactly?: number): string {
  const bottles = costs.map((_, bottle) => `x${bottle}`);
  const pairs = new Map<string, readonly number[]>();
  const rows = needed.map((sets, demand) => {
    const terms = sets.map((set) => {
      const name = set.length === 1 ? `x${set[0]}` : `y${set.join('_')}`;
      if (set.length > 1) pairs.set(name, set);
      return name;
    });
    return `d${demand}: ${sum(terms)} >= 1`;
  });
  const links = [...pairs].flatMap(([name, set]) =>
    set.map((bottle) => `l${name}_${bottle}: ${name} - x${bottle} <= 0`),
  );
  const size = exactly === undefined ? [] : [`size: ${sum(bottles)} = ${exactly}`];
  return [
    'Minimize',
    `cost: ${sum(costs.map((cost, bottle) => `${cost} x${bottle}`))}`,
    'Subject To',
    ...rows,
    ...links,
    ...size,
    // A pair need not be declared whole: it may rise to 1 as soon as both of its bottles are bought.
    'Bounds',
    ...[...pairs.keys()].map((name) => `0 <= ${name} <= 1`),
    'Binary',
    bottles.join('\n'),
    'End',
  ].join('\n');
}

/**
 * The smallest set of bottles by integer programming, and of the smallest sets the cheapest. The solver (HiGHS as WebAssembly) is
 * loaded on the first call and proves its answer to a gap of 0.
 *
 * @param needed - from `neededSets`
 * @param prices - of each bottle; all 0 where unknown
 * @returns the set, or `undefined` where even all bottles together leave a demand
 * @throws Error where the solver ends without a proof
 * @see Huangfu & Hall, Math. Prog. Comp. 10 (2018) 119 for the solver
 */
export async function smallestSetByProgram(
  needed: NeededSets,
  prices: readonly number[],
): Promise<SmallestSet | undefined> {
  if (needed.some((sets) => sets.length === 0)) return undefined;
  const solver = await (await loader())();
  const solve = (costs: readonly number[], exactly?: number): readonly number[] => {
    const { Status, Columns } = solver.solve(programText(needed, costs, exactly), {
      mip_rel_gap: 0,
      mip_abs_gap: 0,
      time_limit: timeLimit,
    });
    if (Status !== 'Optimal') throw new Error(`the integer program ended as "${Status}", without a proof`);
    return costs.flatMap((_, bottle) => ((Columns[`x${bottle}`]?.Primal ?? 0) > 0.5 ? [bottle] : []));
  };
  const smallest = solve(prices.map(() => 1));
  if (prices.every((price) => price === prices[0])) return { bottles: smallest };
  return { bottles: solve(prices, smallest.length) };
}
