import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { millimetres } from '../base/bench-wording.js';
import type { Landed } from '../base/landed.js';
import { newtons } from '../base/wording.js';

const time = { label: 'Time since the wheel touched', unit: 's', dimension: 'time' } as const;

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
      points: Array.from(outcome.trace.times, (x, index) => ({ x, y: outcome.trace.travels[index] ?? 0 })),
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
      points: Array.from(outcome.trace.times, (x, index) => ({
        x,
        y: outcome.trace.shockForces[index] ?? 0,
      })),
    })),
  });
}
