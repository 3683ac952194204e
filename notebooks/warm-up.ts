import {
  defineNotebook,
  later,
  once,
  onePart,
  type Page,
  pageInPieces,
  quantity,
} from '../lib/page/index.js';
import { forceSources, oilSources, workCautions } from './base/basis.js';
import { dropOfWheel } from './base/drop.js';
import { cornerOf, motionAssumptions, motionSources } from './base/moving-build.js';
import { temperature } from './base/quantities.js';
import { middleSpeed } from './base/shaft-speeds.js';
import { bumpHeight as usualHeight } from './base/usual-bump.js';
import { celsius } from './base/wording.js';
import { bodySentence } from './warm-up/body.js';
import { heatCheck } from './warm-up/checks.js';
import { dampingFigure, temperatureFigure } from './warm-up/figures.js';
import { minutesTable, sourcesTable } from './warm-up/tables.js';
import { trackHeat } from './warm-up/track.js';
import { warmed } from './warm-up/warmed.js';
import { answerSentence, meaningSentences } from './warm-up/words.js';

export const notebook = defineNotebook({
  name: 'warm-up',
  order: 46,
  title: 'How a run warms the oil',
  question:
    'How warm does the oil get in a run, how much damping is left, and what does that mean for the oil of the day?',
  parameters: {
    build: onePart({ list: 'builds', label: 'Build', help: 'The shock, with its spring and corner.' }),
    air: quantity({
      ...temperature,
      label: 'Air',
      help: 'Temperature of the air; the oil begins as warm.',
      default: 25,
    }),
    run: quantity({
      dimension: 'time',
      unit: 'min',
      label: 'Run',
      help: 'How long the car is driven; then it stands for as long.',
      default: 10,
      min: 1,
      max: 60,
      step: 1,
    }),
    wind: quantity({
      dimension: 'speed',
      unit: 'm/s',
      label: 'Wind',
      help: 'Air along the shock as the car drives: less than the speed of the car, as arms and body shield it.',
      default: 3,
      min: 0,
      max: 15,
      step: 0.5,
    }),
    bumps: quantity({
      dimension: 'frequency',
      unit: 'Hz',
      label: 'Bumps',
      help: 'Bumps that a wheel meets in a second, a mean over the lap.',
      default: 3,
      min: 0,
      max: 8,
      step: 0.5,
    }),
    bumpHeight: quantity({
      dimension: 'length',
      unit: 'mm',
      label: 'Bump height',
      help: 'How high a bump is, 150 mm long and driven over at 6 m/s.',
      default: 1000 * usualHeight,
      min: 2,
      max: 25,
      step: 1,
    }),
    landings: quantity({
      dimension: 'ratio',
      unit: '',
      label: 'Landings',
      help: 'Landings in a minute, a mean over the lap.',
      default: 12,
      min: 0,
      max: 60,
      step: 1,
    }),
    drop: dropOfWheel,
    middle: middleSpeed,
  },
  run(_parts, values): Page {
    const { build, air, run, wind, bumps, bumpHeight, landings, drop, middle } = values;
    const { guesses } = cornerOf(build);
    const heat = trackHeat(build, air, {
      bumpsPerSecond: bumps,
      bumpHeight,
      landingsPerSecond: landings / 60,
      dropHeight: drop,
    });
    const asked = { build, air, run, wind, middle };
    const likely = warmed(heat, asked, 'likely');
    const ends = [warmed(heat, asked, 'cool'), warmed(heat, asked, 'warm')] as const;
    const still = once(() => warmed(heat, { ...asked, wind: 0 }, 'likely'));
    return pageInPieces({
      answer: answerSentence(likely, ends, asked),
      pieces: [
        later(() => ({ kind: 'figure', figure: temperatureFigure(likely, ends, still()) })),
        later(() => ({ kind: 'figure', figure: dampingFigure(likely, ends, still()) })),
        later(() => ({ kind: 'list', items: meaningSentences(likely, still(), asked, heat) })),
        later(() => minutesTable(likely, ends, still(), asked)),
        later(() => sourcesTable(heat, air)),
        later(() => heatCheck(likely, asked)),
        { kind: 'heading', text: 'Where to be careful' },
        {
          kind: 'list',
          items: [
            ...likely.result.warnings.map(({ message }) => message),
            'Nothing here was compared with a thermometer in a shock: the band is what nobody measured of body and wind. Read the body of your own shock after a run and compare.',
          ],
        },
        {
          kind: 'caution',
          text: 'A shock, a motor or a brake disc may be hot after a run: let it cool before you touch or open it. Hot oil burns.',
        },
        ...workCautions.map((text) => ({ kind: 'caution', text }) as const),
        {
          kind: 'assumptions',
          items: [
            `${build.name} with oil, air and body at ${celsius(air)} at the start; then a mixture of bumps and landings without pause, and as long a rest in still air.`,
            ...bodySentence(build),
            `Bumps are 150 mm long and met at 6 m/s on flat ground; how many of them and how many landings a lap has is a guess until you count.`,
            ...guesses,
            'One temperature stands for oil and body. What a motor, the sun or a warm track add is left out.',
            ...motionAssumptions.slice(0, 2),
            ...likely.assumptions,
          ],
        },
      ],
      sources: [
        'Churchill & Bernstein, J. Heat Transfer 99 (1977) 300: a cylinder in wind. Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1049: in still air.',
        ...motionSources,
        ...oilSources,
        ...forceSources,
      ],
    });
  },
});
