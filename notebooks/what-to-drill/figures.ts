import type { DamperModel } from '../../lib/damper/damper-model.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { symmetricSpeeds } from '../../lib/damper/force-velocity.js';
import { oilForce } from '../../lib/damper/oil-force.js';
import { drilledDamper } from '../../lib/decisions/design/drilled-damper.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { scatterChart } from '../../lib/plot/figure/scatter-chart.js';
import { newtons, percent, shaftSpeed } from '../base/wording.js';
import { asItIs, type Found, type Shown } from './found.js';

const pointsEachWay = 30;

/** Error when slow against error when fast; what stands small errors has another shape. */
export function frontFigure({ shown, owned, problem }: Found, errors: string): Figure {
  const marks = (robust: boolean) =>
    shown
      .filter(({ isRobust }) => isRobust === robust)
      .map(({ number, design }) => ({ x: design.slowError, y: design.fastError, label: String(number) }));
  const [first, last] = [shown[0]?.design, shown.at(-1)?.design];
  const kinds = [
    { name: 'robust', points: marks(true) },
    { name: 'not robust', points: marks(false) },
    {
      name: 'pistons you have',
      points: owned.map(({ letter, slowError, fastError }) => ({
        x: slowError,
        y: fastError,
        label: letter,
      })),
    },
  ];
  return scatterChart({
    id: 'front',
    title: 'How far off each design is: when slow, and at the faster speed',
    alt: `The lower left corner is just what you want. Design 1 is off by ${percent(first?.slowError ?? 0)} slow and ${percent(first?.fastError ?? 0)} fast, design ${shown.length} by ${percent(last?.slowError ?? 0)} and ${percent(last?.fastError ?? 0)}. ${shown.some(({ isRobust }) => isRobust) ? `With a robust one ${errors} goes unnoticed.` : `None of them is robust: ${errors} would be noticed.`}`,
    labelled: 'Design',
    x: { label: `Off at ${shaftSpeed(problem.slow.speed)}`, unit: '%', dimension: 'ratio' },
    y: { label: `Off at ${shaftSpeed(problem.fast.speed)}`, unit: '%', dimension: 'ratio' },
    series: kinds,
  });
}

/** The damper of a design on its oil. */
export function modelOfDesign({ problem }: Found, { design }: Shown): DamperModel {
  const oil = problem.oils.find(({ name }) => name === design.oil)?.oil;
  if (oil === undefined) throw new Error(`no oil ${design.oil}`);
  return damperModel(drilledDamper(problem.damper, design), fluidAt(oil, problem.temperature));
}

/** Force against shaft speed of the build as it is and of the design that the page names, through the forces wanted. */
export function curveFigure(search: Found, pick: Shown): Figure {
  const { problem, build } = search;
  const { slow, fast } = problem;
  const speeds = symmetricSpeeds(1.1 * fast.speed, pointsEachWay);
  const curve = (name: string, model: DamperModel) => ({
    name,
    points: speeds.map((x) => ({ x, y: oilForce(model, x) })),
  });
  // One label each way; beside the slow points it would hide the lines.
  const marked = [slow, fast].flatMap(({ speed, compression, rebound }) => {
    const label = speed === fast.speed ? 'wanted' : '';
    return [
      { x: speed, y: compression, label },
      { x: -speed, y: -rebound, label },
    ];
  });
  return lineChart({
    id: 'curves',
    title: 'Damping force: now, wanted, and with the new piston',
    alt: `Rings are the forces wanted. At ${shaftSpeed(fast.speed)} in rebound ${newtons(fast.rebound)} are wanted and design ${pick.number} makes ${newtons(pick.design.fast.rebound)}; at ${shaftSpeed(slow.speed)} they are ${newtons(slow.rebound)} and ${newtons(pick.design.slow.rebound)}.`,
    x: { label: 'Shaft speed, compression positive', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping force', unit: 'N', dimension: 'force' },
    series: [
      curve(`design ${pick.number}`, modelOfDesign(search, pick)),
      curve(`${build.name} now`, asItIs(search)),
    ],
    points: marked,
  });
}
