import { InputError } from '../lib/base/input-error.js';
import {
  defineNotebook,
  later,
  once,
  type Piece,
  pageInPieces,
  quantity,
  severalParts,
} from '../lib/page/index.js';
import { forceAssumptions, forceSources, oilSources, workCautions } from './base/basis.js';
import { benchOil } from './base/bench.js';
import { handChecks } from './base/by-hand.js';
import { curveOf } from './base/chosen-shock.js';
import { coldestOil, hottestOil, oilTemperature } from './base/day.js';
import { dropOfWheel } from './base/drop.js';
import { fastSpeed } from './base/fast-speed.js';
import { dampingPerSpeedFigure, forceFigure } from './base/force-figure.js';
import { cornerOf, motionAssumptions, motionSources } from './base/moving-build.js';
import { middleSpeed, requireRisingSpeeds, slowSpeed } from './base/shaft-speeds.js';
import { speedsSentence } from './base/speed-events.js';
import { celsius, listed, newtons, shaftSpeed } from './base/wording.js';
import { collarChecks } from './compare-builds/checks.js';
import { benchMoved, dampingAt, sideOf, twoBuilds } from './compare-builds/sides.js';
import {
  dayTable,
  forceTable,
  landingTable,
  partsTable,
  pushTable,
  rideTable,
} from './compare-builds/tables.js';
import { answerOf, toAdd } from './compare-builds/words.js';

export const notebook = defineNotebook({
  name: 'compare-builds',
  order: 47,
  title: 'Two builds side by side',
  question:
    'How do two builds differ, springs included: force, ride, landing, heat and cost, front against rear?',
  parameters: {
    builds: severalParts({
      list: 'builds',
      atMost: 6,
      label: 'Builds',
      help: 'The first two of those chosen are compared; a single one with itself on another oil.',
    }),
    temperature: oilTemperature,
    coldest: coldestOil,
    hottest: hottestOil,
    bench: benchOil,
    slow: slowSpeed,
    middle: middleSpeed,
    fast: fastSpeed,
    sag: quantity({
      dimension: 'ratio',
      unit: '%',
      label: 'Shaft in at rest',
      help: 'Where you want the shaft as the car stands, as a part of the stroke.',
      default: 30,
      min: 5,
      max: 80,
      step: 1,
    }),
    drop: dropOfWheel,
  },
  run(parts, { builds, ...at }) {
    requireRisingSpeeds(at);
    if (at.coldest > at.hottest)
      throw new InputError({
        field: 'coldest',
        value: celsius(at.coldest),
        accepted: `at most the hottest, ${celsius(at.hottest)}`,
      });
    const chosen = twoBuilds(parts, builds);
    const moved = benchMoved(parts, at.bench);
    const two = [sideOf(chosen[0], at, moved), sideOf(chosen[1], at, moved)] as const;
    const curves = once(() => two.map(({ build }) => curveOf(build.name, build, at.temperature)));
    const rebound = two.map((side) => `${side.build.name} ${newtons(dampingAt(side, -at.middle).typical)}`);
    const words = {
      alt: `In rebound at ${shaftSpeed(at.middle)} and ${celsius(at.temperature)}: ${listed(rebound)}.`,
    };
    const add = toAdd(two);
    const left = builds.slice(2).map(({ name }) => name);
    const guesses = two.flatMap(({ build, landed }) =>
      landed === undefined ? [] : cornerOf(build).guesses.map((text) => `${build.name}: ${text}`),
    );
    const sprung = two.some(({ build }) => build.spring !== undefined);
    const pieces: readonly Piece[] = [
      later(() => ({
        kind: 'figure',
        figure: forceFigure({ id: 'force', title: 'Damping of both', ...words }, curves(), at.fast),
      })),
      later(() => ({
        kind: 'figure',
        figure: dampingPerSpeedFigure(
          { id: 'damping', title: 'The same per speed', ...words },
          curves(),
          at.fast,
        ),
      })),
      later(() => partsTable(two)),
      later(() => forceTable(two, at)),
      later(() => pushTable(two)),
      later(() => (sprung ? rideTable(two, at) : [])),
      later(() => (sprung ? landingTable(two, at) : [])),
      later(() => dayTable(two, at)),
      later(() =>
        add.length === 0
          ? []
          : [
              { kind: 'heading', text: 'What the file does not say yet' },
              { kind: 'list', items: add },
            ],
      ),
      later(() =>
        left.length === 0
          ? []
          : [{ kind: 'text', text: `Not compared: ${listed(left)}; the first two under "Builds" are.` }],
      ),
      later(() => collarChecks(two, at.temperature)),
      later(() => handChecks(two.map(({ build, model }) => ({ name: build.name, model })))),
      ...workCautions.map((text) => ({ kind: 'caution', text }) as const),
      later(() => ({
        kind: 'assumptions',
        items: [
          ...new Set([
            speedsSentence([...chosen, ...parts.builds], at),
            ...two.flatMap(({ built }) => built.assembled.assumptions),
            ...guesses,
            ...forceAssumptions,
            ...(guesses.length === 0 ? [] : motionAssumptions),
          ]),
        ],
      })),
    ];
    return pageInPieces({
      answer: answerOf(two, at),
      pieces,
      sources: [
        ...forceSources,
        ...oilSources,
        ...motionSources,
        'Rao, Mechanical Vibrations, SI ed. 2017, chapter 2: natural frequency and damping ratio.',
      ],
    });
  },
});
