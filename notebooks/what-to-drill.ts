import { keptResults } from '../lib/base/kept-results.js';
import type { DesignFront, DesignProblem } from '../lib/decisions/design/design-problem.js';
import { designSearch } from '../lib/decisions/design/design-search.js';
import { finish } from '../lib/decisions/search/search.js';
import { createOil } from '../lib/fluid/oil/oil.js';
import {
  defineNotebook,
  later,
  once,
  onePart,
  type Page,
  pageInPieces,
  severalParts,
} from '../lib/page/index.js';
import type { Build } from '../lib/parts/parts.js';
import { roundedText } from '../lib/units/index.js';
import { forceAssumptionsOfOtherHoles, forceSources, oilSources, workCautions } from './base/basis.js';
import { oilTemperature } from './base/day.js';
import { damperOfBuild, feelsRight } from './base/decision-cases.js';
import { cornerOf, motionLimits, motionSources } from './base/moving-build.js';
import { drillOff, temperatureOff } from './base/tolerances.js';
import { noLandingText } from './base/two-landings.js';
import { celsius, percent, shaftSpeed } from './base/wording.js';
import { answerOf } from './what-to-drill/answer.js';
import { candidateParameters, candidates } from './what-to-drill/candidates.js';
import { frontChecks } from './what-to-drill/checks.js';
import { evidence } from './what-to-drill/evidence.js';
import { found, robustLimit, type Shown } from './what-to-drill/found.js';
import { landingsOrWhy, landingTable, pickByLanding } from './what-to-drill/landings.js';
import { millimetres } from './what-to-drill/naming.js';
import { wantedForces, wantedParameters } from './what-to-drill/wanted.js';

/** What a search finds does not hang on the drop from which it is landed afterwards. */
const searches = keptResults<Build, DesignFront>(2);

export const notebook = defineNotebook({
  name: 'what-to-drill',
  order: 67,
  title: 'Which piston to drill, and the oil for it',
  question:
    'I want other damping when slow than as fast as the spring drives it: which holes do I drill, and which oil do I fill?',
  parameters: {
    build: onePart({
      list: 'builds',
      label: 'Start from',
      meaning: 'Build',
      help: 'The shock that gets the piston, and the damping that the changes start from.',
    }),
    ...wantedParameters,
    temperature: oilTemperature,
    oils: severalParts({ list: 'oils', atMost: 8, label: 'Oils', help: 'The oils to try.' }),
    ...candidateParameters,
    drillOff,
    temperatureOff,
    robust: robustLimit,
  },
  run(parts, values): Page {
    const { build, temperature, slow } = values;
    const wanted = wantedForces(build, values);
    const tried = candidates(parts, build, values);
    const problem: DesignProblem = {
      damper: damperOfBuild(build),
      ...tried,
      oils: values.oils.map(({ name, definition }) => ({ name, oil: createOil(definition) })),
      temperature,
      slow: wanted.slow,
      fast: wanted.fast,
      drillError: values.drillOff,
      temperatureError: values.temperatureOff,
    };
    const { front, computed, unfit } = searches(build, problem, () => finish(designSearch(problem)));
    const right = feelsRight(build, temperature);
    const byForce = found({ parts, build, problem, front, limit: values.robust });
    const same = values.back === 'same landing';
    const land = (shown: readonly Shown[]) => landingsOrWhy(same, byForce, shown, values.oils, values.drop);
    // Where force alone decides they are shown further down, and no more.
    const landings = once(() =>
      land(same ? byForce.shown : byForce.pick === undefined ? [] : [byForce.pick]),
    );
    const compared = same ? landings() : '';
    const picked = typeof compared === 'string' ? undefined : pickByLanding(compared, byForce.shown);
    const search = {
      ...byForce,
      ...(picked === undefined ? {} : { pick: picked }),
      ...(wanted.beside === undefined ? {} : { beside: wanted.beside }),
    };
    const errors = `a drill ${millimetres(values.drillOff)} or oil ${roundedText(values.temperatureOff, 3)} K off`;
    return pageInPieces({
      answer: answerOf(search, wanted.said, errors, typeof compared === 'string' ? undefined : compared),
      pieces: [
        later(() =>
          search.pick === undefined
            ? []
            : evidence(search, search.pick, errors, { computed, all: front.length }),
        ),
        later(() => {
          const all = landings();
          return typeof all === 'string' ? noLandingText(all) : landingTable(all);
        }),
        later(() => frontChecks(search, front)),
        {
          kind: 'caution',
          text: 'Drill with the piston in a vice or on a jig, never in your hand, and with eye protection. Deburr both faces: a burr makes a hole narrower than its drill. Clean the piston before it goes in.',
        },
        ...workCautions.map((text) => ({ kind: 'caution', text }) as const),
        later(() => ({
          kind: 'assumptions',
          items: [
            `${build.name} feels right on ${right.oil.name} at ${celsius(right.temperature)}; the new piston runs in ${build.shock.name} with the same rim, on oil at ${celsius(temperature)}.`,
            `Tried: ${values.mostHoles === 1 ? 'one hole' : `1 to ${values.mostHoles} holes`} on one circle, drills from ${millimetres(values.smallest)} to ${millimetres(values.largest)} in steps of ${millimetres(values.step)}, straight${values.taper === 0 ? '' : ` or reamed ${millimetres(values.taper)} wider at either face`}, in pistons ${tried.thicknesses.map(millimetres).join(', ')} thick, which are those of the parts file for this bore.`,
            `Between holes, shaft and rim 0.3 mm of land must stay (common practice, no source); ${unfit === 0 ? 'every design leaves it' : `${unfit} designs do not leave it and were left out`}. Discs over the holes are not tried.`,
            `"Off" is the larger of the errors in compression and rebound, at ${shaftSpeed(slow)} and at ${shaftSpeed(wanted.fast.speed)}; twice as hard is as far off as half as hard.`,
            ...(same
              ? [
                  `The search asks for the force of ${build.name} at ${shaftSpeed(wanted.fast.speed)}, as fast as it goes in when it lands from 10 cm, and every design of the table then lands; one part of travel counts as five of slow force.`,
                ]
              : []),
            ...(typeof landings() === 'string' ? [] : [...cornerOf(build).guesses, ...motionLimits]),
            `A design is called robust where ${errors} changes none of the four forces by more than ${percent(values.robust)}.`,
            'Edges are sharp; a chamfer or a worn edge lowers the force by a few percent.',
            ...forceAssumptionsOfOtherHoles,
          ],
        })),
      ],
      sources: [
        'Kung, Luccio & Preparata, J. ACM 22 (1975) 469: what no other beats in several respects (from memory).',
        ...oilSources,
        ...forceSources,
        ...motionSources,
      ],
    });
  },
});
