import {
  type Block,
  defineNotebook,
  type Later,
  later,
  once,
  onePart,
  type Piece,
  pageInPieces,
  severalParts,
} from '../lib/page/index.js';
import { buildFault } from '../lib/parts/build-fit.js';
import { assembleShock, type Build, type PistonPart, type ShockPart } from '../lib/parts/index.js';
import { forceAssumptions, forceSources, oilSources, workCautions } from './base/basis.js';
import { handChecks } from './base/by-hand.js';
import { buildLike, chosenBuild, curveOf } from './base/chosen-shock.js';
import { oilTemperature } from './base/day.js';
import { doubts } from './base/doubts.js';
import { fastSpeed } from './base/fast-speed.js';
import { pointAt } from './base/oil-forces.js';
import { runsIn } from './base/piston-in-bore.js';
import { middleSpeed, slowSpeed } from './base/shaft-speeds.js';
import { requireSlowBelowMiddle } from './base/slow-below-fast.js';
import { eventsTable, middleEvent, speedsSentence } from './base/speed-events.js';
import { celsius, shaftSpeed } from './base/wording.js';
import {
  forceFigures,
  growthOf,
  type PistonCase,
  packFigure,
  type Speeds,
} from './compare-pistons/figures.js';
import { forceTable, packTable, speedTable } from './compare-pistons/tables.js';

/** As many as there are colours. */
const mostShown = 7;

export const notebook = defineNotebook({
  name: 'compare-pistons',
  order: 63,
  title: 'What each piston does to your damping',
  question: 'With one oil, how do my pistons differ, and where does each of them pack?',
  parameters: {
    pistons: severalParts({
      list: 'pistons',
      atMost: 24,
      label: 'Pistons',
      help: 'The pistons to compare; those that do not go into the body are left out.',
    }),
    shock: onePart({ list: 'shocks', label: 'Shock', help: 'The body.' }),
    oil: onePart({ list: 'oils', label: 'Oil', help: 'The oil in the shock.' }),
    temperature: oilTemperature,
    slow: slowSpeed,
    middle: middleSpeed,
    fast: fastSpeed,
  },
  run(parts, values) {
    const { oil, temperature, shock, fast } = values;
    requireSlowBelowMiddle(values);
    const builds = values.pistons.map((piston) => chosenBuild(parts, { shock, piston, oil }));
    const fitting = builds.filter((build) => whyNot(build) === undefined);
    const shown = fitting.slice(0, mostShown);
    const curves = shown.map((build) => curveOf(build.piston.name, build, temperature));
    const cases = shown.flatMap((build, index): readonly PistonCase[] => {
      const curve = curves[index];
      return curve === undefined ? [] : [{ part: build.piston, build, model: curve.model }];
    });
    const like = buildLike(parts, { shock });
    const whose = like === undefined ? parts.builds : [like, ...parts.builds];
    const forces = once(() => forceFigures(cases, curves, values));
    /** Where no piston goes into the body there is nothing to show of them. */
    const ofCases = (make: () => Block | readonly Block[]): Later =>
      later(() => (cases.length === 0 ? [] : make()));
    const pieces: readonly Piece[] = [
      ofCases(() => ({ kind: 'figure', figure: forces()[0] })),
      ofCases(() => ({ kind: 'figure', figure: forces()[1] })),
      ofCases(() => ({ kind: 'figure', figure: packFigure(cases, fast) })),
      later(() => leftOut(builds, fitting.slice(mostShown))),
      ofCases(() => forceTable(cases, values, speedsSentence(whose, values))),
      ofCases(() => packTable(cases, values)),
      ofCases(() => speedTable(cases, temperature)),
      ofCases(() => eventsTable(like)),
      { kind: 'text', text: whatPackingIs(cases) },
      { kind: 'heading', text: 'Where to be careful' },
      later(() =>
        doubts(
          cases.flatMap(({ part, model }) =>
            [fast, -values.middle].flatMap((end) =>
              pointAt(model, end)
                .warnings.filter(({ code }) => code !== 'cavitation')
                .map((warning) => ({ of: part.name, warning })),
            ),
          ),
        ),
      ),
      later(() => handChecks(cases.map(({ part, model }) => ({ name: part.name, model })))),
      ...workCautions.map((text): Block => ({ kind: 'caution', text })),
      later(() => ({
        kind: 'assumptions',
        items: [
          `Oil ${oil.name} at ${celsius(temperature)} in shock ${shock.name}.`,
          'The speed at which a piston packs is our own measure of the trade’s word: twice the pressure for each speed that slow oil needs.',
          ...(shown[0] === undefined ? [] : assembleShock(shown[0]).assumptions),
          ...forceAssumptions,
        ],
      })),
    ];
    return pageInPieces({
      answer: answer(cases, values, shock, middleEvent(whose, values.middle)),
      pieces,
      sources: [...forceSources, ...oilSources],
    });
  },
});

/** Why a piston is left out, or nothing. */
function whyNot(build: Build): string | undefined {
  const { piston, shock } = build;
  if (!runsIn(piston.piston.diameter, shock.bore)) return `it does not run in the bore of ${shock.name}`;
  return buildFault(build)?.message;
}

function leftOut(builds: readonly Build[], tooMany: readonly Build[]): readonly Block[] {
  const say = ({ name }: PistonPart, why: string): Block => ({
    kind: 'text',
    text: `${name} is left out: ${why}.`,
  });
  return [
    ...builds.flatMap((build) => {
      const why = whyNot(build);
      return why === undefined ? [] : [say(build.piston, why)];
    }),
    ...tooMany.map(({ piston }) =>
      say(piston, `${mostShown} are shown at a time; choose it under "Pistons" instead of another`),
    ),
  ];
}

function whatPackingIs(cases: readonly PistonCase[]): string {
  const open =
    'A piston packs where it takes twice the pressure for each speed that slow oil takes: as much to speed the oil up as to push it past the wall. Below that speed the oil sets the damping, above it more and more the area of the holes.';
  const valved = cases.some(({ part }) => (part.piston.valves ?? []).length > 0);
  return valved
    ? `${open} A disc that lifts opens more area the harder the oil presses, so that a piston with discs may pack late, or its damping per speed may fall.`
    : open;
}

/** Which piston packs most from slow to middle and what happens there, and which least. */
function answer(cases: readonly PistonCase[], speeds: Speeds, shock: ShockPart, event: string): string {
  const ranked = cases
    .map((one) => ({ name: one.part.name, growth: growthOf(one, speeds) }))
    .sort((one, other) => one.growth - other.growth);
  const [least, ...others] = ranked;
  if (least === undefined)
    return `No piston of the parts file runs in ${shock.name}: measure bore and piston again, or choose another body.`;
  const most = others.at(-1) ?? least;
  const times = (growth: number) => `${growth < 1 ? 'falls' : 'rises'} to ${growth.toFixed(2)} times`;
  const range = `In rebound from ${shaftSpeed(speeds.slow)} to ${shaftSpeed(speeds.middle)}${event} the damping per speed`;
  if (cases.length === 1) return `${range} ${times(most.growth)} with ${most.name}.`;
  return `${range} ${times(most.growth)} with ${most.name}, which packs most, and ${times(least.growth)} with ${least.name}, which packs least.`;
}
