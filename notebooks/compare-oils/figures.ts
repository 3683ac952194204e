import { symmetricSpeeds } from '../../lib/damper/force-velocity.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { dotChart } from '../../lib/plot/figure/dot-chart.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import {
  dampingAt,
  dampingRanges,
  modelAt,
  type OilCase,
  pointAt,
  typicalDamping,
} from '../base/oil-forces.js';
import { celsius, listed, newtons, percent, shaftSpeed } from '../base/wording.js';
import { lossFromColdToHot } from './reading.js';

const pointsEachWay = 30;
const temperatureSteps = 30;

/** The temperatures and shaft speeds that the page looks at. */
export interface Conditions {
  readonly temperature: number;
  readonly coldest: number;
  readonly hottest: number;
  readonly slow: number;
  readonly middle: number;
  readonly fast: number;
}

function extremes(cases: readonly OilCase[], force: (one: OilCase) => number) {
  const forces = cases.map((one) => ({ name: one.part.name, force: force(one) }));
  forces.sort((one, other) => one.force - other.force);
  const [softest, stiffest] = [forces[0], forces.at(-1)];
  if (softest === undefined || stiffest === undefined) throw new RangeError('no oil to compare');
  return { softest, stiffest };
}

/** What compression shows where the oil tears: the lines run level, and thicker oil buys nothing. */
function tornText(cases: readonly OilCase[], at: Conditions): string {
  const torn = cases
    .map((one) => pointAt(modelAt(one, at.temperature), at.fast))
    .filter(({ cavitating }) => cavitating)
    .map(({ dampingForce }) => dampingForce);
  if (torn.length === 0) return '';
  const [least, most] = [newtons(Math.min(...torn)), newtons(Math.max(...torn))];
  const which = torn.length === cases.length ? 'every oil' : `${torn.length} of ${cases.length} oils`;
  return `; pushed in, ${which} tears and holds ${least === most ? least : `${least} to ${most}`}`;
}

/** Force against shaft speed, one line an oil. */
export function forceVelocityFigure(cases: readonly OilCase[], at: Conditions): Figure {
  const speeds = symmetricSpeeds(at.fast, pointsEachWay);
  const { softest, stiffest } = extremes(cases, (one) => typicalDamping(one, at.temperature, -at.fast) * -1);
  return lineChart({
    id: 'force-velocity',
    title: `Damping force against shaft speed at ${celsius(at.temperature)}`,
    alt: `Pulled out at ${shaftSpeed(at.fast)} and ${celsius(at.temperature)}, the shock holds back with ${newtons(softest.force)} on ${softest.name} and ${newtons(stiffest.force)} on ${stiffest.name}${tornText(cases, at)}.`,
    x: { label: 'Shaft speed, compression positive', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping force', unit: 'N', dimension: 'force' },
    series: cases.map((one) => ({
      name: one.part.name,
      points: dampingRanges(one, at.temperature, speeds).map((range, index) => ({
        x: speeds[index] ?? 0,
        y: range.typical,
        ...(one.oil.isInterval ? { low: range.low, high: range.high } : {}),
      })),
    })),
  });
}

/** Force at the middle shaft speed from the coldest to the hottest oil. */
export function coldToHotFigure(cases: readonly OilCase[], at: Conditions): Figure {
  const temperatures = Array.from(
    { length: temperatureSteps + 1 },
    (_, step) => at.coldest + ((at.hottest - at.coldest) * step) / temperatureSteps,
  );
  const losses = cases
    .map((one) => ({ name: one.part.name, loss: lossFromColdToHot(one, at.coldest, at.hottest, at.middle) }))
    .sort((one, other) => one.loss - other.loss);
  const [steadiest, least] = [losses[0], losses.at(-1)];
  return lineChart({
    id: 'cold-to-hot',
    title: `Rebound damping at ${shaftSpeed(at.middle)} from cold to hot`,
    alt: `From ${celsius(at.coldest)} to ${celsius(at.hottest)}, ${steadiest?.name} loses ${percent(steadiest?.loss ?? 0)} of its damping and ${least?.name} ${percent(least?.loss ?? 0)}.`,
    x: { label: 'Oil temperature', unit: '°C', dimension: 'temperature' },
    y: { label: `Damping force at ${shaftSpeed(at.middle)}`, unit: 'N', dimension: 'force' },
    series: cases.map((one) => ({
      name: one.part.name,
      points: temperatures.map((temperature) => {
        const force = dampingAt(one, temperature, -at.middle);
        return {
          x: temperature,
          y: -force.typical,
          ...(one.oil.isInterval ? { low: -force.high, high: -force.low } : {}),
        };
      }),
    })),
    rules: [{ axis: 'x', value: at.temperature, label: celsius(at.temperature) }],
  });
}

/** Force at three shaft speeds, one row an oil, with whiskers from hot to cold. */
export function threeSpeedsFigure(cases: readonly OilCase[], at: Conditions): Figure {
  const speeds = [at.slow, at.middle, at.fast];
  const spans = speeds.map((speed) => {
    const { softest, stiffest } = extremes(cases, (one) => -typicalDamping(one, at.temperature, -speed));
    return `${newtons(softest.force)} to ${newtons(stiffest.force)} at ${shaftSpeed(speed)}`;
  });
  return dotChart({
    id: 'three-speeds',
    title: `Rebound damping at ${celsius(at.temperature)}, whiskers from ${celsius(at.hottest)} to ${celsius(at.coldest)}`,
    alt: `Over these oils the damping force spans ${listed(spans)}; the whiskers show what a day from ${celsius(at.coldest)} to ${celsius(at.hottest)} does to each.`,
    category: 'Oil',
    categories: cases.map(({ part }) => part.name),
    value: { label: 'Damping force', unit: 'N', dimension: 'force' },
    series: speeds.map((speed) => ({
      name: shaftSpeed(speed),
      dots: cases.map((one) => ({
        category: one.part.name,
        value: -typicalDamping(one, at.temperature, -speed),
        low: -typicalDamping(one, at.hottest, -speed),
        high: -typicalDamping(one, at.coldest, -speed),
      })),
    })),
  });
}
