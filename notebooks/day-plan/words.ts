import type { DayStep } from '../../lib/decisions/day/day-plan.js';
import { fillName } from '../../lib/decisions/day/fill-choice.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { cSt, labelTemperature, softOrHard } from '../base/decision-cases.js';
import { celsius, clock, listed, percent } from '../base/wording.js';
import type { BuildDay } from './build-days.js';

/** What to fill into one build when, and what leaving it alone would do. */
export function daySentence({ build, plan, problem, worst }: BuildDay): string {
  const { bottles, parts, worthwhile } = problem;
  const { steps, rebuilds } = plan;
  const name = (step: DayStep | undefined): string =>
    step === undefined ? '' : fillName(bottles, step.choice, parts);
  const changes = steps
    .filter(({ rebuilt }) => rebuilt)
    .map((step) => `change to ${name(step)} at ${clock(step.time)} (${celsius(step.temperature)})`);
  const worstAlone = steps.reduce((a, b) => (b.unchangedMismatch > a.unchangedMismatch ? b : a));
  const left = `left alone it would be ${softOrHard(worstAlone.unchangedRatio)} at ${clock(worstAlone.time)} (${celsius(worstAlone.temperature)})`;
  const start = `${build.name}: start on ${name(steps[0])}`;
  const short =
    worst > worthwhile
      ? ` Nothing on the shelf comes nearer than ${percent(worst)} over all speeds: ${shelfText(problem)}`
      : '';
  if (rebuilds > 0) return `${start}, ${listed(changes)}; ${left}.${short}`;
  if (short !== '') return `${start} and leave it; ${left}.${short}`;
  return `${start} and leave it: ${left}, which is not worth a rebuild.`;
}

/** What there is to choose from, so that a reader sees what is missing. */
function shelfText({ bottles }: BuildDay['problem']): string {
  const labels = bottles.map(({ oil }) => fluidAt(oil, labelTemperature).kinematicViscosity);
  return `the bottles run from ${cSt(Math.min(...labels))} to ${cSt(Math.max(...labels))} (at 25 °C).`;
}

/** When the fill of the morning is off by as much as a rebuild is worth. */
export function unchangedSentence({ build, plan, problem }: BuildDay): string {
  const limit = percent(problem.worthwhile);
  return plan.worthwhileFrom === undefined
    ? `${build.name}: left alone, the fill of the morning is never off by more than ${limit}.`
    : `${build.name}: left alone, the fill of the morning is off by ${limit} at ${clock(plan.worthwhileFrom)}; from then on a rebuild is worth its work.`;
}
