import { dampingAnswers, type ForcePlace } from '../lib/measure/answer/damping-answer.js';
import { wideningOf } from '../lib/measure/answer/fit-quality.js';
import { exactLaw } from '../lib/measure/answer/law-error.js';
import { drawnForces, posteriorOf } from '../lib/measure/answer/posterior.js';
import { fitShock, type ShockFit } from '../lib/measure/fit/fit-shock.js';
import { spreadOf } from '../lib/numeric/sampling/draws.js';
import { type Block, defineNotebook, later, type Page, pageInPieces } from '../lib/page/index.js';
import { forceSources, oilSources } from './base/basis.js';
import {
  measuredCase,
  measuringAssumptions,
  measuringCautions,
  measuringSources,
  plusMinus,
  whichShock,
} from './base/measured-shocks.js';
import { readingsTables } from './base/readings-table.js';
import { middleSpeed } from './base/shaft-speeds.js';
import { shaftSpeed } from './base/wording.js';
import { dynoGroups } from './what-you-have/dyno-groups.js';
import { dynoSentences, dynoTables } from './what-you-have/dyno-words.js';
import { equivalentOil, labelSentence } from './what-you-have/equivalent-oil.js';
import { forceFigure } from './what-you-have/figures.js';
import { oddSentences, scatterSentence, tellingSentence } from './what-you-have/sentences.js';

const normal95 = 1.959963984540054;
/** Draws of the check; fewer where a dyno makes each of them long. */
const draws = { few: 300, usual: 1000 };

/** Friction as a sentence has it: never a negative one. */
function frictionText(fit: ShockFit): string {
  const index = fit.problem.unknowns.findIndex(({ quantity }) => quantity === 'friction');
  const half = normal95 * (fit.standardDeviations[index] ?? 0);
  const { friction } = fit.state;
  return half < friction
    ? `friction ${plusMinus(friction, half, 'N')}`
    : `friction below ${(friction + half).toFixed(2)} N`;
}

/** The linear interval against draws of the posterior, which share nothing with it but the law. Neither is widened for scatter. */
function bandCheck(fit: ShockFit, speed: number, place: ForcePlace): Block {
  const [answer] = dampingAnswers(fit, [speed], place, exactLaw);
  const forces = fit.problem.readings.some(({ kind }) => kind === 'force');
  const count = forces ? draws.few : draws.usual;
  const drawn = posteriorOf(fit, count);
  const { quantiles } = spreadOf(drawnForces(fit, drawn, speed, place), drawn.weights, [0.025, 0.975]);
  const half = (normal95 * (answer?.readingDeviation ?? 0)) / wideningOf(fit);
  const centre = Math.log(Math.abs(answer?.dampingForce ?? 1));
  const off = Math.max(
    ...quantiles.map((value, end) => Math.abs(Math.log(value) - centre - (end === 0 ? -half : half)) / half),
  );
  return {
    kind: 'check',
    claim: 'The interval of the force, linear about the fit, is that of draws of what the shock may be',
    passed: off < 0.25,
    detail: `${count} draws, worth ${Math.round(drawn.effective)} independent ones; an end differs by ${(100 * off).toFixed(0)} % of the half width`,
    ifFailed: `Trust the interval of the draws, ${quantiles.map((value) => value.toFixed(2)).join(' N to ')} N`,
  };
}

export const notebook = defineNotebook({
  name: 'what-you-have',
  order: 86,
  title: 'What is really in your shock',
  question: 'I timed a weight on my shock: what oil does it behave like, and how hard does it push back?',
  parameters: { which: whichShock, speed: middleSpeed },
  run(parts, { which, speed }): Page {
    const measured = measuredCase(parts, which);
    const { problem, name, temperature } = measured;
    const fit = fitShock(problem);
    const oil = equivalentOil(measured);
    const place = { position: measured.build.shock.stroke / 2, temperature };
    const [answer] = dampingAnswers(fit, [speed], place);
    const groups = dynoGroups(fit);
    const force = Math.abs(answer?.dampingForce ?? 0);
    const half = normal95 * Math.hypot(answer?.readingDeviation ?? 0, answer?.lawDeviation ?? 0) * force;
    return pageInPieces({
      answer: `${name} behaves like ${plusMinus(1e6 * oil.kinematicViscosity, 1e6 * oil.half, 'cSt')} oil through the holes you stated; ${frictionText(fit)}; at ${shaftSpeed(speed)} it pushes back with ${plusMinus(force, half, 'N')} (19 of 20). ${labelSentence(measured, oil)}`,
      pieces: [
        later(() => ({
          kind: 'figure',
          figure: forceFigure(name, fit, Math.max(speed, 0.1) * 1.3, place, groups),
        })),
        later(() => ({
          kind: 'list',
          items: [
            tellingSentence(fit),
            scatterSentence(fit),
            ...dynoSentences(fit, groups),
            ...oddSentences(fit),
          ],
        })),
        later(() => dynoTables(groups)),
        later(() => readingsTables(fit)),
        later(() => bandCheck(fit, speed, place)),
        { kind: 'caution', text: measuringCautions },
        { kind: 'assumptions', items: measuringAssumptions },
      ],
      sources: [...measuringSources, ...forceSources, ...oilSources],
    });
  },
});
