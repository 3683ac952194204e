import {
  betweenReadings,
  type DayPlan,
  type DayProblem,
  type DayTemperature,
  dayPlan,
} from '../../lib/decisions/day/day-plan.js';
import type { SpeedWeights } from '../../lib/decisions/match/speed-weights.js';
import { finish } from '../../lib/decisions/search/search.js';
import type { Build } from '../../lib/parts/parts.js';
import { damperOfBuild, type Shelf, wantedOf } from '../base/decision-cases.js';

/** Longest time between two places at which a plan is looked at [s]. */
const longestStep = 1200;

/** The day of one build: what was asked and the plan. */
export interface BuildDay {
  readonly build: Build;
  readonly problem: DayProblem;
  readonly plan: DayPlan;
  /** Largest mismatch with the plan, between the readings too. */
  readonly worst: number;
}

/** A plan for each build, from readings of the oil and the temperatures between them. */
export function buildDays(
  builds: readonly Build[],
  { bottles }: Shelf,
  readings: readonly DayTemperature[],
  asked: {
    readonly weights: SpeedWeights;
    readonly right: number;
    readonly worthwhile: number;
    readonly blend: number;
  },
): readonly BuildDay[] {
  const temperatures = betweenReadings(readings, longestStep);
  return builds.map((build) => {
    const problem: DayProblem = {
      damper: damperOfBuild(build),
      wanted: wantedOf(build, asked.weights, asked.right),
      bottles,
      temperatures,
      worthwhile: asked.worthwhile,
      parts: asked.blend,
    };
    const plan = finish(dayPlan(problem));
    return { build, problem, plan, worst: Math.max(...plan.steps.map(({ mismatch }) => mismatch)) };
  });
}
