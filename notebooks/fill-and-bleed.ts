import { InputError } from '../lib/base/input-error.js';
import { lockPosition } from '../lib/fill/chamber/pressure-inside.js';
import { staticForce } from '../lib/fill/chamber/static-force.js';
import { type Block, defineNotebook, onePart, quantity } from '../lib/page/index.js';
import { duration, grams, millilitres, millimetres } from './base/bench-wording.js';
import { benchCautions, fillAssumptions, fillSources } from './base/fill-basis.js';
import { celsius } from './base/wording.js';
import { type BuiltShock, builtShock, workingStroke } from './build-sheet/built-shock.js';
import { bubbleRadii, drawnInShare } from './build-sheet/numbers.js';
import { deadBandFigure, frictionFigure, softnessFigure } from './fill-and-bleed/air-figures.js';
import { bleedFigure, travelAfterBleeds, waitFigure } from './fill-and-bleed/bubble-figures.js';
import { fillChecks } from './fill-and-bleed/checks.js';
import { dissolvedAirTable } from './fill-and-bleed/dissolved-air.js';
import { closingFigure, compensatorFigure, heatFigure } from './fill-and-bleed/push-figures.js';
import { whatToChangeTable } from './fill-and-bleed/what-to-change.js';

const temperature = { dimension: 'temperature', unit: '°C', min: -20, max: 80, step: 1 } as const;

export const notebook = defineNotebook({
  name: 'fill-and-bleed',
  order: 61,
  title: 'Filling and bleeding',
  question:
    'Why does a shock creep out, suck in, pump up or go soft at first, and what does each habit of the bench change?',
  parameters: {
    build: onePart({ list: 'builds', label: 'Build', help: 'The build to look at.' }),
    bench: quantity({ ...temperature, label: 'Bench', help: 'Temperature while you fill.', default: 20 }),
    coldest: quantity({ ...temperature, label: 'Coldest', help: 'Coldest oil of the day.', default: 8 }),
    hottest: quantity({ ...temperature, label: 'Hottest', help: 'Hottest oil of the day.', default: 45 }),
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
    airAtFill: quantity({
      dimension: 'volume',
      unit: 'ml',
      label: 'Air after filling',
      help: 'Free air in the oil after filling; an assumption.',
      default: 0.05,
      min: 0.01,
      max: 0.5,
      step: 0.01,
    }),
    speed: quantity({
      dimension: 'speed',
      unit: 'mm/s',
      label: 'Shaft speed',
      help: 'Speed at which a stroke begins, for the dead travel.',
      default: 50,
      min: 1,
      max: 500,
      step: 1,
    }),
  },
  run(_parts, values) {
    const { bench, coldest, hottest, wait, airAtFill, speed } = values;
    if (!(coldest < bench && bench < hottest)) {
      throw new InputError({
        field: 'bench',
        value: celsius(bench),
        accepted: `between the coldest and the hottest, ${celsius(coldest)} to ${celsius(hottest)}`,
      });
    }
    const built = builtShock(values.build, bench);
    if (built.shock.gasVolume === 0) {
      throw new InputError({
        field: 'build',
        value: built.build.name,
        accepted: 'one with something that makes room for its shaft',
      });
    }
    const temperatures = [coldest, bench, hottest];
    const deadTravel = deadBandFigure(built, bench, speed);
    const bleeds = travelAfterBleeds(built, bench, wait, airAtFill);
    const blocks: readonly Block[] = [
      { kind: 'heading', text: 'The shaft that goes in must find room' },
      { kind: 'text', text: roomText(built) },
      { kind: 'figure', figure: closingFigure(built) },
      { kind: 'figure', figure: compensatorFigure(built, built.shock.gasVolume) },
      {
        kind: 'text',
        text: 'Beaten into the oil as fine bubbles the same air pushes as it does in a pocket; what it changes is the first travel, further down.',
      },
      whatToChangeTable(built),
      { kind: 'heading', text: 'Warm oil grows' },
      {
        kind: 'text',
        text: 'Silicone grows by 0.9 % for every ten kelvin, far more than the body. What it takes, it takes from the gas.',
      },
      { kind: 'figure', figure: heatFigure(built, temperatures) },
      { kind: 'heading', text: 'Bubbles rise slowly' },
      {
        kind: 'text',
        text: 'Half the size, a quarter of the speed. Thin or warm oil lets them go sooner; a wait that is long enough for the bubbles you can see is not for those you cannot.',
      },
      { kind: 'figure', figure: waitFigure(built, temperatures, wait) },
      { kind: 'figure', figure: bleedFigure(built, bench, wait, airAtFill) },
      dissolvedAirTable(built, bench),
      { kind: 'heading', text: 'Air makes the first travel dead' },
      {
        kind: 'text',
        text: 'Before damping builds up, the piston squeezes or stretches what air there is on the side away from the gas. Stretching takes more travel: with the gas under the cap the way in loses more than the way out.',
      },
      { kind: 'figure', figure: softnessFigure(built, bench) },
      ...(deadTravel === undefined ? [] : [{ kind: 'figure', figure: deadTravel } as const]),
      { kind: 'heading', text: 'Slow shafts feel the seals, not the oil' },
      { kind: 'figure', figure: frictionFigure(built, bench) },
      { kind: 'heading', text: 'Tested on this page' },
      ...fillChecks(built, bench, speed),
      ...benchCautions.map((text) => ({ kind: 'caution', text }) as const),
      { kind: 'assumptions', items: assumptions(built) },
    ];
    return { answer: answer(built, bleeds, wait), blocks, sources: [...fillSources, ...airSources] };
  },
});

