import { damperForce } from '../lib/damper/damper-force.js';
import {
  type Block,
  defineNotebook,
  type Later,
  later,
  once,
  onePart,
  type Piece,
  pageInPieces,
} from '../lib/page/index.js';
import type { Build } from '../lib/parts/index.js';
import { strokeForces } from './base/after-onset.js';
import { forceSources, oilSources, workCautions } from './base/basis.js';
import { coldestOil, hottestOil, oilTemperature } from './base/day.js';
import { doubts } from './base/doubts.js';
import { drivenAtWork } from './base/driven-at-work.js';
import { fastSpeed } from './base/fast-speed.js';
import { dampingPerSpeedFigure, forceFigure } from './base/force-figure.js';
import { fastestReboundOf } from './base/shaft-speeds.js';
import { speedsSentence } from './base/speed-events.js';
import { celsius, newtons, shaftSpeed } from './base/wording.js';
import {
  type ClosedBuild,
  cavitatingDirection,
  closedBuild,
  type Direction,
  onsetOf,
} from './cavitation/cases.js';
import { cavityCheck } from './cavitation/checks.js';
import { closingFigure, travelFigure } from './cavitation/figures.js';
import { changes, changesTable, closedElsewhere } from './cavitation/what-moves-it.js';
import { emulsionAnswer, habitSentence, onsetAnswer, onsetSentences } from './cavitation/words.js';

export const notebook = defineNotebook({
  name: 'cavitation',
  order: 40,
  title: 'Where cavitation begins, and what travel makes of it',
  question:
    'At what shaft speed does my shock begin to cavitate, how hard does it push from there on, and what moves that?',
  parameters: {
    build: onePart({ list: 'builds', label: 'Build', help: 'The shock, as it is put together.' }),
    fast: fastSpeed,
    temperature: oilTemperature,
    coldest: coldestOil,
    hottest: hottestOil,
  },
  run(_parts, { build, fast, temperature, coldest, hottest }) {
    const closed = closedBuild(build, temperature);
    const direction = cavitatingDirection(closed.model);
    const rebound = fastestReboundOf(build, temperature);
    const curves = [
      {
        name: build.name,
        model: closed.model,
        ...(closed.bounds && { bounds: closed.bounds }),
        ...(rebound === undefined ? {} : { fastestRebound: rebound }),
      },
    ];
    const alt = `On ${build.oil.name} at ${celsius(temperature)}.`;
    const pictures: readonly Piece[] = [
      later(() => ({
        kind: 'figure',
        figure: forceFigure({ id: 'force', title: 'Damping force against shaft speed', alt }, curves, fast),
      })),
      later(() => ({
        kind: 'figure',
        figure: dampingPerSpeedFigure(
          {
            id: 'per-speed',
            title: 'The same for each metre per second',
            alt: 'Damping force over shaft speed, where slow speeds can be seen.',
          },
          curves,
          fast,
        ),
      })),
    ];
    const sources = [...forceSources, ...oilSources];
    const rest = later(() => closingBlocks(closed, temperature, fast));
    if (direction === undefined) {
      const text =
        'Bubbles all through the oil grow where the pressure falls and shrink where it rises, on both sides of the piston. They are the cavity: the pressure sinks towards a part of that of the gas, and never to vacuum. What the page says of other shocks, an onset and a force that grows with travel, does not apply.';
      return pageInPieces({
        answer: emulsionAnswer(closed, fast),
        pieces: [...pictures, { kind: 'text', text }, rest],
        sources,
      });
    }
    // Nothing but its spring drives a shock out.
    const speed = direction === 'compression' ? fast : Math.min(fast, rebound ?? fast);
    return pageInPieces({
      answer: onsetAnswer(closed, direction, speed),
      pieces: [
        ...pictures,
        ...explained(closed, direction, speed, temperature),
        ...moved(closed, direction, speed, temperature, [coldest, hottest]),
        rest,
      ],
      sources,
    });
  },
});

