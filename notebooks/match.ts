import type { Damper } from '../lib/damper/damper.js';
import { type DamperModel, damperModel } from '../lib/damper/damper-model.js';
import { dampingMismatch } from '../lib/decisions/match/damping-mismatch.js';
import { matchViscosity } from '../lib/decisions/match/match-viscosity.js';
import { oilDensity, typicalDensityAt15Celsius } from '../lib/fluid/oil/density.js';
import { fluidAt } from '../lib/fluid/oil/fluid-at.js';
import { createOil } from '../lib/fluid/oil/oil.js';
import { type Block, choice, defineNotebook, onePart, type Page, quantity } from '../lib/page/index.js';
import { damperForAnyOil } from '../lib/parts/assembly/damper-for-any-oil.js';
import type { OilPart } from '../lib/parts/parts.js';
import { forceAssumptions, forceSources, oilSources, workCautions } from './base/basis.js';
import {
  blendCautions,
  cSt,
  decisionSources,
  feelsRight,
  labelOf,
  shelfOf,
  softOrHard,
  wantedOf,
} from './base/decision-cases.js';
import { fastSpeed } from './base/fast-speed.js';
import { requireRunsIn } from './base/piston-in-bore.js';
import { temperature } from './base/quantities.js';
import { middleSpeed, requireRisingSpeeds, slowSpeed } from './base/shaft-speeds.js';
import { speedsSentence } from './base/speed-events.js';
import { celsius, percent, shaftSpeed } from './base/wording.js';
import { exactCheck } from './match/checks.js';
import { cornerTable, heavierText } from './match/corners.js';
import { matchFigure, mismatchFigure } from './match/figures.js';
import type { Match, MatchedFill } from './match/matched.js';
import { mixed, mixText } from './match/mix.js';
import { matterText, weightsThatMatter } from './match/speeds.js';
import { bottleTable } from './match/tables.js';

