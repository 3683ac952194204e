import { InputError } from '../lib/base/input-error.js';
import type { OrderLine, OrderPlan } from '../lib/decisions/order/order-plan.js';
import { orderPlanByTrying } from '../lib/decisions/order/order-plan-by-trying.js';
import type { OrderBuild, OrderProblem } from '../lib/decisions/order/order-problem.js';
import { finish } from '../lib/decisions/search/search.js';
import { type Block, defineNotebook, integer, type Page, quantity, severalParts } from '../lib/page/index.js';
import { forceAssumptions, forceSources, oilSources, workCautions } from './base/basis.js';
import { coldestOil, hottestOil } from './base/day.js';
import {
  blendCautions,
  damperOfBuild,
  decisionSources,
  feelsRight,
  labelsTaken,
  leftOut,
  shelfOf,
  thinningLeftOut,
  wantedBuilds,
  wantedOf,
} from './base/decision-cases.js';
import { fastSpeed } from './base/fast-speed.js';
import { oilPoured } from './base/oil-poured.js';
import { temperature } from './base/quantities.js';
import {
  countedText,
  middleSpeed,
  requireRisingSpeeds,
  slowSpeed,
  speedsThatCount,
} from './base/shaft-speeds.js';
import { speedsSentence } from './base/speed-events.js';
import { celsius, listed, percent } from './base/wording.js';
import { labelDoubts, unservedSentences } from './order-plan/doubts.js';
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
    coldest: coldestOil,
    hottest: hottestOil,
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
    slow: slowSpeed,
    middle: middleSpeed,
    fast: fastSpeed,
    blend: integer({
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
    const { coldest, hottest, right, tolerance } = values;
    if (!(coldest < hottest))
      throw new InputError({
        field: 'coldest',
        value: celsius(coldest),
        accepted: `below the hottest, ${celsius(hottest)}`,
      });
    requireRisingSpeeds(values);
    const { bottles, owned, currency } = shelfOf(parts);
    const weights = speedsThatCount(values);
    const chosen = wantedBuilds(values.builds);
    const builds = chosen.map(
      (build): OrderBuild => ({
        name: build.name,
        damper: damperOfBuild(build),
        wanted: wantedOf(build, weights, right),
        fillVolume: build.quantity * oilPoured(build),
      }),
    );
    const temperatures = Array.from({ length: 7 }, (_, index) => coldest + ((hottest - coldest) * index) / 6);
    const problem: OrderProblem = {
      bottles,
      owned,
      builds,
      temperatures,
      tolerance,
      parts: values.blend,
      fills: values.fills,
    };
    const plan = finish(orderPlanByTrying(problem));
    const missing = leftOut(parts, chosen);
    return {
      answer: answerOf(problem, plan, currency),
      blocks: [
        { kind: 'figure', figure: wantedLabelFigure(problem, plan) },
        ...evidence(problem, plan, currency),
        ...said('Not served', unservedSentences(problem, plan.unserved)),
        ...said('Sold by a label', labelDoubts(problem, plan)),
        { kind: 'heading', text: 'Before you mix and fill' },
        ...[...blendCautions, ...workCautions].map((text) => ({ kind: 'caution', text }) as const),
        {
          kind: 'assumptions',
          items: [
            ...chosen.map((build) => {
              const { oil, temperature: at } = feelsRight(build, right);
              return `${build.name} is wanted as it is on ${oil.name} at ${celsius(at)}.`;
            }),
            ...labelsTaken({ bottles }),
            ...thinningLeftOut({ bottles }),
            countedText(values),
            speedsSentence(parts.builds, values),
            ...(missing.length === 0 ? [] : [`Left out, since not chosen: ${listed(missing)}.`]),
            owned.length === 0
              ? 'No bottle is taken to be at hand; every bottle of the order is bought.'
              : `At hand, one full bottle each, since the file lists them beside its shop: ${listed(owned.map((place) => bottles[place]?.name ?? ''))}.`,
            'A fill counts the oil poured to the rim; what comes out again is not poured twice.',
            `A blend counts only where it is within the tolerance by every blending rule. Blends are measured in ${values.blend} parts by volume.`,
            'Each build is filled as often at every temperature listed.',
            ...forceAssumptions,
          ],
        },
      ],
      sources: [...decisionSources, ...oilSources, ...forceSources],
    };
  },
});

function said(title: string, items: readonly string[]): readonly Block[] {
  return items.length === 0
    ? []
    : [
        { kind: 'heading', text: title },
        { kind: 'list', items },
      ];
}

function answerOf(problem: OrderProblem, plan: OrderPlan, currency?: string): string {
  const { bottles, builds, temperatures, tolerance } = problem;
  const range = `from ${celsius(temperatures[0] ?? 0)} to ${celsius(temperatures.at(-1) ?? 0)}`;
  const [why] = unservedSentences(problem, plan.unserved);
  if (!plan.possible)
    return `No bottle and no blend of two keeps any build within ${percent(tolerance)} ${range}. ${why ?? ''}`;
  const named = (lines: readonly OrderLine[], count: (line: OrderLine) => number) =>
    listed(lines.map((line) => `${count(line) > 1 ? `${count(line)} × ` : ''}${bottles[line.bottle]?.name}`));
  const bought = plan.lines.filter(({ count }) => count > 0);
  const used = plan.lines.filter(({ owned }) => owned);
  const price =
    plan.price === undefined || currency === undefined ? '' : ` (${plan.price.toFixed(2)} ${currency})`;
  const order = bought.length === 0 ? 'Buy nothing' : `Buy ${named(bought, ({ count }) => count)}${price}`;
  const shelf =
    used.length === 0
      ? ''
      : `${bought.length === 0 ? ': ' : ', and with '}${named(used, () => 1)} that you have${bought.length === 0 ? '' : ','}`;
  const whole = builds.length === 1 ? 'the shock' : `all ${builds.length} builds`;
  const what = plan.unserved.length === 0 ? whole : 'what can be served';
  const single = plan.lines.length === 1;
  const subject =
    used.length === 0
      ? single
        ? ': alone it keeps'
        : ': alone or blended they keep'
      : bought.length === 0
        ? ` ${used.length === 1 ? 'keeps' : 'keep'}`
        : ' alone or blended they keep';
  const fewer =
    bought.length === 0 || single ? '' : `, and no fewer bottles stay within ${percent(tolerance)}`;
  const rest = why === undefined ? '' : ` ${why}`;
  return `${order}${shelf}${subject} ${what} within ${percent(plan.worstMismatch)} of the wanted damping ${range}${fewer}.${rest}`;
}
