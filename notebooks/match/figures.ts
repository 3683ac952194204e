import type { DamperModel } from '../../lib/damper/damper-model.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { damperOfBuild, softOrHard } from '../base/decision-cases.js';
import { pointAt } from '../base/oil-forces.js';
import { celsius, newtons, percent, shaftSpeed } from '../base/wording.js';
import type { Match } from './matched.js';

const steps = 24;

/** Force against shaft speed in both directions: wanted, and on the exact oil and the nearest bottle. */
export function matchFigure(match: Match, [slow, fast]: readonly [number, number]): Figure {
  const { build, right, exact, singles } = match;
  const oil = createOil(right.oil.definition);
  const liked = damperModel(damperOfBuild(build), fluidAt(oil, right.temperature));
  const [nearest] = singles;
  const curve = (name: string, model: DamperModel) => ({
    name,
    points: Array.from({ length: 2 * steps + 1 }, (_, index) => {
      const speed = (fast * (index - steps)) / steps;
      return { x: speed, y: pointAt(model, speed).dampingForce };
    }),
  });
  const force = (model: DamperModel, speed: number): string =>
    newtons(Math.abs(pointAt(model, -speed).dampingForce));
  return lineChart({
    id: 'wanted-and-matched',
    title: 'Damping force: what you like, and what you get back',
    alt: `Pulled out at ${shaftSpeed(slow)}, ${build.name} holds back with ${force(liked, slow)} and the new shock on the exact oil with ${force(exact.model, slow)}; at ${shaftSpeed(fast)} it is ${force(liked, fast)} and ${force(exact.model, fast)}.`,
    x: { label: 'Shaft speed, compression positive', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping force', unit: 'N', dimension: 'force' },
    series: [
      curve(`liked at ${celsius(right.temperature)}`, liked),
      curve('exact oil', exact.model),
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
  return lineChart({
    id: 'what-is-left',
    title: 'Rebound damping over what you like, by shaft speed',
    alt: `The exact oil leaves a typical deviation of ${percent(exact.mismatch.typical)}${nearest === undefined ? '' : `; ${nearest.name} is ${softOrHard(nearest.mismatch.meanRatio)} on the whole`}.`,
    x: { label: 'Shaft speed, rebound', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping over wanted damping', unit: '%', dimension: 'ratio' },
    series: shown.map(line),
    rules: [{ axis: 'y', value: 1, label: 'just as you like it' }],
  });
}