export const notebook = defineNotebook({
  name: 'match',
  order: 65,
  title: 'The oil that makes another piston feel the same',
  question: 'I change the piston, the body or the day: which oil gives me back the damping I like?',
  parameters: {
    build: onePart({
      list: 'builds',
      label: 'You like',
      meaning: 'Build',
      help: 'The build whose damping you want back.',
    }),
    right: quantity({
      ...temperature,
      label: 'Feels right at',
      help: 'Oil temperature at which it feels right, where the parts file says nothing of it.',
      default: 20,
    }),
    piston: onePart({
      list: 'pistons',
      label: 'New piston',
      meaning: 'Piston',
      help: 'The piston that goes in now.',
    }),
    shock: onePart({
      list: 'shocks',
      label: 'New body',
      meaning: 'Shock',
      help: 'The body that it runs in.',
    }),
    now: quantity({
      ...temperature,
      label: 'Oil is now at',
      help: 'Oil temperature of the run to come.',
      default: 35,
      inFile: ({ day }) =>
        day === undefined ? undefined : Math.max(...day.map((reading) => reading.temperature)),
    }),
    matters: choice({
      label: 'What matters',
      help: 'Which shaft speeds count: slow ones are roll and pitch, fast ones ruts and landings.',
      options: ['all speeds', 'slow', 'fast'],
      default: 'all speeds',
    }),
    slow: slowSpeed,
    middle: middleSpeed,
    fast: fastSpeed,
    needed: quantity({
      dimension: 'volume',
      unit: 'ml',
      label: 'Oil needed',
      help: 'How much to mix.',
      default: 30,
      min: 1,
      max: 1000,
      step: 1,
    }),
    heavier: quantity({
      dimension: 'ratio',
      unit: '%',
      label: 'Heavier by',
      help: 'A heavier car, for the springs and damping that keep its ride.',
      default: 10,
      min: -50,
      max: 100,
      step: 1,
    }),
  },
  run(parts, values): Page {
    const { build, piston, shock, slow, middle, right } = values;
    requireRisingSpeeds(values);
    requireRunsIn(piston, shock);
    const wanted = wantedOf(build, weightsThatMatter(values), right);
    const damper = damperForAnyOil({ shock, piston, oil: build.oil });
    const density = oilDensity('silicone', values.now, typicalDensityAt15Celsius.silicone);
    const found = matchViscosity({ damper, density, wanted });
    const { bottles } = shelfOf(parts);
    const singles = bottles
      .map((bottle): MatchedFill => {
        // Without its temperature, which would warm the gas of a damper for any oil.
        const { temperature: _, ...state } = fluidAt(bottle.oil, values.now);
        const model = damperModel(damper, state);
        return { name: bottle.name, model, mismatch: dampingMismatch(model, wanted) };
      })
      .sort((a, b) => a.mismatch.typical - b.mismatch.typical);
    const exact: MatchedFill = {
      name: 'exact oil',
      model: damperModel(damper, { kinematicViscosity: found.kinematicViscosity, density }),
      mismatch: found.mismatch,
    };
    const match: Match = {
      build,
      wanted,
      exact,
      singles,
      temperature: values.now,
      same: bindAt(damper, build.oil, values.now),
      right: feelsRight(build, right),
    };
    const label = labelOf(found.kinematicViscosity, values.now);
    const mix = mixed(bottles, found.kinematicViscosity, values.now, values.needed);
    const [nearest] = singles;
    const setting = `${piston.name} in ${shock.name} at ${celsius(values.now)}`;
    return {
      answer: found.atLimit
        ? `No oil makes ${setting} damp like ${build.name}: the holes alone decide. Another piston is needed.`
        : `For ${setting}, ${build.name} ${comesBack(found.mismatch.typical)} on a ${cSt(label)} silicone${nearest === undefined ? '' : `; the nearest bottle is ${nearest.name}, ${softOrHard(nearest.mismatch.meanRatio)}`}${mix === undefined ? '.' : `, and ${mix.recipe} is that oil.`}`,
      blocks: [
        { kind: 'figure', figure: matchFigure(match, values) },
        // Where only fast speeds count, no rebound does.
        ...(wanted.weights.some(({ speed }) => speed < 0)
          ? [{ kind: 'figure', figure: mismatchFigure(match) } as const]
          : []),
        bottleTable(match, label),
        ...(mix === undefined ? [] : [mixText(mix)]),
        ...residueText(match),
        exactCheck(match, damper, density, found.kinematicViscosity, found.atLimit),
        ...cornerTable(parts.builds, right, slow, middle),
        ...heavierText(build, values.heavier, wanted, values.now, damper),
        { kind: 'heading', text: 'Before you mix and fill' },
        ...[...blendCautions, ...workCautions].map((text) => ({ kind: 'caution', text }) as const),
        {
          kind: 'assumptions',
          items: [
            `${build.name} is wanted as it is on ${match.right.oil.name} at ${celsius(match.right.temperature)}.`,
            `${matterText(values)} Ten percent too hard counts as much as ten percent too soft.`,
            speedsSentence([build, ...parts.builds], values),
            'The number on the bottle is the viscosity at 25 °C of a plain silicone; a label that lies makes the answer lie.',
            ...forceAssumptions,
          ],
        },
      ],
      sources: [
        ...decisionSources,
        ...oilSources,
        ...forceSources,
        'Rao, Mechanical Vibrations, SI ed. 2017, chapter 2: natural frequency and damping ratio.',
      ],
    };
  },
});

/** The oil of the build as it is, in the new shock at the temperature to come. */
function bindAt(damper: Damper, oil: OilPart, temperature: number): DamperModel {
  return damperModel(damper, fluidAt(createOil(oil.definition), temperature));
}

/** What no oil can mend. */
function residueText({ exact, wanted }: Match): readonly Block[] {
  const ratios = wanted.weights.map(({ speed: at }, index) => ({
    at,
    ratio: exact.mismatch.ratios[index] ?? 1,
  }));
  const softest = ratios.reduce((a, b) => (b.ratio < a.ratio ? b : a));
  const hardest = ratios.reduce((a, b) => (b.ratio > a.ratio ? b : a));
  const named = ({ at, ratio }: (typeof ratios)[number]): string =>
    `${softOrHard(ratio)} at ${shaftSpeed(Math.abs(at))} in ${at > 0 ? 'compression' : 'rebound'}`;
  const text =
    hardest.ratio / softest.ratio < 1.01
      ? 'The curve has the same shape: the right oil brings back every speed.'
      : `What no oil mends, because these holes bend the curve differently: ${named(softest)}, ${named(hardest)}.`;
  return [{ kind: 'text', text }];
}

/** How well the best oil does, before its number. */
function comesBack(typical: number): string {
  return typical < 0.1 ? 'comes back' : `comes back only to within ${percent(typical)},`;
}
