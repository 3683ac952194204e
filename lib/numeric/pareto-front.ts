import { anything, call, listOf, requireShape } from '../base/shape.js';
/**
 * The members that no other member beats: another is at least as good in every respect and better in one (Pareto).
 * Of members that are equal in every respect the first stays.
 *
 * @param members - any things
 * @param costs - what each costs in each respect; smaller is better; the same number of respects for all, none NaN
 * @returns the front, in rising order of the first cost
 * @public
 */
export function paretoFront<Member>(
  members: readonly Member[],
  costs: (member: Member) => readonly number[],
): readonly Member[] {
  requireShape({ members, costs }, { members: listOf(anything), costs: call });
  const ranked = members
    .map((member) => ({ member, cost: costs(member) }))
    .sort((a, b) => compared(a.cost, b.cost));
  const front: { readonly member: Member; readonly cost: readonly number[] }[] = [];
  // In lexical order nothing later can beat something earlier, so one look back is enough.
  for (const candidate of ranked) {
    if (!front.some(({ cost }) => cost.every((value, respect) => value <= candidate.cost[respect]!)))
      front.push(candidate);
  }
  return front.map(({ member }) => member);
}

function compared(a: readonly number[], b: readonly number[]): number {
  for (const [respect, value] of a.entries()) {
    const difference = value - b[respect]!;
    if (difference !== 0) return difference;
  }
  return 0;
}
