import { InputError } from '../lib/base/input-error.js';
import type { DayTemperature } from '../lib/decisions/day/day-plan.js';
import { type Block, defineNotebook, integer, type Page, quantity, severalParts } from '../lib/page/index.js';
import { forceAssumptions, forceSources, oilSources, workCautions } from './base/basis.js';
import { coldestOil, hottestOil } from './base/day.js';
import {
  blendCautions,
  decisionSources,
  feelsRight,
  labelsTaken,
  leftOut,
  shelfOf,
  thinningLeftOut,
  wantedBuilds,
} from './base/decision-cases.js';
import { fastSpeed } from './base/fast-speed.js';
import { temperature } from './base/quantities.js';
import {
  countedText,
  middleSpeed,
  requireRisingSpeeds,
  slowSpeed,
  speedsThatCount,
} from './base/shaft-speeds.js';
import { speedsSentence } from './base/speed-events.js';
import { celsius, listed } from './base/wording.js';
import { buildDays } from './day-plan/build-days.js';
import { singleBottleCheck } from './day-plan/checks.js';
import { dayFigure } from './day-plan/figures.js';
import { dayTable } from './day-plan/tables.js';
import { daySentence, unchangedSentence } from './day-plan/words.js';

export const notebook = defineNotebook({
  name: 'day-plan',
  order: 75,
  title: 'When to change the oil',
  question: 'As the day warms up, which oil when, and is the rebuild worth it?',
  parameters: {
    builds: severalParts({
      list: 'builds',
      atMost: 6,
      label: 'Builds',
      help: 'The shocks that the plan is for; those with wanted damping in the parts file, where there are some.',
    }),
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
    coldest: coldestOil,
    hottest: hottestOil,
    right: quantity({
      ...temperature,
      label: 'Feels right at',
      help: 'Oil temperature at which the build feels right, where the parts file says nothing of it.',
      default: 20,
    }),
    slow: slowSpeed,
    middle: middleSpeed,
    fast: fastSpeed,
    blend: integer({
      label: 'Parts',
      help: 'In how many parts you measure a blend; 1 for no blends.',
      default: 4,
      min: 1,
      max: 20,
    }),
  },
  run(parts, values): Page {
    const { worthwhile, right } = values;
    requireRisingSpeeds(values);
    const readings = parts.day ?? warmingDay(values.coldest, values.hottest);
    const chosen = wantedBuilds(values.builds);
    const shelf = shelfOf(parts);
    const days = buildDays(chosen, shelf, readings, {
      weights: speedsThatCount(values),
      right,
      worthwhile,
      blend: values.blend,
    });
    const missing = leftOut(parts, chosen);
    const times = new Set(readings.map(({ time }) => time));
    return {
      answer: days.map(daySentence).join(' '),
      blocks: [
        ...days.flatMap((day, place): readonly Block[] => [
          // One reading is no course of a day.
          ...(day.plan.steps.length < 2 ? [] : [{ kind: 'figure', figure: dayFigure(day, place) } as const]),
          dayTable(day, place, times),
        ]),
        { kind: 'list', items: days.map(unchangedSentence) },
        ...days.map(singleBottleCheck),
        { kind: 'heading', text: 'Before you mix and fill' },
        ...[...blendCautions, ...workCautions].map((text) => ({ kind: 'caution', text }) as const),
        {
          kind: 'assumptions',
          items: [
            ...chosen.map((build) => {
              const { oil, temperature: at } = feelsRight(build, right);
              return `${build.name} is wanted as it is on ${oil.name} at ${celsius(at)}.`;
            }),
            ...(missing.length === 0 ? [] : [`Left out, since not chosen: ${listed(missing)}.`]),
            parts.day === undefined
              ? 'The parts file lists no day, so the oil warms evenly from 08:00 to 15:00 between the two temperatures of the controls.'
              : 'The oil temperatures are those of the day in the parts file; between two readings they are taken straight from one to the next, and the plan holds there too.',
            ...labelsTaken(shelf),
            ...thinningLeftOut(shelf),
            countedText(values),
            speedsSentence(parts.builds, values),
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
