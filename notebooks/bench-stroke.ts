import { choice, defineNotebook, onePart, type Page, quantity } from '../lib/page/index.js';
import { forceSources, oilSources, workCautions } from './base/basis.js';
import { oilTemperature } from './base/day.js';
import { motionAssumptions, motionSources } from './base/moving-build.js';
import { shockAtWork } from './base/shock-at-work.js';
import { celsius } from './base/wording.js';
import { energyCheck } from './bench-stroke/checks.js';
import { forceTimeFigure, forceTravelFigure, forceVelocityFigure } from './bench-stroke/figures.js';
import { recordedAnswer } from './bench-stroke/recorded-page.js';
import {
  requireWithinTravel,
  strokedOrLocked,
  strokedOrRefused,
  usualAmplitude,
} from './bench-stroke/stroked.js';
import { energyTable, figuresTable } from './bench-stroke/tables.js';
import { answerSentence, courseSentences, shownStroke } from './bench-stroke/words.js';

const airEnds = ['bubbles', 'early release'] as const;
const airNames = { bubbles: 'with bubbles', 'early release': 'that lets air go early' };

export const notebook = defineNotebook({
  name: 'bench-stroke',
  order: 44,
  title: 'What a test bench would draw',
  question:
    'How hard does a stroke to and fro push and pull, how much energy does it take, and what does the loop tell?',
  takes: 'recorded-stroke',
  parameters: {
    build: onePart({ list: 'builds', label: 'Build', help: 'The shock on the bench, without its spring.' }),
    wave: choice({
      label: 'Wave',
      help: 'A sine, as a crank makes it, or a triangle: one speed to and fro.',
      options: ['sine', 'triangle'],
      default: 'sine',
    }),
    amplitude: quantity({
      dimension: 'length',
      unit: 'mm',
      label: 'Amplitude',
      help: 'How far the shaft moves to each side of the middle of its travel.',
      default: 10,
      min: 0.5,
      max: 25,
      step: 0.5,
      inFile: usualAmplitude,
    }),
    frequency: quantity({
      dimension: 'frequency',
      unit: 'Hz',
      label: 'Frequency',
      help: 'How often the shaft goes in and comes out in a second.',
      default: 5,
      min: 0.2,
      max: 30,
      step: 0.2,
    }),
    temperature: oilTemperature,
  },
  run(parts, { build, wave, amplitude, frequency, temperature }): Page {
    requireWithinTravel(build, amplitude);
    const asked = { build, wave, amplitude, frequency, temperature };
    const own = strokedOrRefused(asked);
    const ends = airEnds.flatMap((end) => strokedOrLocked(asked, end) ?? []);
    const locked = airEnds.filter((end) => !ends.some((one) => one.end === end));
    const all = [own, ...ends];
    const { recordedStroke } = parts;
    const recorded = recordedStroke && recordedAnswer(build, temperature, recordedStroke);
    return {
      answer: [...(recorded === undefined ? [] : [recorded.sentence]), answerSentence(all, asked)].join(' '),
      blocks: [
        ...(recorded === undefined
          ? []
          : [...recorded.blocks, { kind: 'heading', text: `A ${wave} beside it` } as const]),
        // What was recorded is in the pictures; those of both would make the page heavy.
        ...(recorded === undefined
          ? [
              { kind: 'figure', figure: forceTravelFigure(all) } as const,
              shockAtWork(own.moving, own.result.trace, {
                id: 'at-work',
                title: 'The shock at work',
                largestTravel: build.shock.stroke / 2 + amplitude,
                largestForce: own.result.largestForce.value,
              }),
              {
                kind: 'figure',
                figure: wave === 'sine' ? forceVelocityFigure(all, asked) : forceTimeFigure(all),
              } as const,
            ]
          : []),
        {
          kind: 'list',
          items: [
            ...courseSentences(own, asked),
            ...locked.map(
              (end) =>
                `Oil ${airNames[end]} would lock: shaft and cavity together ask for more room than the gas has.`,
            ),
          ],
        },
        figuresTable(all),
        energyTable(own),
        ...(own.repeats ? [energyCheck(own)] : []),
        { kind: 'heading', text: 'Where to be careful' },
        {
          kind: 'list',
          items: [
            ...new Set([...(recorded?.doubts ?? []), ...own.result.warnings.map(({ message }) => message)]),
            'Compare it with a bench of your own by the same amplitude, frequency and warmth of the oil: a bench adds the give of its frame, the weight of its clamp and the warming of its strokes.',
          ],
        },
        ...workCautions.map((text) => ({ kind: 'caution', text }) as const),
        {
          kind: 'assumptions',
          items: [
            `${build.name} at ${celsius(temperature)}, without its spring, about the middle of its travel; ${shownStroke(own)}. The oil stays as warm as it is.`,
            ...motionAssumptions,
            ...own.moving.assembled.assumptions,
          ],
        },
      ],
      sources: [...motionSources, ...oilSources, ...forceSources],
    };
  },
});
