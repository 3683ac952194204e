import type { FillChoice } from '../../lib/decisions/day/fill-choice.js';
import type { OrderPlan } from '../../lib/decisions/order/order-plan.js';
import type { OrderProblem } from '../../lib/decisions/order/order-problem.js';
import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { celsius } from '../base/wording.js';

type GoodPlan = OrderPlan & { readonly possible: true };

const off = { unit: '%', dimension: 'ratio', digits: 2 } as const;

/** What to buy and how much of it is used. */
export function orderTable({ bottles, fills }: OrderProblem, plan: GoodPlan, currency?: string): TableBlock {
  const price =
    plan.price === undefined || currency === undefined ? [] : [{ label: 'Price', unit: currency }];
  return {
    kind: 'table',
    id: 'order',
    title: 'The order',
    note: `Used in ${fills} fills of each build.`,
    table: {
      columns: [
        { label: 'Bottle', unit: '' },
        { label: 'Buy', unit: '' },
        { label: 'At hand', unit: '' },
        { label: 'Used', unit: 'ml', dimension: 'volume' },
        ...price,
      ],
      rows: plan.lines.map(({ bottle, used, count, owned }) => [
        bottles[bottle]?.name ?? '',
        count,
        owned ? 1 : 0,
        used,
        ...(price.length === 0 ? [] : [count * (bottles[bottle]?.price ?? 0)]),
      ]),
    },
  };
}

/** What goes into each shock at which temperature: a table for each build, so that it fits a phone. */
export function fillTables(
  { bottles, builds, parts }: OrderProblem,
  { fills, lines }: GoodPlan,
): readonly TableBlock[] {
  const bought = lines.map(({ bottle }) => bottle);
  return builds.map(({ name }, index) => ({
    kind: 'table',
    id: `fills-${index + 1}`,
    title: `What to fill into ${name}`,
    ...(index > 0
      ? {}
      : {
          note: `Parts of each bottle, ${parts} in all. "Off by" is the typical deviation from the wanted damping, at worst over the blending rules.`,
        }),
    table: {
      columns: [
        { label: 'Oil at', unit: '' },
        ...bought.map((bottle) => ({ label: bottles[bottle]?.name ?? '', unit: '' })),
        { label: 'Off by', ...off },
      ],
      rows: fills
        .filter(({ build }) => build === name)
        .map(({ temperature, choice, mismatch }) => [
          celsius(temperature),
          ...bought.map((bottle) => partsOf(choice, bottle, parts)),
          mismatch,
        ]),
    },
  }));
}

/** Parts of a bottle in a fill; none where it is not in it. */
function partsOf({ first, second, secondShare }: FillChoice, bottle: number, parts: number): number | null {
  const ofSecond = Math.round(secondShare * parts);
  if (bottle === first) return parts - ofSecond;
  return bottle === second ? ofSecond : null;
}

/** What one bottle more would buy, the most useful first. */
export function furtherTable({ bottles }: OrderProblem, plan: GoodPlan): TableBlock {
  return {
    kind: 'table',
    id: 'further',
    title: 'What one bottle more would buy',
    note: '"Unmixed": fills that need one bottle alone. "Off": deviation from the wanted damping.',
    table: {
      columns: [
        { label: 'With', unit: '' },
        { label: 'Unmixed', ...off },
        { label: 'Off, mean', ...off },
        { label: 'Off, worst', ...off },
      ],
      rows: [
        ['this order', plan.aloneShare, plan.meanMismatch, plan.worstMismatch],
        ...plan.further
          .slice(0, 4)
          .map((one) => [
            `and ${bottles[one.bottle]?.name}`,
            one.aloneShare,
            one.meanMismatch,
            one.worstMismatch,
          ]),
      ],
    },
  };
}
