import { damperModel } from '../../lib/damper/damper-model.js';
import { fillName } from '../../lib/decisions/day/fill-choice.js';
import type { OrderPlan } from '../../lib/decisions/order/order-plan.js';
import type { OrderProblem } from '../../lib/decisions/order/order-problem.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import type { Block } from '../../lib/page/blocks/block.js';
import { oilAlone } from '../base/oil-forces.js';
import { celsius, percent } from '../base/wording.js';
import { fillTables, furtherTable, orderTable } from './tables.js';

/** Tables and checks behind the answer. */
export function evidence(problem: OrderProblem, plan: OrderPlan, currency?: string): readonly Block[] {
  if (!plan.possible) return [];
  const [best] = plan.further;
  const gain =
    best === undefined
      ? 'The order takes the whole shop list.'
      : percent(best.aloneShare) === percent(plan.aloneShare)
        ? 'One bottle more would spare no mixing.'
        : `One bottle more buys convenience: with ${problem.bottles[best.bottle]?.name}, ${percent(best.aloneShare)} of the fills need no mixing instead of ${percent(plan.aloneShare)}.`;
  const blends = plan.fills.filter(({ choice }) => choice.second !== undefined).length;
  return [
    orderTable(problem, plan, currency),
    ...fillTables(problem, plan),
    { kind: 'text', text: gain },
    furtherTable(problem, plan),
    {
      kind: 'text',
      text: `${plan.fills.length} fills, ${blends} of them blends${blends === 0 ? '' : ` such as ${blendExample(problem, plan)}`}; the worst is off by ${percent(plan.worstMismatch)}.`,
    },
    ...lawCheck(problem, plan),
  ];
}

function blendExample(
  { bottles, parts }: OrderProblem,
  plan: OrderPlan & { readonly possible: true },
): string {
  const blend = plan.fills.find(({ choice }) => choice.second !== undefined);
  return blend === undefined ? 'none' : fillName(bottles, blend.choice, parts);
}

/**
 * The mismatch of the first fill again, force by force in the full model and without the kernel and window of the plan.
 */
function lawCheck(
  { bottles, builds }: OrderProblem,
  plan: OrderPlan & { readonly possible: true },
): readonly Block[] {
  const fill = plan.fills.find(({ choice }) => choice.second === undefined) ?? plan.fills[0];
  const build = builds.find(({ name }) => name === fill?.build);
  const bottle = fill === undefined ? undefined : bottles[fill.choice.first];
  // Blends rest on rules of their own; a plan of nothing else has no fill to work out again so.
  if (fill === undefined || build === undefined || bottle === undefined || fill.choice.second !== undefined)
    return [];
  // As the plan takes it: at rest, and whole.
  const { kinematicViscosity, density } = fluidAt(bottle.oil, fill.temperature);
  const model = damperModel(build.damper, { kinematicViscosity, density });
  const { weights, forces } = build.wanted;
  let squares = 0;
  let sum = 0;
  for (const [place, { speed, weight }] of weights.entries()) {
    squares += weight * Math.log(oilAlone(model, speed) / (forces[place] ?? Number.NaN)) ** 2;
    sum += weight;
  }
  const again = Math.exp(Math.sqrt(squares / sum)) - 1;
  return [
    {
      kind: 'check',
      claim: `${build.name} on ${bottle.name} at ${celsius(fill.temperature)}, force by force, is off by what the plan says`,
      passed: Math.abs(again - fill.mismatch) < 1e-3,
      detail: `${percent(again)} against ${percent(fill.mismatch)}`,
      ifFailed: 'Compare the oils on their own page before you buy',
    },
  ];
}
