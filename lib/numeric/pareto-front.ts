import { refuse, requireList } from '../base/checks.js';
import { anything, call, listOf, requireShape } from '../base/shape.js';

/**
 * The members that no other member beats: another is at least as good in every respect and better in one (Pareto).
 * Of members that are equal in every respect the first stays.
 *
 * @param members - any things
 * @param costs - what each costs in each respect; smaller is better; the same number of respects for all, none NaN
 * @throws InputError for costs that are no list of numbers, or of another length than the first
 * @returns the front, in rising order of the first cost
 * @example
 * ```ts
 * const front = paretoFront([{ cost: 1, error: 3 }, { cost: 2, error: 4 }, { cost: 3, error: 1 }], ({ cost, error }) => [cost, error]);
 * front.length; // 2: the second costs more than the first and is worse
 * ```
 * @public
 */
export function paretoFront<Member>(
  members: readonly Member[],
  costs: (member: Member) => readonly number[],
): readonly Member[] {
  requireShape({ members, costs }, { members: listOf(anything), costs: call });
  const ranked = [...members]
    .map((member, index) => ({ member, cost: checked(costs(member), index) }))
    .sort((a, b) => compared(a.cost, b.cost));
  const [
    {
      cost: { length: respects },
    } = { cost: [] },
  ] = ranked;
  for (const { cost } of ranked)
    if (cost.length !== respects)
      refuse(cost.length, 'number of costs', '', `${respects}, the same for all members`);
  const front: { readonly member: Member; readonly cost: readonly number[] }[] = [];
  // In lexical order nothing later can beat something earlier, so one look back is enough.
  for (const candidate of ranked) {
    if (!front.some(({ cost }) => cost.every((value, respect) => value <= candidate.cost[respect]!)))
      front.push(candidate);
  }
  return front.map(({ member }) => member);
}

/** What cannot be compared would neither beat nor be beaten, and all of it would be kept. */
function checked(cost: readonly number[], member: number): readonly number[] {
  requireList(cost, `costs(members[${member}])`);
  for (const [respect, value] of cost.entries())
    if (typeof value !== 'number' || Number.isNaN(value))
      refuse(value, `costs(members[${member}])[${respect}]`, '', 'a number');
  return cost;
}

function compared(a: readonly number[], b: readonly number[]): number {
  for (const [respect, value] of a.entries()) {
    const difference = value - b[respect]!;
    if (difference !== 0) return difference;
  }
  return 0;
}
