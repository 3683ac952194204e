import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { strokeForces } from '../base/after-onset.js';
import { curveOf } from '../base/chosen-shock.js';
import { dampingPerSpeedFigure, type ForceCurve, forceFigure } from '../base/force-figure.js';
import { celsius, newtons, percent, shaftSpeed } from '../base/wording.js';
import { type Conditions, holdsBack, type OilInShock } from './oils.js';
import { lossFromColdToHot } from './reading.js';

/** Curves so smooth need no more: an exponential between two of them is off by a ten-thousandth. */
const temperatureSteps = 15;

/** The least and the greatest of the oils. */
function ends(
  oils: readonly OilInShock[],
  value: (oil: OilInShock) => number,
): readonly [
  { readonly name: string; readonly value: number },
  { readonly name: string; readonly value: number },
] {
  const sorted = oils.map((oil) => ({ name: oil.name, value: value(oil) })).sort((a, b) => a.value - b.value);
  const [least, most] = [sorted[0], sorted.at(-1)];
  if (least === undefined || most === undefined) throw new RangeError('no oil to compare');
  return [least, most];
}

/** Force against shaft speed and damping per speed, one line an oil. */
export function forceFigures(oils: readonly OilInShock[], at: Conditions): readonly [Figure, Figure] {
  const curves: readonly ForceCurve[] = oils.map(({ name, build }) => curveOf(name, build, at.temperature));
  const [softest, hardest] = ends(oils, (oil) => holdsBack(oil, at.temperature, at.middle).typical);
  const pushed = curves
    .map(({ name, model }) => ({ name, force: strokeForces(model, at.fast).afterTravel.dampingForce }))
    .sort((one, other) => one.force - other.force);
  const [first, last] = [pushed[0], pushed.at(-1)];
  return [
    forceFigure(
      {
        id: 'force-velocity',
        title: `Damping force against shaft speed at ${celsius(at.temperature)}`,
        alt: `In rebound at ${shaftSpeed(at.middle)} the oil holds back with ${newtons(softest.value)} (${softest.name}) to ${newtons(hardest.value)} (${hardest.name}); pushed in at ${shaftSpeed(at.fast)} it is ${newtons(first?.force ?? 0)} (${first?.name}) to ${newtons(last?.force ?? 0)} (${last?.name}) after the travel of the line.`,
      },
      curves,
      at.fast,
    ),
    dampingPerSpeedFigure(
      {
        id: 'per-speed',
        title: 'The same for each metre per second',
        alt: `Damping force over shaft speed, where slow speeds can be seen: at ${shaftSpeed(at.slow)} in rebound the oils hold back with ${ends(
          oils,
          (oil) => holdsBack(oil, at.temperature, at.slow).typical,
        )
          .map(({ name, value }) => `${newtons(value)} (${name})`)
          .join(' to ')}.`,
      },
      curves,
      at.fast,
    ),
  ];
}

/** Rebound damping at the middle shaft speed from the coldest to the hottest oil. */
export function coldToHotFigure(oils: readonly OilInShock[], at: Conditions): Figure {
  const temperatures = Array.from(
    { length: temperatureSteps + 1 },
    (_, step) => at.coldest + ((at.hottest - at.coldest) * step) / temperatureSteps,
  );
  const [least, most] = ends(oils, (oil) => lossFromColdToHot(oil, at.coldest, at.hottest, at.middle));
  return lineChart({
    id: 'cold-to-hot',
    title: `Rebound damping at ${shaftSpeed(at.middle)} from cold to hot`,
    alt: `From ${celsius(at.coldest)} to ${celsius(at.hottest)} ${least.name} loses ${oils.length === 1 ? `${percent(least.value)} of its damping` : `the least of its damping, ${percent(least.value)}, and ${most.name} the most, ${percent(most.value)}`}.`,
    x: { label: 'Oil temperature', unit: '°C', dimension: 'temperature' },
    y: { label: 'Damping force', unit: 'N', dimension: 'force' },
    series: oils.map((oil) => ({
      name: oil.name,
      points: temperatures.map((temperature) => {
        const { typical, low, high } = holdsBack(oil, temperature, at.middle);
        return { x: temperature, y: typical, ...(high > low ? { low, high } : {}) };
      }),
    })),
    rules: [{ axis: 'x', value: at.temperature, label: celsius(at.temperature) }],
  });
}
