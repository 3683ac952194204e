import { InputError } from '../lib/base/input-error.js';
import {
  type Block,
  defineNotebook,
  later,
  onePart,
  type Piece,
  pageInPieces,
  quantity,
} from '../lib/page/index.js';
import { benchOil, bubblesLeft } from './base/bench.js';
import { coldestOil, hottestOil } from './base/day.js';
import { benchCautions, fillAssumptions, fillSources } from './base/fill-basis.js';
import { howToMeasure } from './base/how-to-measure.js';
import { slowSpeed } from './base/shaft-speeds.js';
import { celsius } from './base/wording.js';
import { type BuiltShock, builtShock } from './build-sheet/built-shock.js';
import { bubbleRadii, drawnInShare } from './build-sheet/numbers.js';
import { deadBandFigure, frictionSentence, softnessSentence } from './fill-and-bleed/air-figures.js';
import { bleedFigure, waitFigure } from './fill-and-bleed/bubble-figures.js';
import { fillChecks } from './fill-and-bleed/checks.js';
import { dissolvedAirTable } from './fill-and-bleed/dissolved-air.js';
import { closingHabits, endRow, endTable } from './fill-and-bleed/habits.js';
import { bledAgain, bledAgainTable, stoodTable } from './fill-and-bleed/later.js';
import { closingFigure, compensatorFigure, heatFigure } from './fill-and-bleed/push-figures.js';
import { whatToChangeTable } from './fill-and-bleed/what-to-change.js';
import { bleedSentence, habitSentence, hotSentence, roomText, verdict } from './fill-and-bleed/words.js';

export const notebook = defineNotebook({
  name: 'fill-and-bleed',
  order: 61,
  title: 'Filling and bleeding',
  question:
    'Why does a shock creep out, suck in, pump up or go soft at first, and what does each habit of the bench change?',
  parameters: {
    build: onePart({ list: 'builds', label: 'Build', help: 'The build to look at.' }),
    bench: benchOil,
    coldest: coldestOil,
    hottest: hottestOil,
    wait: quantity({
      dimension: 'time',
      unit: 'min',
      label: 'Wait',
      help: 'How long you let the shock stand before each bleed.',
      default: 5,
      min: 0.5,
      max: 30,
      step: 0.5,
    }),
    freeAir: bubblesLeft,
    slow: slowSpeed,
  },
  run(_parts, { build, bench, coldest, hottest, wait, freeAir, slow }) {
    if (coldest > hottest) {
      throw new InputError({
        field: 'coldest',
        value: celsius(coldest),
        accepted: `at most the hottest, ${celsius(hottest)}`,
      });
    }
    const built = builtShock(build, bench, { freeAir });
    if (built.shock.gasVolume === 0) {
      throw new InputError({
        field: 'freeAir',
        value: '0 ml',
        accepted: `above 0 ml for ${build.name}, in which nothing but bubbles makes room for the shaft`,
      });
    }
    // Two that print alike are one.
    const apart = new Map([coldest, hottest, bench].map((one) => [celsius(one), one]));
    const temperatures = [...apart.values()].sort((one, other) => one - other);
    const habits = closingHabits(built, bench, freeAir);
    const bled = bledAgain(built, bench, wait);
    const text = (said: string): Block => ({ kind: 'text', text: said });
    const pieces: readonly Piece[] = [
      { kind: 'heading', text: 'The shaft that goes in must find room' },
      text(roomText(built)),
      later(() => ({ kind: 'figure', figure: closingFigure(built, habits) })),
      later(() =>
        endTable(
          {
            id: 'closing-habits',
            title: 'What the closing habit costs',
            note: 'Each row is this fill, closed elsewhere. Damping is that of the oil where a cavity begins, with the shaft fully out. Below 0 the shaft is sucked in; empty where nothing cavitates.',
          },
          [{ label: 'Habit', unit: '' }],
          habits.map((habit) => [habit.name, ...endRow(habit)]),
        ),
      ),
      later(() => ({ kind: 'figure', figure: compensatorFigure(built, rivalVolume(built)) })),
      later(() => whatToChangeTable(built)),
      { kind: 'heading', text: 'Warm oil grows' },
      text(
        'Silicone grows by 0.9 % for every ten kelvin, far more than the body. What it takes, it takes from the gas.',
      ),
      later(() => {
        const hot = hotSentence(built, hottest);
        return hot === undefined ? [] : text(hot);
      }),
      later(() => ({ kind: 'figure', figure: heatFigure(built, temperatures) })),
      { kind: 'heading', text: 'Bubbles rise slowly' },
      text(
        'Half the size, a quarter of the speed. Thin or warm oil lets them go sooner; a wait that is long enough for the bubbles you can see is not for those you cannot. A bubble caught under the piston comes free as the shaft is pulled out, which sends oil up through the holes; pushing in presses it back down.',
      ),
      later(() => ({ kind: 'figure', figure: waitFigure(built, temperatures, wait) })),
      later(() => ({ kind: 'figure', figure: bleedFigure(built, bench, wait) })),
      later(() => bledAgainTable(bled)),
      later(() => stoodTable(built, bench)),
      later(() => dissolvedAirTable(built, bench)),
      { kind: 'heading', text: 'Air makes the first travel dead' },
      text(deadText(built)),
      later(() => text(softnessSentence(built, bench))),
      later(() => {
        const deadTravel = deadBandFigure(built, bench, slow);
        return deadTravel === undefined ? [] : { kind: 'figure', figure: deadTravel };
      }),
      { kind: 'heading', text: 'Slow shafts feel the seals, not the oil' },
      later(() => text(frictionSentence(built, bench))),
      ...howToMeasure(built.assembled.known),
      { kind: 'heading', text: 'Tested on this page' },
      later(() => fillChecks(built, bench)),
      ...benchCautions.map((caution) => ({ kind: 'caution', text: caution }) as const),
      { kind: 'assumptions', items: assumptions(built) },
    ];
    const answer = [verdict(built), habitSentence(habits), bleedSentence(built, bled, wait)].join(' ');
    return pageInPieces({ answer, pieces, sources: [...fillSources, ...airSources] });
  },
});

