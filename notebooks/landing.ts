import { landingShaftSpeed } from '../lib/damper/driven-speed.js';
import {
  defineNotebook,
  later,
  type MotionBlock,
  once,
  onePart,
  type Page,
  pageInPieces,
  severalParts,
} from '../lib/page/index.js';
import type { Build, PistonPart } from '../lib/parts/parts.js';
import { forceSources, oilSources, workCautions } from './base/basis.js';
import { oilTemperature } from './base/day.js';
import { wantedBuilds } from './base/decision-cases.js';
import { dropOfWheel } from './base/drop.js';
import { dropHeight } from './base/drop-height.js';
import { shaftSpeedsOf } from './base/fast-speed.js';
import { bottomingHeight, type Landed, landed, landedAtEnds, landedOrLocked } from './base/landed.js';
import { cornerOf, motionAssumptions, motionSources } from './base/moving-build.js';
import { shockAtWork } from './base/shock-at-work.js';
import { celsius, listed } from './base/wording.js';
import { momentumCheck } from './landing/checks.js';
import { drawnParts, forceFigure, travelFigure } from './landing/figures.js';
import { groundAnswer } from './landing/own-ground.js';
import { landingsTable } from './landing/tables.js';
import { bottomingSentence, courseSentences, landingSentence, softestSentence } from './landing/words.js';

/** How much of a landing is drawn at work [s]. */
const drawnTime = 0.2;

export const notebook = defineNotebook({
  name: 'landing',
  order: 45,
  title: 'What a landing does',
  question: 'Does it bottom, how hard does it push, and which oil and piston land best, front and rear?',
  takes: 'recorded-ground',
  parameters: {
    build: onePart({ list: 'builds', label: 'Build', help: 'The shock, with its spring and corner.' }),
    drop: dropOfWheel,
    temperature: oilTemperature,
    oils: severalParts({ list: 'oils', atMost: 8, label: 'Oils', help: 'The oils to try in this build.' }),
  },
  run(parts, { build, drop, temperature, oils }): Page {
    const { corner, guesses } = cornerOf(build);
    const own = landed(build, temperature, drop, 'likely', {}, 4 * drawnParts);
    const ends = landedAtEnds(build, temperature, drop);
    const others = oils.filter(({ name }) => name !== build.oil.name);
    const tried = others.map((oil) => landedOrLocked(build, temperature, drop, 'likely', { oil }));
    const locked = others.filter((_, place) => tried[place] === undefined).map(({ name }) => name);
    const onOils = [own, ...tried.filter((one) => one !== undefined)];
    const { recordedGround } = parts;
    const ground = recordedGround && groundAnswer(build, temperature, recordedGround);
    const drawn = once(() => [
      own,
      ...extremes(onOils).map(({ moving: { build: on } }) =>
        landed(build, temperature, drop, 'likely', { oil: on.oil }, drawnParts),
      ),
    ]);
    const pistons = once(() => onEachPiston(parts.pistons, own, temperature, drop));
    return pageInPieces({
      answer: [
        ground?.sentence ?? '',
        landingSentence(own, ends, drop, temperature),
        bottomingSentence(bottomingHeight(build, temperature)),
        softestSentence('oil', onOils) ?? '',
      ]
        .filter((text) => text !== '')
        .join(' '),
      pieces: [
        later(() =>
          ground === undefined
            ? []
            : [...ground.blocks, { kind: 'heading', text: 'The drop onto flat ground' }],
        ),
        later(() => ({ kind: 'figure', figure: travelFigure(drawn(), corner.bumpStop.from) })),
        later(() => atWork(own, corner.bumpStop.from)),
        later(() => ({ kind: 'figure', figure: forceFigure(drawn()) })),
        {
          kind: 'list',
          items: courseSentences(
            own,
            landingShaftSpeed(drop, corner.motionRatio),
            drop === dropHeight ? shaftSpeedsOf(build).fast : undefined,
          ),
        },
        landingsTable('oils', 'On each oil', onOils, ({ moving }) => moving.build.oil.name),
        later(() => {
          const { landings } = pistons();
          const softest = softestSentence('piston', landings);
          return [
            landingsTable(
              'pistons',
              'With each piston that fits',
              landings,
              ({ moving }) => moving.build.piston.name,
            ),
            ...(softest === undefined ? [] : [{ kind: 'text', text: softest } as const]),
          ];
        }),
        later(() => {
          const car = carLandings(wantedBuilds(parts.builds), own, temperature, drop);
          return car.length < 2
            ? []
            : landingsTable('car', 'The same drop, front and rear', car, ({ moving }) => moving.build.name);
        }),
        later(() => momentumCheck(own, corner, drop)),
        { kind: 'heading', text: 'Where to be careful' },
        {
          kind: 'list',
          items: [
            ...new Set([...(ground?.doubts ?? []), ...own.outcome.warnings.map(({ message }) => message)]),
          ],
        },
        ...workCautions.map((text) => ({ kind: 'caution', text }) as const),
        later(() => {
          const { unfit, lockedToo } = pistons();
          const noRoom = [...locked, ...lockedToo.map(({ name }) => name)];
          return {
            kind: 'assumptions',
            items: [
              `${build.name} at ${celsius(temperature)}, landing on flat ground with one wheel; the tyre may not pull.`,
              ...guesses,
              ...(unfit.length === 0
                ? []
                : [`Left out, since they do not fit this bore: ${listed(unfit.map(({ name }) => name))}.`]),
              ...(noRoom.length === 0
                ? []
                : [`Left out, since the gas has no room on the way: ${listed(noRoom)}.`]),
              ...motionAssumptions,
              ...own.moving.assembled.assumptions,
            ],
          };
        }),
      ],
      sources: [...motionSources, ...oilSources, ...forceSources],
    });
  },
});

