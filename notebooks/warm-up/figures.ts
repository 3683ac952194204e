import type { Figure } from '../../lib/plot/chart/figure.js';
import type { LineSeries } from '../../lib/plot/chart/lines.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { celsius, percent, shaftSpeed } from '../base/wording.js';
import { atRunEnd, type Warmed } from './warmed.js';

const time = { label: 'Time since the start', unit: 'min', dimension: 'time' } as const;

/** Every fourth point of a run is drawn. */
const stride = 4;

function seriesOf(
  likely: Warmed,
  ends: readonly Warmed[],
  still: Warmed,
  shownOf: (warmed: Warmed, temperature: number) => number,
): readonly LineSeries[] {
  const places = Array.from({ length: (likely.result.times.length - 1) / stride + 1 }, (_, i) => i * stride);
  const at = (warmed: Warmed, index: number) => shownOf(warmed, warmed.result.temperatures[index] ?? 0);
  return [
    {
      name: 'in wind',
      points: places.map((index) => {
        const all = [likely, ...ends].map((one) => at(one, index));
        return {
          x: likely.result.times[index] ?? 0,
          y: all[0] ?? 0,
          low: Math.min(...all),
          high: Math.max(...all),
        };
      }),
    },
    {
      name: 'in still air',
      points: places.map((index) => ({ x: still.result.times[index] ?? 0, y: at(still, index) })),
    },
  ];
}

const parked = ({ result, runEnd }: Warmed) =>
  ({ axis: 'x', value: result.times[runEnd] ?? 0, label: 'parked' }) as const;

/** Temperature of the oil over run and rest. */
export function temperatureFigure(likely: Warmed, ends: readonly Warmed[], still: Warmed): Figure {
  return lineChart({
    id: 'temperature',
    title: 'Temperature of the oil',
    alt: `At the end of the run the oil has ${celsius(atRunEnd(likely))} in wind and ${celsius(atRunEnd(still))} in still air; then the car stands. The band is what the guesses of body and wind leave open.`,
    x: time,
    y: { label: 'Oil', unit: '°C', dimension: 'temperature' },
    series: seriesOf(likely, ends, still, (_, temperature) => temperature),
    rules: [parked(likely)],
  });
}

/** Damping left over run and rest. */
export function dampingFigure(likely: Warmed, ends: readonly Warmed[], still: Warmed): Figure {
  return lineChart({
    id: 'damping-left',
    title: 'Damping left',
    alt: `At the end of the run ${percent(likely.left(atRunEnd(likely)))} of the damping at ${shaftSpeed(likely.speed)} is left in wind and ${percent(still.left(atRunEnd(still)))} in still air.`,
    x: time,
    y: { label: 'Damping, the start is 100', unit: '%', dimension: 'ratio' },
    series: seriesOf(likely, ends, still, (warmed, temperature) => warmed.left(temperature)),
    rules: [parked(likely)],
  });
}
