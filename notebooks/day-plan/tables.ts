import type { DayPlan, DayProblem } from '../../lib/decisions/day/day-plan.js';
import { fillName } from '../../lib/decisions/day/fill-choice.js';
import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { softOrHard } from '../base/decision-cases.js';
import { celsius, clock, percent } from '../base/wording.js';

/** What is in the shock when. */
export function dayTable({ bottles, parts }: DayProblem, { steps }: DayPlan): TableBlock {
  return {
    kind: 'table',
    id: 'day',
    title: 'The day',
    note: '"Off by" is the typical deviation from the wanted damping, at worst over the blending rules.',
    table: {
      columns: ['Time', 'Oil', 'Fill', 'Off by', 'Left alone'].map((label) => ({ label, unit: '' })),
      rows: steps.map((step) => [
        clock(step.time),
        celsius(step.temperature),
        `${step.rebuilt ? 'change to ' : ''}${fillName(bottles, step.choice, parts)}`,
        percent(step.mismatch),
        softOrHard(step.unchangedRatio),
      ]),
    },
  };
}
