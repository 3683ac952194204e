import { defineNotebook, type Page } from '../lib/page/index.js';
import { dotChart } from '../lib/plot/figure/dot-chart.js';
import { forceSources, oilSources } from './base/basis.js';
import {
  measuredCase,
  measuringAssumptions,
  measuringCautions,
  measuringSources,
  whichShock,
} from './base/measured-shocks.js';
import { readingsTables } from './base/readings-table.js';
import { percent } from './base/wording.js';
import { type Cause, rankedCauses } from './what-is-wrong/causes.js';
import { type TellingReading, tellingReading, tellsApart } from './what-is-wrong/telling-reading.js';

/** A chance below which a cause is not worth a word. */
const slight = 0.05;

function answerOf(
  name: string,
  [best, second]: readonly Cause[],
  telling: TellingReading | undefined,
): string {
  if (best === undefined) return `Nothing was asked of ${name}.`;
  const { length: count } = best.fit.residuals;
  if (second === undefined)
    return `${name} came out as planned, as far as ${count === 1 ? 'this one number tells' : `these ${count} numbers tell`}: no other oil, drill, gap, seal or temperature explains them better.`;
  const what =
    best.name === 'as planned'
      ? `${name} came out as planned, as far as these readings tell (${percent(best.chance)} likely among the causes below)`
      : `The likeliest cause of what ${name} does is ${best.name}, ${best.size} (${percent(best.chance)} among the causes below)`;
  if (second.chance < slight || telling === undefined) return `${what}.`;
  const next = `${second.name}, ${second.size}, is ${percent(second.chance)} likely`;
  if (telling.apart < tellsApart) return `${what}; ${next}, and no reading at home tells the two apart.`;
  return `${what}; ${next}. To tell the two apart, ${telling.name}, ${telling.minutes} minutes.`;
}

export const notebook = defineNotebook({
  name: 'what-is-wrong',
  order: 88,
  title: 'What is wrong with it',
  question: 'My shock came out different from its plan or its partner: why, and which reading would tell?',
  parameters: { which: whichShock },
  run(parts, { which }): Page {
    const measured = measuredCase(parts, which);
    const { name } = measured;
    const causes = rankedCauses(measured);
    const [best, second] = causes;
    const telling =
      best === undefined || second === undefined ? undefined : tellingReading(measured, best.fit, second.fit);
    const sum = causes.reduce((total, { chance }) => total + chance, 0);
    return {
      answer: answerOf(name, causes, telling),
      blocks: [
        {
          kind: 'figure',
          figure: dotChart({
            id: 'causes',
            title: `What explains the readings of ${name}`,
            alt: `${causes.map(({ name: cause, chance }) => `${cause} ${percent(chance)}`).join(', ')}. How likely each is after the readings, all as likely before.`,
            category: 'Cause',
            categories: causes.map(({ name: cause }) => cause),
            value: { label: 'Likely', unit: '%', dimension: 'ratio' },
            series: [
              {
                name: 'likely',
                dots: causes.map(({ name: cause, chance }) => ({ category: cause, value: chance })),
              },
            ],
          }),
        },
        {
          kind: 'table',
          id: 'cause-sizes',
          title: 'What each would have to be',
          table: {
            columns: [
              { label: 'Cause', unit: '' },
              { label: 'It would have to be', unit: '' },
              { label: 'Likely', unit: '%', dimension: 'ratio', digits: 2 },
              { label: 'Squares left', unit: '', digits: 3 },
            ],
            rows: causes.map(({ name: cause, size, chance, fit }) => [cause, size, chance, fit.cost]),
          },
          note: 'Squares left: what readings and stated sizes are still off, each over its uncertainty. A cause with more freedom leaves less, and is marked down for it.',
        },
        ...(best === undefined ? [] : readingsTables(best.fit)),
        {
          kind: 'list',
          items: [
            'Air in the oil is not among the causes: it has no part in a steady force, so that no drop and no scale tells it. A shaft that goes in further by hand, or a soft first millimetre, does.',
            'One cause at a time is asked. Two small ones together may look like one.',
          ],
        },
        {
          kind: 'check',
          claim:
            'The likelihoods add up to one, and no cause explains the readings worse than the plan from which it starts',
          passed:
            Math.abs(sum - 1) < 1e-9 &&
            causes.every(
              ({ fit }) =>
                fit.cost <= (causes.find(({ name: cause }) => cause === 'as planned')?.fit.cost ?? 0) + 1e-6,
            ),
          detail: `${causes.length} causes; sum ${sum.toFixed(6)}`,
          ifFailed: 'A search ended in the wrong place; do not trust the order',
          consistency: true,
        },
        { kind: 'caution', text: measuringCautions },
        {
          kind: 'assumptions',
          items: [
            'Before the readings all causes are as likely. Another oil may be off by a factor of 1.6, a drill by 0.15 mm, a gap by a factor of 2.7, a friction by 0.5 N, the oil by 8 K, each as a standard uncertainty: a guess (common practice, no source).',
            ...measuringAssumptions,
          ],
        },
      ],
      sources: [
        'MacKay, Information Theory, Inference, and Learning Algorithms (2003), ch. 28 (from memory): a cause that could explain anything is marked down.',
        ...measuringSources,
        ...forceSources,
        ...oilSources,
      ],
    };
  },
});
