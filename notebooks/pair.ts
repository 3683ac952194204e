import { InputError } from '../lib/base/input-error.js';
import { usualUncertainty } from '../lib/measure/reading/reading.js';
import { type Block, defineNotebook, type Page, quantity } from '../lib/page/index.js';
import { percent } from './base/wording.js';
import { likelihoodCheck } from './pair/checks.js';
import { timesFigure } from './pair/figures.js';
import { sealSpread, timedGroups } from './pair/groups.js';
import { pairTable } from './pair/tables.js';
import { frictionSentence, groupSentence, repeatsSentence, swapSentence } from './pair/words.js';

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
      help: 'How much the damping of a pair may differ.',
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
      default: usualUncertainty.stopwatch,
      min: 0.005,
      max: 1,
      step: 0.005,
    }),
    weight: quantity({
      dimension: 'mass',
      unit: 'g',
      label: 'Weight',
      help: 'What hung on the shaft, rod end and shaft counted in.',
      default: 120,
      min: 10,
      max: 2000,
      step: 10,
    }),
  },
  run(parts, timing): Page {
    const { hand, limit } = timing;
    const groups = timedGroups(parts, timing);
    const paired = groups.filter(({ pairing }) => pairing !== undefined);
    if (paired.length === 0)
      throw new InputError({
        field: 'timed',
        value: parts.timed?.length ?? 0,
        accepted:
          '2 or more timed shocks of one build in the parts file, each with its name, its build and its times',
      });
    const alone = groups.filter(({ pairing }) => pairing === undefined);
    const swaps = paired.flatMap((group) => swapSentence(group, limit) ?? []);
    return {
      answer: [...paired, ...alone].map((group) => groupSentence(group, limit)).join(' '),
      blocks: [
        ...paired.flatMap((group, place): readonly Block[] => [
          { kind: 'figure', figure: timesFigure(group, place, limit) },
          pairTable(group, place, limit),
        ]),
        ...(swaps.length === 0 ? [] : [{ kind: 'list', items: swaps } as const]),
        { kind: 'list', items: paired.map((group) => frictionSentence(group, timing)) },
        { kind: 'text', text: repeatsSentence(paired, timing) },
        likelihoodCheck(paired, timing),
        {
          kind: 'caution',
          text: 'Take the spring off without letting it fly, wear eye protection, and clear the space below the weight. The maker’s instructions and local rules come first.',
        },
        {
          kind: 'assumptions',
          items: [
            'Every shock of a build was timed over the same travel, under the same weight, at the same oil temperature, without a spring. Shocks of different builds are never compared.',
            'The shaft moved slowly, so that the time is in proportion to the damping; the push of the gas is alike for like shocks.',
            `One time is off by ${hand} s as a standard uncertainty, or by the scatter of the times where that is larger; the mean of n times by the root of n less.`,
            `Seals of one make differ in moving friction by ${percent(sealSpread)} as a standard uncertainty: a guess (common practice, no source).`,
            'The logarithm of the ratio of two shocks is normally distributed.',
          ],
        },
      ],
      sources: [
        'JCGM 100:2008, Guide to the Expression of Uncertainty in Measurement, 4.2, 4.3 and 5.1.2.',
        'Wichura, Algorithm AS 241, Appl. Statist. 37 (1988) 477: the normal distribution.',
      ],
    };
  },
});
