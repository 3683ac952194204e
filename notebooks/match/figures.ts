import type { DamperModel } from '../../lib/damper/damper-model.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { damperOfBuild, offBy, softOrHard } from '../base/decision-cases.js';
import { pointAt } from '../base/oil-forces.js';
import type { ShaftSpeeds } from '../base/shaft-speeds.js';
import { celsius, newtons, shaftSpeed } from '../base/wording.js';
import type { Match } from './matched.js';

const steps = 24;

/** Force against shaft speed in both directions: wanted, and on the exact oil and the nearest bottle. */
export function matchFigure(match: Match, { slow, middle, fast }: ShaftSpeeds): Figure {
  const { build, exact, right, same, singles, temperature } = match;
  const oil = createOil(right.oil.definition);
  const liked = damperModel(damperOfBuild(build), fluidAt(oil, right.temperature));
  const [nearest] = singles;
  const curve = (name: string, model: DamperModel) => ({
    name,
    points: Array.from({ length: 2 * steps + 1 }, (_, index) => {
      // No spring drives it out faster than the middle speed.
      const speed = ((index < steps ? middle : fast) * (index - steps)) / steps;
      return { x: speed, y: pointAt(model, speed).dampingForce };
    }),
  });
  const force = (model: DamperModel, speed: number): string =>
    newtons(Math.abs(pointAt(model, -speed).dampingForce));
  return lineChart({
    id: 'wanted-and-matched',
    title: 'Damping force: what you like, what you get if nothing is done, and on the nearest bottle',
    alt: `Pulled out at ${shaftSpeed(slow)}, ${build.name} holds back with ${force(liked, slow)} and the new shock on the exact oil with ${force(exact.model, slow)}; at ${shaftSpeed(middle)} it is ${force(liked, middle)} and ${force(exact.model, middle)}, and with nothing done ${force(same, middle)}.`,
    x: { label: 'Shaft speed, compression positive', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping force', unit: 'N', dimension: 'force' },
    series: [
      curve(`liked at ${celsius(right.temperature)}`, liked),
      curve(`${build.oil.name} in the new shock at ${celsius(temperature)}`, same),
      ...(nearest === undefined ? [] : [curve(nearest.name, nearest.model)]),
    ],
  });
}

/** What is left of the difference at each speed, rebound. */
export function mismatchFigure({ wanted, exact, singles }: Match): Figure {
  const shown = [exact, ...singles.slice(0, 2)];
  const line = ({ name, mismatch }: (typeof shown)[number]) => ({
    name,
    points: wanted.weights
      .map(({ speed }, index) => ({ x: -speed, y: mismatch.ratios[index] ?? 1 }))
      .filter(({ x }) => x > 0)
      .sort((a, b) => a.x - b.x),
  });
  const [nearest] = singles;
  // The oil of the same landing need not be that of the same curve.
  const whole = softOrHard(exact.mismatch.meanRatio);
  const leaves =
    whole === 'right' ? `leaves a typical deviation of ${offBy(exact.mismatch)}` : `is ${whole} on the whole`;
  const series = shown.map(line);
  const ratios = series.flatMap(({ points }) => points.map(({ y }) => y));
  return lineChart({
    id: 'what-is-left',
    title: 'Rebound damping over what you like, by shaft speed',
    alt: `The exact oil ${leaves}${nearest === undefined ? '' : `; ${nearest.name} is ${softOrHard(nearest.mismatch.meanRatio)} on the whole`}.`,
    x: { label: 'Shaft speed, rebound', unit: 'mm/s', dimension: 'speed' },
    y: {
      label: 'Damping over wanted damping',
      unit: '%',
      dimension: 'ratio',
      // Curves that are right show as a level line, not as the noise of their last digit.
      domain: [Math.min(0.95, ...ratios), Math.max(1.05, ...ratios)],
    },
    series,
    rules: [{ axis: 'y', value: 1, label: 'just as you like it' }],
  });
}
