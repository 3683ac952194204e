import { fillName } from '../../lib/decisions/day/fill-choice.js';
import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { softOrHard } from '../base/decision-cases.js';
import { celsius, clock, percent } from '../base/wording.js';
import type { BuildDay } from './build-days.js';

/** What is in one build when: a row for each reading, and one for each change between them. */
export function dayTable(
  { build, plan, problem }: BuildDay,
  place: number,
  readings: ReadonlySet<number>,
): TableBlock {
  const { bottles, parts } = problem;
  return {
    kind: 'table',
    id: `day-${place + 1}`,
    title: `The day of ${build.name}`,
    note: '"Off by" is the typical deviation from the wanted damping, at worst over the blending rules.',
    table: {
      columns: ['Time', 'Oil', 'Fill', 'Off by', 'Left alone'].map((label) => ({ label, unit: '' })),
      rows: plan.steps
        .filter(({ time, rebuilt }) => rebuilt || readings.has(time))
        .map((step) => [
          clock(step.time),
          celsius(step.temperature),
          `${step.rebuilt ? 'change to ' : ''}${fillName(bottles, step.choice, parts)}`,
          percent(step.mismatch),
          softOrHard(step.unchangedRatio),
        ]),
    },
  };
}