const airSources: readonly string[] = [
  'Cho, Lee & Oh, Int. J. Automot. Technol. 3 (2002) 57: stiffness of oil with air.',
  'Epstein & Plesset, J. Chem. Phys. 18 (1950) 1505: bubbles that dissolve (from memory).',
];

function roomText({ shock, closing }: BuiltShock): string {
  const { chamber, shaftArea } = shock;
  const swept = millilitres(shaftArea * chamber.stroke);
  return `Over the stroke the shaft brings ${swept} into a body with ${millilitres(shock.oilVolume)} of oil, which does not give way, and ${millilitres(shock.gasVolume)} of gas, which does. Where the cap is closed there is no push: from there in it pushes out, from there out it sucks in. This build is closed ${millimetres(closing.position)} in. Between the two lines of friction the shaft stays where it is put: there the shock is dead.`;
}

function answer({ build, shock }: BuiltShock, bleeds: readonly number[], wait: number): string {
  const { stroke } = shock.chamber;
  const [from, to] = [workingStroke.from * stroke, workingStroke.to * stroke];
  const friction = build.shock.seal.typical.kineticForce;
  const lost = bleeds.map((travel) => (1e3 * travel).toFixed(2));
  const air = `After ${duration(wait)} upright each time, a first bleed brings the travel lost to air from ${lost[0]} to ${lost[1]} mm, a second to ${lost[2]} mm, a third to ${lost[3]} mm.`;
  if (lockPosition(shock) <= to) return `${build.name} locks before ${millimetres(to)} of its stroke. ${air}`;
  const [pull, push] = [staticForce(shock, from), staticForce(shock, to)];
  const loudest = Math.max(Math.abs(pull), Math.abs(push));
  const verdict =
    loudest <= friction
      ? `stays wherever it is put: over its working stroke the gas pushes or sucks with at most ${grams(loudest)}, its seals hold ${grams(friction)}`
      : `does not stay where it is put: over its working stroke the gas pushes or sucks with up to ${grams(loudest)}, its seals hold only ${grams(friction)}`;
  return `${build.name} ${verdict}. ${air}`;
}

function assumptions({ assembled, oil }: BuiltShock): readonly string[] {
  return [
    ...assembled.assumptions,
    ...oil.assumptions,
    `Bubbles from ${2e3 * bubbleRadii.smallest} to ${2e3 * bubbleRadii.largest} mm across, spread evenly over the logarithm of size; each opening of the cap draws in ${Math.round(100 * drawnInShare)} % of the first air again. Nobody has measured either.`,
    'Dead travel: fine bubbles at half stroke on the side of the piston away from the gas, which holds the other side.',
    'The rivals of the second figure: rubber that adds 15 kPa for each millilitre, foam of which 85 % is gas; examples of our own.',
    ...fillAssumptions,
  ];
}