/** The landing with each piston that runs in this bore, that of the build first, the pistons that do not, and those that lock. */
function onEachPiston(
  pistons: readonly PistonPart[],
  own: Landed,
  temperature: number,
  drop: number,
): {
  readonly landings: readonly Landed[];
  readonly unfit: readonly PistonPart[];
  readonly lockedToo: readonly PistonPart[];
} {
  const { build } = own.moving;
  const others = pistons.filter(({ name }) => name !== build.piston.name);
  const runs = ({ piston }: PistonPart): boolean =>
    Math.abs(piston.diameter / build.piston.piston.diameter - 1) < 0.02;
  const tried = others.filter(runs).map((piston) => ({
    piston,
    landing: landedOrLocked(build, temperature, drop, 'likely', { piston }),
  }));
  return {
    landings: [own, ...tried.flatMap(({ landing }) => landing ?? [])],
    unfit: others.filter((one) => !runs(one)),
    lockedToo: tried.flatMap(({ piston, landing }) => (landing === undefined ? piston : [])),
  };
}

/** The first part of the landing, drawn: until the shaft has gone in and come out again. */
function atWork({ moving, outcome }: Landed, bumpStop: number): MotionBlock {
  const { trace, largestTravel, largestShockForce } = outcome;
  const shown = Math.ceil((drawnTime / (trace.times.at(-1) ?? 1)) * (trace.times.length - 1)) + 1;
  const first = (values: Float64Array) => values.slice(0, shown);
  return shockAtWork(
    moving,
    {
      times: first(trace.times),
      travels: first(trace.travels),
      speeds: first(trace.speeds),
      forces: first(trace.shockForces),
      blindPressures: first(trace.blindPressures),
      shaftPressures: first(trace.shaftPressures),
      cavities: first(trace.cavities),
    },
    {
      id: 'at-work',
      title: 'The shock at work, from the touch on',
      largestTravel: largestTravel.value,
      largestForce: largestShockForce.value,
    },
    bumpStop,
  );
}

/** The landing of each build that has a spring; that of the page is there already. */
function carLandings(
  builds: readonly Build[],
  own: Landed,
  temperature: number,
  drop: number,
): readonly Landed[] {
  return builds.flatMap((build) => {
    if (build.name === own.moving.build.name) return own;
    return build.spring === undefined ? [] : (landedOrLocked(build, temperature, drop) ?? []);
  });
}

/** The softest and the hardest pushing of the other oils, so that few lines tell most. */
function extremes([, ...others]: readonly Landed[]): readonly Landed[] {
  if (others.length <= 2) return others;
  const sorted = [...others].sort((a, b) => a.outcome.largestTravel.value - b.outcome.largestTravel.value);
  return [sorted[0], sorted.at(-1)].filter((one) => one !== undefined);
}
