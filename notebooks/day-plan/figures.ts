import type { DayProblem, DayStep } from '../../lib/decisions/day/day-plan.js';
import { fillName } from '../../lib/decisions/day/fill-choice.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import type { LineSeries } from '../../lib/plot/chart/lines.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { softOrHard } from '../base/decision-cases.js';
import { celsius, clock, percent } from '../base/wording.js';
import type { BuildDay } from './build-days.js';

/** Damping over wanted damping through the day, with the plan and with nothing changed. */
export function dayFigure({ build, plan, problem }: BuildDay, place: number): Figure {
  const { worthwhile } = problem;
  const { steps } = plan;
  const ratios = steps.flatMap(({ ratio, unchangedRatio }) => [ratio, unchangedRatio]);
  const ends = [
    Math.min(0.95 / (1 + worthwhile), ...ratios),
    Math.max(1.05 * (1 + worthwhile), ...ratios),
  ] as const;
  const worst = steps.reduce((a, b) => (b.unchangedMismatch > a.unchangedMismatch ? b : a));
  const planned = steps.reduce((a, b) => (b.mismatch > a.mismatch ? b : a));
  return lineChart({
    id: `damping-through-the-day-${place + 1}`,
    title: `${build.name}: damping through the day, as a part of what you want`,
    alt: `Left alone, the shock is ${softOrHard(worst.unchangedRatio)} at ${clock(worst.time)} (${celsius(worst.temperature)}); with the plan it is off by ${percent(planned.mismatch)} at most.`,
    x: { label: 'Hour of the day', unit: 'h', dimension: 'time' },
    y: {
      label: 'Damping over wanted damping',
      unit: '%',
      dimension: 'ratio',
      domain: [Math.floor(ends[0] * 20) / 20, Math.ceil(ends[1] * 20) / 20],
    },
    series: [
      ...fillLines(problem, steps),
      {
        name: 'left alone',
        points: steps.map(({ time, unchangedRatio }) => ({ x: time, y: unchangedRatio })),
      },
    ],
    rules: [
      { axis: 'y', value: 1 + worthwhile, label: 'too hard: worth a rebuild' },
      { axis: 'y', value: 1 / (1 + worthwhile), label: 'too soft: worth a rebuild' },
    ],
  });
}

/** One line for each fill, from the time it goes in to the time it comes out. */
function fillLines({ bottles, parts }: DayProblem, steps: readonly DayStep[]): readonly LineSeries[] {
  const lines: { readonly name: string; readonly points: { readonly x: number; readonly y: number }[] }[] =
    [];
  for (const { time, choice, ratio, rebuilt, ratioBefore } of steps) {
    if (rebuilt && ratioBefore !== undefined) lines.at(-1)?.points.push({ x: time, y: ratioBefore });
    if (rebuilt || lines.length === 0)
      lines.push({
        name: `${lines.length === 0 ? '' : `from ${clock(time)} `}${fillName(bottles, choice, parts)}`,
        points: [],
      });
    lines.at(-1)?.points.push({ x: time, y: ratio });
  }
  return lines.filter(({ points }) => points.length > 1).slice(0, 11);
}
