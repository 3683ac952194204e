import { fillName } from '../../lib/decisions/fill-choice.js';
import type { OrderPlan } from '../../lib/decisions/order-plan.js';
import type { OrderProblem } from '../../lib/decisions/order-problem.js';
import type { TableBlock } from '../../lib/page/page.js';
import { celsius, percent } from '../base/wording.js';

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
        { label: 'How many', unit: '' },
        { label: 'Used', unit: 'ml', dimension: 'volume' },
        ...price,
      ],
      rows: plan.lines.map(({ bottle, used, count }) => [
        bottles[bottle]?.name ?? '',
        count,
        used,
        ...(price.length === 0 ? [] : [count * (bottles[bottle]?.price ?? 0)]),
      ]),
    },
  };
}

/** What goes into which shock at which temperature. */
export function fillTable(
  { bottles, builds, temperatures, parts }: OrderProblem,
  plan: GoodPlan,
): TableBlock {
  const cell = (name: string, at: number): string => {
    const fill = plan.fills.find(({ build, temperature }) => build === name && temperature === at);
    return fill === undefined
      ? ''
      : `${fillName(bottles, fill.choice, parts)}, off by ${percent(fill.mismatch)}`;
  };
  return {
    kind: 'table',
    id: 'fills',
    title: 'What to fill',
    note: '"Off by" is the typical deviation from the wanted damping, at worst over the blending rules.',
    table: {
      columns: [{ label: 'Oil at', unit: '' }, ...builds.map(({ name }) => ({ label: name, unit: '' }))],
      rows: temperatures.map((at) => [celsius(at), ...builds.map(({ name }) => cell(name, at))]),
    },
  };
}

/** What one bottle more would buy, the most useful first. */
export function furtherTable({ bottles }: OrderProblem, plan: GoodPlan): TableBlock {
  return {
    kind: 'table',
    id: 'further',
    title: 'What one bottle more would buy',
    table: {
      columns: [
        { label: 'With', unit: '' },
        { label: 'Fills without mixing', ...off },
        { label: 'Off by, mean', ...off },
        { label: 'Off by, worst', ...off },
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
