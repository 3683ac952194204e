import { InputError } from '../lib/base/input-error.js';
import { type MeasuredShock, timedShock } from '../lib/decisions/pair/measured-shock.js';
import { bestPairing, comparedShocks, type Pairing, rankedPairs } from '../lib/decisions/pair/pairs.js';
import { type Block, defineNotebook, type Page, quantity } from '../lib/page/index.js';
import { listed, percent } from './base/wording.js';
import { pairFigure } from './pair/figures.js';
import { pairTable } from './pair/tables.js';

export const notebook = defineNotebook({
  name: 'pair',
  order: 85,
  title: 'Which two shocks make a pair',
  question: 'I timed my shocks: which belong together left and right, and can I tell at all?',
  parameters: {
    limit: quantity({
      dimension: 'ratio',
      unit: '%',
      label: 'Alike within',
      help: 'How much two shocks of a pair may differ.',
      default: 5,
      min: 1,
      max: 30,
      step: 1,
    }),
    hand: quantity({
      dimension: 'time',
      unit: 's',
      label: 'Your stopwatch',
      help: 'How far one time of yours is usually off (standard uncertainty).',
      default: 0.1,
      min: 0.005,
      max: 1,
      step: 0.005,
    }),
  },
  run(parts, { limit, hand }): Page {
    const timed = parts.timed ?? [];
    if (timed.length < 2)
      throw new InputError({
        field: 'timed',
        value: timed.length,
        accepted: '2 or more timed shocks in the parts file',
      });
    const shocks = timed.map(({ name, times }) => timedShock(name, times, hand));
    const pairing = bestPairing(shocks, limit);
    const worst = Math.max(...pairing.pairs.map(({ unlikeProbability }) => unlikeProbability));
    return {
      answer: answerOf(pairing, limit, worst),
      blocks: [
        { kind: 'figure', figure: pairFigure(shocks, limit) },
        pairTable(rankedPairs(shocks, limit), limit),
        ...swapText(shocks, pairing, limit),
        { kind: 'text', text: repeatsText(shocks, limit, hand) },
        {
          kind: 'check',
          claim: 'No other pairing has a better worst pair',
          passed: rankedPairs(shocks, limit).every((pair) => isNoBetter(pair, pairing, shocks, limit)),
          detail: `worst pair of the answer: ${percent(worst)} likely to differ by more than ${percent(limit)}`,
        },
        {
          kind: 'caution',
          text: 'Take the spring off without letting it fly, wear eye protection, and clear the space below the weight. The maker’s instructions and local rules come first.',
        },
        {
          kind: 'caution',
          text: 'Seal friction spoils this test when it is not small against the weight: with 0.8 N of friction, 0.05 N more of it slows a 120 g weight by an eighth. Wet the seals, work each shaft ten times first, and believe the order of the shocks more than the percents.',
        },
        {
          kind: 'assumptions',
          items: [
            'Every shock was timed over the same travel, under the same weight, at the same oil temperature, without a spring.',
            'The shaft moved slowly, so that the time is in proportion to the damping.',
            `One time is off by ${hand} s as a standard uncertainty, or by the scatter of the times where that is larger; the mean of n times by the root of n less.`,
            'The logarithm of the ratio of two shocks is normally distributed.',
          ],
        },
      ],
      sources: [
        'JCGM 100:2008, Guide to the Expression of Uncertainty in Measurement, 4.2 and 4.3.',
        'Wichura, Algorithm AS 241, Appl. Statist. 37 (1988) 477: the normal distribution.',
      ],
    };
  },
});

function answerOf({ pairs, left }: Pairing, limit: number, worst: number): string {
  const named = listed(pairs.map(({ first, second }) => `${first} with ${second}`));
  const rest = left === undefined ? '' : `; ${left} is left over`;
  const sure =
    worst < 0.05
      ? 'you can trust that'
      : worst < 0.5
        ? 'more repeats would make it surer'
        : 'that is not a pair until one of them is changed';
  return `Pair ${named}${rest}: at worst ${percent(worst)} likely that the two differ by more than ${percent(limit)}, so ${sure}.`;
}

function swapText(shocks: readonly MeasuredShock[], { pairs }: Pairing, limit: number): readonly Block[] {
  const [first, second] = shocks;
  if (first === undefined || second === undefined || shocks.length < 4) return [];
  const asListed = comparedShocks(first, second, limit);
  if (pairs.some((pair) => pair.first === first.name && pair.second === second.name))
    return [
      {
        kind: 'text',
        text: `${first.name} and ${second.name}, as listed, belong together: nothing to swap.`,
      },
    ];
  const partner = pairs.find((pair) => pair.first === first.name || pair.second === first.name);
  const swapped = partner?.first === first.name ? partner.second : partner?.first;
  return [
    {
      kind: 'text',
      text: `As listed, ${first.name} with ${second.name}, they are ${percent(asListed.unlikeProbability)} likely to differ by more than ${percent(limit)}: swap ${second.name} for ${swapped}.`,
    },
  ];
}

function repeatsText(shocks: readonly MeasuredShock[], limit: number, hand: number): string {
  const slowest = Math.min(...shocks.map(({ damping }) => damping));
  // Two equal shocks look unlike in 5 % of cases where the limit is two standard deviations of their difference.
  const needed = Math.max(1, Math.ceil(2 * (hand / slowest / (limit / 2)) ** 2));
  return `To tell a difference of ${percent(limit)} with this stopwatch, time each shock ${needed} times or more, or use more travel: twice the time needs a quarter of the repeats.`;
}

function isNoBetter(
  pair: { readonly first: string; readonly second: string; readonly unlikeProbability: number },
  pairing: Pairing,
  shocks: readonly MeasuredShock[],
  limit: number,
): boolean {
  if (shocks.length !== 4) return true;
  const others = shocks.filter(({ name }) => name !== pair.first && name !== pair.second);
  const [third, fourth] = others;
  if (third === undefined || fourth === undefined) return true;
  const worst = Math.max(pair.unlikeProbability, comparedShocks(third, fourth, limit).unlikeProbability);
  return worst >= Math.max(...pairing.pairs.map(({ unlikeProbability }) => unlikeProbability)) - 1e-9;
}
