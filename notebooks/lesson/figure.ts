import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { newtons, shaftSpeed } from '../base/wording.js';
import { type Bench, holdsBack } from './bench.js';

const steps = 40;

/** Rebound force before and after one change. */
export function beforeAfterFigure(
  id: string,
  title: string,
  benches: readonly [Bench, Bench],
  middle: number,
): Figure {
  const [before, after] = benches;
  return lineChart({
    id,
    title,
    alt: `In rebound at ${shaftSpeed(middle)} the shock holds back with ${newtons(holdsBack(before, middle))} first (${before.name}) and ${newtons(holdsBack(after, middle))} then (${after.name}).`,
    x: { label: 'Shaft speed in rebound', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping force', unit: 'N', dimension: 'force' },
    series: benches.map((one, index) => ({
      name: `${index === 0 ? 'first' : 'then'}: ${one.name}`,
      points: Array.from({ length: steps + 1 }, (_point, step) => {
        const speed = (middle * step) / steps;
        return { x: speed, y: holdsBack(one, speed) };
      }),
    })),
  });
}
