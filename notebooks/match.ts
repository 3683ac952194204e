import type { Damper } from '../lib/damper/damper.js';
import { type DamperModel, damperModel } from '../lib/damper/damper-model.js';
import { dampingMismatch } from '../lib/decisions/match/damping-mismatch.js';
import { matchViscosity } from '../lib/decisions/match/match-viscosity.js';
import { oilDensity, typicalDensityAt15Celsius } from '../lib/fluid/oil/density.js';
import { fluidAt } from '../lib/fluid/oil/fluid-at.js';
import { createOil } from '../lib/fluid/oil/oil.js';
import { defineNotebook, type Page } from '../lib/page/index.js';
import { damperForAnyOil } from '../lib/parts/assembly/damper-for-any-oil.js';
import type { OilPart } from '../lib/parts/parts.js';
import { forceAssumptions, forceSources, oilSources, workCautions } from './base/basis.js';
import {
  blendCautions,
  decisionSources,
  feelsRight,
  labelOf,
  shelfOf,
  wantedOf,
} from './base/decision-cases.js';
import { motionSources } from './base/moving-build.js';
import { requireRunsIn } from './base/piston-in-bore.js';
import { requireRisingSpeeds } from './base/shaft-speeds.js';
import { speedsSentence } from './base/speed-events.js';
import { noLandingText } from './base/two-landings.js';
import { celsius } from './base/wording.js';
import { nearestLandings, oilsToLand } from './match/bottles-landing.js';
import { exactCheck } from './match/checks.js';
import { cornerTable, heavierText } from './match/corners.js';
import { curveAnswer, residueText } from './match/curve-words.js';
import { matchFigure, mismatchFigure } from './match/figures.js';
import { landingBlocks, sameLandingCheck } from './match/landing-blocks.js';
import { guessSentence, landingAnswer } from './match/landing-words.js';
import { type Asked, landingsOrWhy } from './match/landings.js';
import type { Match, MatchedFill } from './match/matched.js';
import { mixed, mixText } from './match/mix.js';
import { parameters } from './match/parameters.js';
import { sameLanding } from './match/same-landing.js';
import { matterText, weightsThatMatter } from './match/speeds.js';
import { bottleTable } from './match/tables.js';

export const notebook = defineNotebook({
  name: 'match',
  order: 65,
  title: 'The oil that makes another piston feel the same',
  question: 'I change the piston, the body or the day: which oil gives me back the damping I like?',
  parameters,
  run(parts, values): Page {
    const { build, piston, shock, slow, middle, right, now } = values;
    requireRisingSpeeds(values);
    requireRunsIn(piston, shock);
    const wanted = wantedOf(build, weightsThatMatter(values), right);
    const damper = damperForAnyOil({ shock, piston, oil: build.oil });
    const density = oilDensity('silicone', now, typicalDensityAt15Celsius.silicone);
    const byCurve = matchViscosity({ damper, density, wanted });
    const asked: Asked = { build, right: feelsRight(build, right), shock, piston, now, drop: values.drop };
    const landings = landingsOrWhy(asked, values.back === 'same landing');
    const byLanding =
      values.back === 'same landing' && typeof landings !== 'string'
        ? { landings, same: sameLanding(landings, now, byCurve.kinematicViscosity) }
        : undefined;
    const viscosity = byLanding?.same.found ? byLanding.same.kinematicViscosity : byCurve.kinematicViscosity;
    const { bottles } = shelfOf(parts);
    const singles = bottles.map((bottle): MatchedFill => {
      // Without its temperature, which would warm the gas of a damper for any oil.
      const { temperature: _, ...state } = fluidAt(bottle.oil, now);
      const model = damperModel(damper, state);
      return { name: bottle.name, model, mismatch: dampingMismatch(model, wanted) };
    });
    const exactModel = damperModel(damper, { kinematicViscosity: viscosity, density });
    const match: Match = {
      build,
      wanted,
      exact: { name: 'exact oil', model: exactModel, mismatch: dampingMismatch(exactModel, wanted) },
      singles:
        byLanding === undefined
          ? singles.sort((a, b) => a.mismatch.typical - b.mismatch.typical)
          : nearestLandings(byLanding.landings, parts, singles, viscosity, now),
      temperature: now,
      same: bindAt(damper, build.oil, now),
      right: asked.right,
    };
    const label = labelOf(viscosity, now);
    const mix = mixed(bottles, viscosity, now, values.needed);
    const setting = `${piston.name} in ${shock.name} at ${celsius(now)}`;
    return {
      answer:
        byLanding === undefined
          ? curveAnswer(match, setting, byCurve.atLimit, label, mix)
          : landingAnswer(
              match,
              setting,
              byLanding,
              label,
              mix,
              guessSentence(asked, byLanding.landings, byLanding.same),
            ),
      blocks: [
        { kind: 'figure', figure: matchFigure(match, values) },
        // Where only fast speeds count, no rebound does.
        ...(wanted.weights.some(({ speed }) => speed < 0)
          ? [{ kind: 'figure', figure: mismatchFigure(match) } as const]
          : []),
        ...(byLanding === undefined
          ? [
              bottleTable(match, label),
              ...(mix === undefined ? [] : [mixText(mix)]),
              ...residueText(match),
              exactCheck(match, damper, density, viscosity, byCurve.atLimit),
            ]
          : []),
        ...(typeof landings === 'string'
          ? [noLandingText(landings)]
          : landingBlocks(asked, landings, oilsToLand(parts, match, viscosity, label, byLanding?.same))),
        ...(byLanding === undefined
          ? []
          : [
              ...(mix === undefined || !byLanding.same.found ? [] : [mixText(mix)]),
              ...(byLanding.same.found
                ? [...residueText(match, 'landing'), sameLandingCheck(asked, byLanding.landings, viscosity)]
                : []),
            ]),
        ...cornerTable(parts.builds, right, slow, middle),
        ...heavierText(build, values.heavier, wanted, now, damper),
        { kind: 'heading', text: 'Before you mix and fill' },
        ...[...blendCautions, ...workCautions].map((text) => ({ kind: 'caution', text }) as const),
        {
          kind: 'assumptions',
          items: [
            `${build.name} is wanted as it is on ${match.right.oil.name} at ${celsius(match.right.temperature)}.`,
            `${matterText(values)} Ten percent too hard counts as much as ten percent too soft.`,
            speedsSentence([build, ...parts.builds], values),
            'The number on the bottle is the viscosity at 25 °C of a plain silicone; a label that lies makes the answer lie.',
            ...(typeof landings === 'string' ? [] : landings.assumptions),
            ...forceAssumptions,
          ],
        },
      ],
      sources: [
        ...decisionSources,
        ...oilSources,
        ...forceSources,
        ...motionSources,
        'Rao, Mechanical Vibrations, SI ed. 2017, chapter 2: natural frequency and damping ratio.',
      ],
    };
  },
});

/** The oil of the build as it is, in the new shock at the temperature to come. */
function bindAt(damper: Damper, oil: OilPart, temperature: number): DamperModel {
  return damperModel(damper, fluidAt(createOil(oil.definition), temperature));
}
