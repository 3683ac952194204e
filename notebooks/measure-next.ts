import { usualLawError } from '../lib/measure/answer/law-error.js';
import { type Advice, nextMeasurement, type Plan } from '../lib/measure/answer/next-measurement.js';
import { fitShock } from '../lib/measure/fit/fit-shock.js';
import { parameterOf } from '../lib/measure/fit/unknown.js';
import { defineNotebook, type Page, quantity } from '../lib/page/index.js';
import type { Parts } from '../lib/parts/parts.js';
import { dotChart } from '../lib/plot/figure/dot-chart.js';
import { oilSources } from './base/basis.js';
import {
  caseOf,
  type MeasuredShockCase,
  measuredCase,
  measuringAssumptions,
  measuringCautions,
  measuringSources,
  whichShock,
} from './base/measured-shocks.js';
import { possibleMeasurements } from './base/possible-measurements.js';
import { middleSpeed } from './base/shaft-speeds.js';
import { finePercent, shaftSpeed } from './base/wording.js';

/** The measured shock; where the file has no measurements, its first build as stated. */
function caseToImprove(parts: Parts, which: number): MeasuredShockCase {
  const [build] = parts.builds;
  if ((parts.measurements ?? []).length > 0 || build === undefined) return measuredCase(parts, which);
  return caseOf(parts, build, build.name, []);
}

/** What to do, how long it takes, and what is left of the doubt. */
function answerOf(
  name: string,
  { next, now, enough, singles, pairs }: Advice,
  total: (doubt: number) => number,
  speed: number,
): string {
  const doubt = `the doubt of the force of ${name} at ${shaftSpeed(speed)}`;
  const best = singles[0] ?? next;
  if (enough)
    return `Enough: ${doubt} is ${finePercent(total(now))}, and the best further reading, ${best.names[0]}, would leave ${finePercent(total(best.after))}.`;
  const [first = ''] = next.names;
  // Often one reading tells little until another parts friction from damping.
  const pair = pairs.find(({ names }) => names.includes(first));
  const second = pair?.names.find((one) => one !== first);
  const then =
    pair === undefined || second === undefined
      ? ''
      : `, and to ${finePercent(total(pair.after))} once you also ${second}`;
  return `Next, ${first}, ${next.minutes} minutes: ${doubt} falls from ${finePercent(total(now))} to ${finePercent(total(next.after))}${then}.`;
}

/** What brings nothing, which is not obvious: the same weight again by a better clock. */
function idleSentence({ singles, now }: Advice): string {
  const idle = singles.filter(({ after }) => after > 0.98 * now).map(({ names }) => names[0] ?? '');
  return idle.length === 0
    ? 'Each of the readings below would help.'
    : `These would bring next to nothing: ${idle.join('; ')}.`;
}

const table = (id: string, title: string, plans: readonly Plan[], total: (doubt: number) => number) =>
  ({
    kind: 'table',
    id,
    title,
    table: {
      columns: [
        { label: 'Reading', unit: '' },
        { label: 'Time', unit: 'min', digits: 2 },
        { label: 'Doubt left', unit: '%', dimension: 'ratio', digits: 2 },
        { label: 'Doubt taken off a minute', unit: '%', dimension: 'ratio', digits: 2 },
      ],
      rows: plans.map(({ names, minutes, after, gainPerMinute }) => [
        names.join(', and '),
        minutes,
        total(after),
        gainPerMinute,
      ]),
    },
  }) as const;

/** Inverting what is known of unknowns of very unlike sizes loses digits: 2e-9 was seen, where a page shows two of them. */
const rounding = 1e-6;

export const notebook = defineNotebook({
  name: 'measure-next',
  order: 87,
  title: 'What to measure next',
  question: 'Which reading would tell me most about my shock, and how long does it take?',
  parameters: {
    which: whichShock,
    speed: middleSpeed,
    law: quantity({
      dimension: 'ratio',
      unit: '%',
      label: 'Trust in the law',
      help: 'How far the law itself may be off whatever you measure, as a standard uncertainty.',
      default: 100 * usualLawError.inside,
      min: 0,
      max: 20,
      step: 0.5,
    }),
  },
  run(parts, { which, speed, law }): Page {
    const improved = caseToImprove(parts, which);
    const { problem, name, temperature, build } = improved;
    const parameters =
      problem.readings.length > 0
        ? fitShock(problem).parameters
        : problem.unknowns.map((unknown) => parameterOf(unknown, problem.known[unknown.quantity]));
    const place = { position: build.shock.stroke / 2, temperature };
    const question = { ...place, speeds: [speed, -speed], lawDeviation: law };
    const advice = nextMeasurement(problem, [parameters], possibleMeasurements(improved), question);
    const total = (doubt: number): number => Math.hypot(doubt, law);
    const { singles, pairs, now } = advice;
    return {
      answer: answerOf(name, advice, total, speed),
      blocks: [
        {
          kind: 'figure',
          figure: dotChart({
            id: 'doubt-left',
            title: `Doubt of the force of ${name} after one more reading`,
            alt: `Now it is ${finePercent(total(now))}; of what could be read next, "${singles[0]?.names[0]}" leaves the least, ${finePercent(total(singles[0]?.after ?? now))}. One standard uncertainty of the damping force at ${shaftSpeed(speed)}, the law's own ${finePercent(law)} in it.`,
            category: 'Next reading',
            categories: singles.map(({ names }) => names[0] ?? ''),
            value: { label: 'Doubt left', unit: '%', dimension: 'ratio' },
            series: [
              {
                name: 'doubt',
                dots: singles.map(({ names, after }) => ({ category: names[0] ?? '', value: total(after) })),
              },
            ],
          }),
        },
        { kind: 'text', text: idleSentence(advice) },
        table('next-readings', 'Each reading by itself', singles, total),
        table('next-pairs', 'The best two together', pairs.slice(0, 6), total),
        {
          kind: 'check',
          claim: 'No reading adds doubt, and no pair leaves more than the better of its two',
          passed:
            singles.every(({ after }) => after <= now * (1 + rounding)) &&
            pairs.every(({ names, after }) =>
              singles.every(
                ({ names: [one = ''], after: alone }) =>
                  !names.includes(one) || after <= alone * (1 + rounding),
              ),
            ),
          detail: `${singles.length} readings and ${pairs.length} pairs compared`,
          ifFailed: 'Do not trust the order',
          consistency: true,
        },
        { kind: 'caution', text: measuringCautions },
        {
          kind: 'assumptions',
          items: [
            'Doubt is one standard uncertainty of the damping force, linear about what is known now; the minutes are a guess (common practice, no source).',
            ...measuringAssumptions,
          ],
        },
      ],
      sources: [
        'Atkinson, Donev & Tobias, Optimum Experimental Designs (2007), ch. 10 and 17 (from memory): the next measurement.',
        ...measuringSources,
        ...oilSources,
      ],
    };
  },
});
