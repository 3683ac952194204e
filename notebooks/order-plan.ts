import { InputError } from '../lib/base/input-error.js';
import { speedRange } from '../lib/decisions/match/speed-weights.js';
import type { OrderPlan } from '../lib/decisions/order/order-plan.js';
import { orderPlan } from '../lib/decisions/order/order-plan-by-trying.js';
import type { OrderBuild, OrderProblem } from '../lib/decisions/order/order-problem.js';
import { finish } from '../lib/decisions/search/search.js';
import { defineNotebook, integer, type Page, quantity, severalParts } from '../lib/page/index.js';
import { forceAssumptions, forceSources, oilSources, workCautions } from './base/basis.js';
import {
  blendCautions,
  damperOfBuild,
  decisionSources,
  feelsRight,
  oilInside,
  shopOf,
  wantedBuilds,
  wantedOf,
} from './base/decision-cases.js';
import { speed, temperature } from './base/quantities.js';
import { requireSlowBelowFast } from './base/slow-below-fast.js';
import { celsius, listed, percent, shaftSpeed } from './base/wording.js';
import { evidence } from './order-plan/evidence.js';
import { wantedLabelFigure } from './order-plan/figures.js';

export const notebook = defineNotebook({
  name: 'order-plan',
  order: 70,
  title: 'Which bottles to buy',
  question:
    'What is the smallest set of bottles that keeps all my shocks right from a cold morning to a hot afternoon?',
  parameters: {
    builds: severalParts({
      list: 'builds',
      atMost: 6,
      label: 'Builds',
      help: 'The shocks that the order is for; those with wanted damping in the parts file, where there are some.',
    }),
    coldest: quantity({ ...temperature, label: 'Coldest', help: 'Coldest oil of the day.', default: 8 }),
    hottest: quantity({ ...temperature, label: 'Hottest', help: 'Hottest oil of the day.', default: 38 }),
    right: quantity({
      ...temperature,
      label: 'Feels right at',
      help: 'Oil temperature at which a build feels right, where the parts file says nothing of it.',
      default: 20,
    }),
    tolerance: quantity({
      dimension: 'ratio',
      unit: '%',
      label: 'Tolerance',
      help: 'How far the damping may be off before you would notice.',
      default: 10,
      min: 2,
      max: 50,
      step: 1,
    }),
    slow: quantity({
      ...speed,
      label: 'Slow',
      help: 'Slow end of the shaft speeds that count.',
      default: 50,
    }),
    fast: quantity({
      ...speed,
      label: 'Fast',
      help: 'Fast end of the shaft speeds that count.',
      default: 300,
    }),
    parts: integer({
      label: 'Parts',
      help: 'In how many parts you measure a blend; 1 for no blends.',
      default: 10,
      min: 1,
      max: 20,
    }),
    fills: integer({
      label: 'Fills',
      help: 'How often each build is filled in a season.',
      default: 6,
      min: 1,
      max: 100,
    }),
  },
  run(parts, values): Page {
    const { coldest, hottest, slow, fast, right, tolerance } = values;
    if (!(coldest < hottest))
      throw new InputError({
        field: 'coldest',
        value: celsius(coldest),
        accepted: `below the hottest, ${celsius(hottest)}`,
      });
    requireSlowBelowFast(values);
    const { bottles, currency } = shopOf(parts);
    const weights = speedRange(slow, fast, 3);
    const chosen = wantedBuilds(values.builds);
    const builds = chosen.map(
      (build): OrderBuild => ({
        name: build.name,
        damper: damperOfBuild(build),
        wanted: wantedOf(build, weights, right),
        fillVolume: build.quantity * oilInside(build),
      }),
    );
    const temperatures = Array.from({ length: 7 }, (_, index) => coldest + ((hottest - coldest) * index) / 6);
    const problem: OrderProblem = {
      bottles,
      builds,
      temperatures,
      tolerance,
      parts: values.parts,
      fills: values.fills,
    };
    const plan = finish(orderPlan(problem));
    return {
      answer: answerOf(problem, plan, currency),
      blocks: [
        { kind: 'figure', figure: wantedLabelFigure(problem, plan) },
        ...evidence(problem, plan, currency),
        { kind: 'heading', text: 'Before you mix and fill' },
        ...[...blendCautions, ...workCautions].map((text) => ({ kind: 'caution', text }) as const),
        {
          kind: 'assumptions',
          items: [
            ...chosen.map((build) => {
              const { oil, temperature: at } = feelsRight(build, right);
              return `${build.name} is wanted as it is on ${oil.name} at ${celsius(at)}.`;
            }),
            `Shaft speeds from ${shaftSpeed(slow)} to ${shaftSpeed(fast)}, both ways, count alike; "off by" is the typical deviation over them.`,
            `A blend counts only where it is within the tolerance by every blending rule. Blends are measured in ${values.parts} parts by volume.`,
            'Each build is filled as often at every temperature listed.',
            ...forceAssumptions,
          ],
        },
      ],
      sources: [...decisionSources, ...oilSources, ...forceSources],
    };
  },
});

function answerOf(
  { bottles, builds, temperatures, tolerance }: OrderProblem,
  plan: OrderPlan,
  currency?: string,
): string {
  const range = `from ${celsius(temperatures[0] ?? 0)} to ${celsius(temperatures.at(-1) ?? 0)}`;
  if (!plan.possible) {
    const [first] = plan.unserved;
    return `No bottle of the shop list and no blend of two keeps every build within ${percent(tolerance)} ${range}: ${first?.build} at ${celsius(first?.temperature ?? 0)} is out of reach.`;
  }
  const names = plan.lines.map(
    ({ bottle, count }) => `${count > 1 ? `${count} × ` : ''}${bottles[bottle]?.name}`,
  );
  const price =
    plan.price === undefined || currency === undefined ? '' : ` (${plan.price.toFixed(2)} ${currency})`;
  const many = builds.length === 1 ? 'the shock' : `all ${builds.length} builds`;
  return `Buy ${listed(names)}${price}: alone or blended they keep ${many} within ${percent(plan.worstMismatch)} of the wanted damping ${range}, and no smaller set of bottles stays within ${percent(tolerance)}.`;
}
