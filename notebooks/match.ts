import { damperModel } from '../lib/damper/damper-model.js';
import { fillState } from '../lib/decisions/day/fill-choice.js';
import { dampingMismatch } from '../lib/decisions/match/damping-mismatch.js';
import { matchViscosity } from '../lib/decisions/match/match-viscosity.js';
import { speedRange } from '../lib/decisions/match/speed-weights.js';
import { oilDensity, typicalDensityAt15Celsius } from '../lib/fluid/oil/density.js';
import { type Block, choice, defineNotebook, onePart, type Page, quantity } from '../lib/page/index.js';
import { damperForAnyOil } from '../lib/parts/assembly/damper-for-any-oil.js';
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
import { requireRunsIn } from './base/piston-in-bore.js';
import { speed, temperature } from './base/quantities.js';
import { requireSlowBelowFast } from './base/slow-below-fast.js';
import { celsius, percent, shaftSpeed } from './base/wording.js';
import { cornerTable, heavierText } from './match/corners.js';
import { matchFigure, mismatchFigure } from './match/figures.js';
import type { Match, MatchedFill } from './match/matched.js';
import { mixed, mixText } from './match/mix.js';
import { bottleTable } from './match/tables.js';

export const notebook = defineNotebook({
  name: 'match',
  order: 65,
  title: 'The oil that makes another piston feel the same',
  question: 'I change the piston, the body or the day: which oil gives me back the damping I like?',
  parameters: {
    build: onePart({ list: 'builds', label: 'You like', help: 'The build whose damping you want back.' }),
    right: quantity({
      ...temperature,
      label: 'Feels right at',
      help: 'Oil temperature at which it feels right, where the parts file says nothing of it.',
      default: 20,
    }),
    piston: onePart({ list: 'pistons', label: 'New piston', help: 'The piston that goes in now.' }),
    shock: onePart({ list: 'shocks', label: 'New body', help: 'The body that it runs in.' }),
    temperature: quantity({
      ...temperature,
      label: 'Oil is now at',
      help: 'Oil temperature of the run to come.',
      default: 35,
    }),
    matters: choice({
      label: 'What matters',
      help: 'Which shaft speeds count: slow ones are roll and pitch, fast ones ruts and landings.',
      options: ['all speeds', 'slow', 'fast'],
      default: 'all speeds',
    }),
    slow: quantity({ ...speed, label: 'Slow', help: 'Slow end of the shaft speeds.', default: 50 }),
    fast: quantity({ ...speed, label: 'Fast', help: 'Fast end of the shaft speeds.', default: 500 }),
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
    const { build, piston, shock, slow, fast, right } = values;
    requireSlowBelowFast(values);
    requireRunsIn(piston, shock);
    const middle = Math.sqrt(slow * fast);
    const [from, to] =
      values.matters === 'slow' ? [slow, middle] : values.matters === 'fast' ? [middle, fast] : [slow, fast];
    const wanted = wantedOf(build, speedRange(from, to, 5), right);
    const damper = damperForAnyOil({ shock, piston, oil: build.oil });
    const density = oilDensity('silicone', values.temperature, typicalDensityAt15Celsius.silicone);
    const found = matchViscosity({ damper, density, wanted });
    const { bottles } = shelfOf(parts);
    const singles = bottles
      .map((bottle, place): MatchedFill => {
        const state = fillState(bottles, { first: place, secondShare: 0 }, values.temperature);
        const model = damperModel(damper, { kinematicViscosity: state.typical, density: state.density });
        return { name: bottle.name, model, mismatch: dampingMismatch(model, wanted) };
      })
      .sort((a, b) => a.mismatch.typical - b.mismatch.typical);
    const exact: MatchedFill = {
      name: 'exact oil',
      model: damperModel(damper, { kinematicViscosity: found.kinematicViscosity, density }),
      mismatch: found.mismatch,
    };
    const others = [0.9, 1.1].map((factor) => {
      const kinematicViscosity = factor * found.kinematicViscosity;
      return dampingMismatch(damperModel(damper, { kinematicViscosity, density }), wanted).typical;
    });
    const match: Match = {
      build,
      wanted,
      exact,
      singles,
      temperature: values.temperature,
      right: feelsRight(build, right),
    };
    const label = labelOf(found.kinematicViscosity, values.temperature);
    const mix = mixed(bottles, found.kinematicViscosity, values.temperature, values.needed);
    const [nearest] = singles;
    const setting = `${piston.name} in ${shock.name} at ${celsius(values.temperature)}`;
    return {
      answer: found.atLimit
        ? `No oil makes ${setting} damp like ${build.name}: the holes alone decide. Another piston is needed.`
        : `For ${setting}, ${build.name} ${comesBack(found.mismatch.typical)} on a ${cSt(label)} silicone${nearest === undefined ? '' : `; the nearest bottle is ${nearest.name}, ${softOrHard(nearest.mismatch.meanRatio)}`}${mix === undefined ? '.' : `, and ${mix.recipe} is that oil.`}`,
      blocks: [
        { kind: 'figure', figure: matchFigure(match, [slow, fast]) },
        { kind: 'figure', figure: mismatchFigure(match) },
        bottleTable(match, label),
        ...(mix === undefined ? [] : [mixText(mix)]),
        ...residueText(match),
        {
          kind: 'check',
          claim: 'No oil a tenth thinner or thicker comes nearer than the exact one',
          passed: found.atLimit || others.every((typical) => typical >= found.mismatch.typical),
          detail: `typical deviation ${percent(found.mismatch.typical)}; thinner ${percent(others[0] ?? 0)}, thicker ${percent(others[1] ?? 0)}`,
        },
        ...cornerTable(parts.builds, right, slow, fast),
        ...heavierText(build, values.heavier, wanted, values.temperature, damper),
        { kind: 'heading', text: 'Before you mix and fill' },
        ...[...blendCautions, ...workCautions].map((text) => ({ kind: 'caution', text }) as const),
        {
          kind: 'assumptions',
          items: [
            `${build.name} is wanted as it is on ${match.right.oil.name} at ${celsius(match.right.temperature)}.`,
            `Shaft speeds from ${shaftSpeed(from)} to ${shaftSpeed(to)}, both ways, count alike, ten percent too hard as much as ten percent too soft.`,
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
