import { fillName } from '../../lib/decisions/day/fill-choice.js';
import type { OrderPlan } from '../../lib/decisions/order/order-plan.js';
import type { OrderProblem } from '../../lib/decisions/order/order-problem.js';
import type { Block } from '../../lib/page/blocks/block.js';
import { celsius, percent } from '../base/wording.js';
import { fillTables, furtherTable, orderTable } from './tables.js';

/** Tables and checks behind the answer. */
export function evidence(problem: OrderProblem, plan: OrderPlan, currency?: string): readonly Block[] {
  if (!plan.possible)
    return [
      {
        kind: 'list',
        items: plan.unserved
          .slice(0, 12)
          .map(({ build, temperature: at }) => `${build} at ${celsius(at)}: nothing serves.`),
      },
    ];
  const [best] = plan.further;
  const gain =
    best === undefined
      ? 'The order takes the whole shop list.'
      : `One bottle more buys convenience: with ${problem.bottles[best.bottle]?.name}, ${percent(best.aloneShare)} of the fills need no mixing instead of ${percent(plan.aloneShare)}.`;
  const blends = plan.fills.filter(({ choice }) => choice.second !== undefined).length;
  return [
    orderTable(problem, plan, currency),
    ...fillTables(problem, plan),
    { kind: 'text', text: gain },
    furtherTable(problem, plan),
    {
      kind: 'check',
      claim: 'Every fill of the plan is within the tolerance',
      passed: plan.worstMismatch <= problem.tolerance + 1e-9,
      detail: `worst ${percent(plan.worstMismatch)}, tolerance ${percent(problem.tolerance)}; ${plan.fills.length} fills, ${blends} of them blends such as ${blendExample(problem, plan)}`,
    },
    {
      kind: 'check',
      claim: 'The oil used is the oil filled',
      passed: Math.abs(usedVolume(plan) / filledVolume(problem) - 1) < 1e-9,
      detail: `${(1e6 * usedVolume(plan)).toFixed(0)} ml from the bottles, ${(1e6 * filledVolume(problem)).toFixed(0)} ml into the shocks`,
    },
  ];
}

function blendExample(
  { bottles, parts }: OrderProblem,
  plan: OrderPlan & { readonly possible: true },
): string {
  const blend = plan.fills.find(({ choice }) => choice.second !== undefined);
  return blend === undefined ? 'none' : fillName(bottles, blend.choice, parts);
}

function usedVolume(plan: OrderPlan & { readonly possible: true }): number {
  return plan.lines.reduce((sum, { used }) => sum + used, 0);
}

function filledVolume({ builds, fills }: OrderProblem): number {
  return builds.reduce((sum, { fillVolume }) => sum + fills * fillVolume, 0);
}