const airSources: readonly string[] = [
  'Cho, Lee & Oh, Int. J. Automot. Technol. 3 (2002) 57: stiffness of oil with air.',
  'Epstein & Plesset, J. Chem. Phys. 18 (1950) 1505: bubbles that dissolve (from memory).',
];

/** Room of the rivals: that of the build, or twice its shaft where nothing makes room. */
function rivalVolume({ shock }: BuiltShock): number {
  const own = shock.gasVolume - shock.closing.freeAir;
  return own > 0 ? own : 2 * shock.shaftArea * shock.chamber.stroke;
}

function deadText({ shock }: BuiltShock): string {
  const first =
    'Before damping builds up, the piston squeezes or stretches what air there is on the side away from the gas.';
  if (shock.gas.layout === 'emulsion')
    return 'Mixed through the oil, air gives way on both sides of the piston before damping builds up.';
  const [more, less] = shock.gas.layout === 'blind-side' ? ['in', 'out'] : ['out', 'in'];
  return `${first} Stretching takes more travel: with the gas where it is, the way ${more} loses more than the way ${less}.`;
}

function assumptions({ assembled, build, oil }: BuiltShock): readonly string[] {
  return [
    ...assembled.assumptions,
    ...(build.shock.closing?.freeAir === undefined
      ? [
          'Air in the oil is as set above; the parts file does not say how much, and what the setting begins with is a guess.',
        ]
      : []),
    ...oil.assumptions,
    `Bubbles from ${2e3 * bubbleRadii.smallest} to ${2e3 * bubbleRadii.largest} mm across, spread evenly over the logarithm of size; each opening of the cap draws in ${Math.round(100 * drawnInShare)} % of the first air again. Nobody has measured either.`,
    'Dead travel: fine bubbles at half stroke on the side of the piston away from the gas, which holds the other side.',
    'The rivals of the second figure: rubber that adds 15 kPa for each millilitre, foam of which 85 % is gas; examples of our own.',
    ...fillAssumptions,
  ];
}
