import { InputError } from '../lib/base/input-error.js';
import {
  type DayPlan,
  type DayProblem,
  type DayStep,
  type DayTemperature,
  dayPlan,
} from '../lib/decisions/day/day-plan.js';
import { fillName } from '../lib/decisions/day/fill-choice.js';
import { speedRange } from '../lib/decisions/match/speed-weights.js';
import { finish } from '../lib/decisions/search/search.js';
import { defineNotebook, integer, onePart, type Page, quantity } from '../lib/page/index.js';
import { forceAssumptions, forceSources, oilSources, workCautions } from './base/basis.js';
import {
  blendCautions,
  damperOfBuild,
  decisionSources,
  feelsRight,
  shopOf,
  softOrHard,
  wantedOf,
} from './base/decision-cases.js';
import { speed, temperature } from './base/quantities.js';
import { requireSlowBelowFast } from './base/slow-below-fast.js';
import { celsius, clock, listed, percent, shaftSpeed } from './base/wording.js';
import { dayFigure } from './day-plan/figures.js';
import { dayTable } from './day-plan/tables.js';

export const notebook = defineNotebook({
  name: 'day-plan',
  order: 75,
  title: 'When to change the oil',
  question: 'As the day warms up, which oil when, and is the rebuild worth it?',
  parameters: {
    build: onePart({ list: 'builds', label: 'Build', help: 'The shock that the plan is for.' }),
    worthwhile: quantity({
      dimension: 'ratio',
      unit: '%',
      label: 'Worth a rebuild',
      help: 'How far the damping must be off before you would open the shock.',
      default: 12,
      min: 2,
      max: 60,
      step: 1,
    }),
    coldest: quantity({
      ...temperature,
      label: 'At 08:00',
      help: 'Oil at 08:00, where the parts file lists no day.',
      default: 10,
    }),
    hottest: quantity({
      ...temperature,
      label: 'At 15:00',
      help: 'Oil at 15:00, where the parts file lists no day.',
      default: 35,
    }),
    right: quantity({
      ...temperature,
      label: 'Feels right at',
      help: 'Oil temperature at which the build feels right, where the parts file says nothing of it.',
      default: 20,
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
      default: 4,
      min: 1,
      max: 20,
    }),
  },
  run(parts, values): Page {
    const { build, worthwhile, slow, fast, right } = values;
    requireSlowBelowFast(values);
    const weights = speedRange(slow, fast, 3);
    const problem: DayProblem = {
      damper: damperOfBuild(build),
      wanted: wantedOf(build, weights, right),
      bottles: shopOf(parts).bottles,
      temperatures: parts.day ?? warmingDay(values.coldest, values.hottest),
      worthwhile,
      parts: values.parts,
    };
    const plan = finish(dayPlan(problem));
    const { oil, temperature: at } = feelsRight(build, right);
    const worst = Math.max(...plan.steps.map(({ mismatch }) => mismatch));
    return {
      answer: answerOf(problem, plan, worst),
      blocks: [
        { kind: 'figure', figure: dayFigure(problem, plan) },
        dayTable(problem, plan),
        { kind: 'text', text: unchangedText(plan, worthwhile) },
        {
          kind: 'check',
          claim: 'With the plan the damping is never off by as much as a rebuild is worth',
          passed: worst <= worthwhile,
          detail: `worst ${percent(worst)}, worth a rebuild from ${percent(worthwhile)}; a failed line means that the shop list has nothing nearer`,
        },
        { kind: 'heading', text: 'Before you mix and fill' },
        ...[...blendCautions, ...workCautions].map((text) => ({ kind: 'caution', text }) as const),
        {
          kind: 'assumptions',
          items: [
            `${build.name} is wanted as it is on ${oil.name} at ${celsius(at)}.`,
            parts.day === undefined
              ? 'The parts file lists no day, so the oil warms evenly from 08:00 to 15:00.'
              : 'The oil temperatures are those of the parts file; between them nothing is known.',
            `Shaft speeds from ${shaftSpeed(slow)} to ${shaftSpeed(fast)}, both ways, count alike; "off by" is the typical deviation over them.`,
            'First as little time off as can be, then as few rebuilds, then as few mixed fills, then the smallest deviation.',
            ...forceAssumptions,
          ],
        },
      ],
      sources: [...decisionSources, ...oilSources, ...forceSources],
    };
  },
});

function warmingDay(coldest: number, hottest: number): readonly DayTemperature[] {
  if (coldest > hottest)
    throw new InputError({
      field: 'coldest',
      value: celsius(coldest),
      accepted: `at most ${celsius(hottest)}`,
    });
  return Array.from({ length: 8 }, (_, hour) => ({
    time: (8 + hour) * 3600,
    temperature: coldest + ((hottest - coldest) * hour) / 7,
  }));
}

function answerOf(
  { bottles, parts, worthwhile }: DayProblem,
  { steps, rebuilds }: DayPlan,
  worst: number,
): string {
  const [first] = steps;
  const last = hottestOf(steps);
  const name = (step: DayStep | undefined): string =>
    step === undefined ? '' : fillName(bottles, step.choice, parts);
  const changes = steps
    .filter(({ rebuilt }) => rebuilt)
    .map((step) => `change to ${name(step)} at ${clock(step.time)} (${celsius(step.temperature)})`);
  const start = `Start on ${name(first)}`;
  const left = `left alone it would be ${softOrHard(last?.unchangedRatio ?? 1)} at ${celsius(last?.temperature ?? 0)}`;
  const short =
    worst > worthwhile ? ` Nothing on the shop list is near enough: off by up to ${percent(worst)}.` : '';
  if (rebuilds > 0) return `${start}, ${listed(changes)}; ${left}.${short}`;
  const leave = `${start} and leave it: ${left}`;
  return short === '' ? `${leave}, which is not worth a rebuild.` : `${leave}.${short}`;
}

function hottestOf(steps: readonly DayStep[]): DayStep | undefined {
  return steps.reduce<DayStep | undefined>(
    (hottest, step) => (hottest === undefined || step.temperature > hottest.temperature ? step : hottest),
    undefined,
  );
}

function unchangedText({ worthwhileFrom }: DayPlan, worthwhile: number): string {
  return worthwhileFrom === undefined
    ? `Left alone, the fill of the morning is never off by more than ${percent(worthwhile)}.`
    : `Left alone, the fill of the morning is off by ${percent(worthwhile)} at ${clock(worthwhileFrom)}: from then on a rebuild is worth its work.`;
}