/** What happens, in words and along the stroke. */
function explained(
  closed: ClosedBuild,
  direction: Direction,
  speed: number,
  temperature: number,
): readonly Piece[] {
  const { model, build } = closed;
  const onset = onsetOf(model, direction, 0);
  const sign = direction === 'compression' ? 1 : -1;
  const opens = speed > onset.speed && onset.speed > 0;
  /** Where no cavity opens there is nothing to show of it. */
  const ofCavity = (make: () => Block | readonly Block[]): Later => later(() => (opens ? make() : []));
  return [
    {
      kind: 'text',
      text: 'Oil pushes well and pulls hardly at all. What the piston leaves behind it is filled by oil that the gas presses through the holes. Where the piston runs faster than that, the oil tears: air and vapour open a cavity. That sets where the force begins, and not where it ends: the cavity takes its room out of the gas, whose pressure rises with travel and presses more oil through. On the way back the cavity must close before the shock damps again.',
    },
    later(() => ({ kind: 'list', items: onsetSentences(closed, direction) })),
    ofCavity(() => ({ kind: 'figure', figure: travelFigure(model, build.oil.name, direction, speed) })),
    ofCavity(() => drivenAtWork(build, temperature, speed)?.drawing ?? []),
    ofCavity(() => {
      const { gasForce } = strokeForces(model, sign * speed).end;
      return {
        kind: 'text',
        text: `The oil decides how soon a cavity opens and how fast the force grows from there; the gas and the area of the piston decide at what force it begins. The gas adds ${newtons(gasForce)} of push of its own at the end of the stroke at ${shaftSpeed(speed)}.`,
      };
    }),
  ];
}

/** What moves the onset. */
function moved(
  closed: ClosedBuild,
  direction: Direction,
  speed: number,
  temperature: number,
  day: readonly [number, number],
): readonly Piece[] {
  const elsewhere = once(() => closedElsewhere(closed, temperature));
  return [
    { kind: 'heading', text: 'What moves it' },
    later(() =>
      elsewhere().length === 0
        ? []
        : { kind: 'figure', figure: closingFigure(elsewhere(), closed.build.shock.stroke, direction) },
    ),
    later(() => ({
      kind: 'text',
      text: `This one is ${closed.shock.habit.words}. ${habitSentence(elsewhere(), direction)}`,
    })),
    later(() => changesTable(changes(closed, temperature, day), direction, speed)),
    later(() => cavityCheck(closed.model, direction, speed)),
    {
      kind: 'caution',
      text: 'More gas pressure is worth a thought only where the maker allows it. Never fill a shock with gas that was not made for it, and let pressure out before you open one.',
    },
  ];
}

function closingBlocks(
  { build, shock, model }: ClosedBuild,
  temperature: number,
  fast: number,
): readonly Block[] {
  const warnings = onsetWarnings(model, build);
  return [
    { kind: 'heading', text: 'Where to be careful' },
    ...doubts(warnings),
    ...workCautions.map((text): Block => ({ kind: 'caution', text })),
    {
      kind: 'assumptions',
      items: [
        `${build.name}: piston ${build.piston.name} in ${build.shock.name} with ${build.oil.name} at ${celsius(temperature)}.`,
        speedsSentence([build], { fast }),
        'A stroke at one speed, begun with whole oil; the cavity closes again without leaving air behind.',
        'Forces are the damping of the oil alone; gas and seal friction come on top.',
        ...shock.assumptions,
      ],
    },
  ];
}

function onsetWarnings(model: ClosedBuild['model'], build: Build) {
  const direction = cavitatingDirection(model);
  const sign = direction === 'rebound' ? -1 : 1;
  const speed = direction === undefined ? 0 : 0.99 * sign * onsetOf(model, direction, 0).speed;
  return damperForce(model, { speed, position: 0 }).warnings.map((warning) => ({ of: build.name, warning }));
}
