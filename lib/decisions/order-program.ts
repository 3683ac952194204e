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
 * The integer program: `x` of a bottle is 1 where it is bought, `y` of a pair is at most the `x` of both, and each demand needs one of them.
 * Two more rows for each demand say what that implies, and cut off most fractional answers: it needs a bottle of its own or the
 * thinner one of a pair, and a bottle of its own or the thicker one of a pair.
 */
function programText(needed: NeededSets, costs: readonly number[]): string {
  const pairs = new Map<string, readonly number[]>();
  const rows = needed.flatMap((sets, demand) => {
    const terms = sets.map((set) => {
      const name = set.length === 1 ? `x${set[0]}` : `y${set.join('_')}`;
      if (set.length > 1) pairs.set(name, set);
      return name;
    });
    const side = (place: 0 | -1): readonly string[] => [...new Set(sets.map((set) => `x${set.at(place)}`))];
    return [
      `d${demand}: ${sum(terms)} >= 1`,
      `thin${demand}: ${sum(side(0))} >= 1`,
      `thick${demand}: ${sum(side(-1))} >= 1`,
    ];
  });
  const links = [...pairs].flatMap(([name, set]) =>
    set.map((bottle) => `l${name}_${bottle}: ${name} - x${bottle} <= 0`),
  );
  return [
    'Minimize',
    `cost: ${sum(costs.map((cost, bottle) => `${cost} x${bottle}`))}`,
    'Subject To',
    ...rows,
    ...links,
    'Bounds',
    // A pair need not be declared whole: it may rise to 1 as soon as both of its bottles are bought.
    ...[...pairs.keys()].map((name) => `0 <= ${name} <= 1`),
    'Binary',
    costs.map((_, bottle) => `x${bottle}`).join('\n'),
    'End',
  ].join('\n');
}

/** One cost for both wishes: each bottle costs 1, and the prices of all bottles together add less than 1. */
function costsOf(prices: readonly number[]): readonly number[] {
  const total = prices.reduce((sum, price) => sum + price, 0);
  return prices.map((price) => 1 + (total === 0 ? 0 : (0.99 * price) / total));
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
  const { Status, Columns } = solver.solve(programText(needed, costsOf(prices)), {
    mip_rel_gap: 0,
    mip_abs_gap: 0,
    // The rows are few and have no slack to find; looking for some took three times as long as solving.
    presolve: 'off',
    time_limit: timeLimit,
  });
  if (Status !== 'Optimal') throw new Error(`the integer program ended as "${Status}", without a proof`);
  return {
    bottles: prices.flatMap((_, bottle) => ((Columns[`x${bottle}`]?.Primal ?? 0) > 0.5 ? [bottle] : [])),
  };
}
