import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { millimetres } from '../base/bench-wording.js';
import type { Landed } from '../base/landed.js';
import { newtons } from '../base/wording.js';

const time = { label: 'Time since the wheel touched', unit: 's', dimension: 'time' } as const;

/** Points of each line. A trace has as many or a whole multiple of them, so that all lines have the same times and a row of numbers is full. */
export const drawnParts = 240;

/** A line of a landing at the shared times. */
function pointsOf(
  times: Float64Array,
  values: Float64Array,
): readonly { readonly x: number; readonly y: number }[] {
  const every = (times.length - 1) / drawnParts;
  const whole = times.at(-1) ?? 0;
  return Array.from({ length: drawnParts + 1 }, (_, place) => ({
    x: (place * whole) / drawnParts,
    y: values[place * every] ?? 0,
  }));
}

/** Shaft travel against time, with where the bump stop begins. */
export function travelFigure(shown: readonly Landed[], bumpStop: number): Figure {
  const [first] = shown;
  return lineChart({
    id: 'travel',
    title: 'How far the shaft goes in',
    alt: `${first?.moving.build.oil.name ?? ''}: ${millimetres(first?.outcome.largestTravel.value ?? 0)} in at most; the bump stop begins at ${millimetres(bumpStop)}.`,
    x: time,
    y: { label: 'Shaft travel', unit: 'mm', dimension: 'length' },
    series: shown.map(({ moving, outcome }) => ({
      name: moving.build.oil.name,
      points: pointsOf(outcome.trace.times, outcome.trace.travels),
    })),
    rules: [{ axis: 'y', value: bumpStop, label: 'bump stop' }],
  });
}

/** Force of the shock against time, without spring and stops. */
export function forceFigure(shown: readonly Landed[]): Figure {
  const [first] = shown;
  return lineChart({
    id: 'force',
    title: 'How hard the shock pushes, spring and stops left out',
    alt: `${first?.moving.build.oil.name ?? ''}: at most ${newtons(first?.outcome.largestShockForce.value ?? 0)} out, and ${newtons(-(first?.outcome.smallestShockForce.value ?? 0))} back in rebound.`,
    x: time,
    y: { label: 'Force of the shock', unit: 'N', dimension: 'force' },
    series: shown.map(({ moving, outcome }) => ({
      name: moving.build.oil.name,
      points: pointsOf(outcome.trace.times, outcome.trace.shockForces),
    })),
  });
}
