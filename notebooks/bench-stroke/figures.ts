import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import type { LinePoint } from '../../lib/plot/chart/lines.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { millimetres } from '../base/bench-wording.js';
import { newtons, shaftSpeed } from '../base/wording.js';
import type { Asked, Stroked } from './stroked.js';

const force = { label: 'Force on the shaft, out is positive', unit: 'N', dimension: 'force' } as const;

/** Every fourth point of a trace is drawn. */
const stride = 4;

/**
 * Points of a part of the cycle with the band that air leaves open; `from` before `to` runs forward in time, else backward.
 */
function branch(
  all: readonly Stroked[],
  from: number,
  to: number,
  xOf: (stroked: Stroked, index: number) => number,
): readonly LinePoint[] {
  const [own] = all;
  if (own === undefined) return [];
  const count = Math.abs(to - from) / stride;
  return Array.from({ length: count + 1 }, (_, place) => {
    const index = from + Math.sign(to - from) * stride * place;
    const forces = all.map(({ result }) => result.trace.forces[index] ?? 0);
    return {
      x: xOf(own, index),
      y: forces[0] ?? 0,
      low: Math.min(...forces),
      high: Math.max(...forces),
    };
  });
}

/** Force against travel: the loop whose area is the energy of a stroke. */
export function forceTravelFigure(all: readonly Stroked[]): Figure {
  const [own] = all;
  const parts = (own?.result.trace.times.length ?? 1) - 1;
  const smallest = own?.cycle.smallestForce.value ?? 0;
  const back =
    smallest < 0
      ? `pulls with up to ${newtons(-smallest)}`
      : `still pushes with at least ${newtons(smallest)}`;
  // Both ways at the same places, so that the table has them side by side.
  const travelOf = ({ result }: Stroked, index: number) =>
    result.trace.travels[Math.min(index, parts - index)] ?? 0;
  return lineChart({
    id: 'force-travel',
    title: 'Force against travel',
    alt: `Going in it pushes with up to ${newtons(own?.cycle.largestForce.value ?? 0)}, coming out it ${back}; the area inside is ${joules(own?.cycle.work ?? 0)}. The band is what air in the oil leaves open.`,
    x: { label: 'Shaft travel', unit: 'mm', dimension: 'length' },
    y: force,
    series: [
      { name: 'going in', points: branch(all, 0, parts / 2, travelOf) },
      { name: 'coming out', points: branch(all, parts, parts / 2, travelOf) },
    ],
  });
}

/** Force against speed, beside what the steady law of oil that stays whole says. */
export function forceVelocityFigure(all: readonly Stroked[], { build, temperature }: Asked): Figure {
  const [own] = all;
  const parts = (own?.result.trace.times.length ?? 1) - 1;
  const speedOf = ({ result }: Stroked, index: number) => result.trace.speeds[index] ?? 0;
  const quarter = parts / 4;
  // From the speed out through rest, fully in or fully out, to the speed in: the last quarter comes before the first.
  const outer = [...branch(all, 3 * quarter, parts, speedOf), ...branch(all, 0, quarter, speedOf).slice(1)];
  const inner = branch(all, 3 * quarter, quarter, speedOf);
  const fastest = own === undefined ? 0 : (own.result.trace.speeds[quarter] ?? 0);
  const model =
    own && damperModel(own.moving.assembled.damper, fluidAt(createOil(build.oil.definition), temperature));
  const steady = Array.from({ length: 41 }, (_, place) => {
    const speed = fastest * (place / 20 - 1);
    return {
      x: speed,
      y: model === undefined ? 0 : damperForce(model, { speed, position: build.shock.stroke / 2 }).force,
    };
  });
  return lineChart({
    id: 'force-velocity',
    title: 'Force against shaft speed',
    alt: `Up to ${shaftSpeed(fastest)} in and out. Where the two halves of the travel lie apart, one speed has two forces; a steady curve has one, at the most ${newtons(steady.at(-1)?.y ?? 0)} going in.`,
    x: { label: 'Shaft speed, going in is positive', unit: 'mm/s', dimension: 'speed' },
    y: force,
    series: [
      { name: 'outer half of the travel', points: outer },
      { name: 'inner half of the travel', points: inner },
      { name: 'steady, oil whole', points: steady },
    ],
  });
}

/** Force against time: what a triangle tells, whose speed is one to and fro. */
export function forceTimeFigure(all: readonly Stroked[]): Figure {
  const [own] = all;
  const parts = (own?.result.trace.times.length ?? 1) - 1;
  const start = own?.cycle.from ?? 0;
  return lineChart({
    id: 'force-time',
    title: 'Force against time',
    alt: `The shaft goes in during the first half and comes out during the second; force settles after each turn, ${millimetres(own?.result.lostStroke ?? 0)} of travel are lost to a cavity at most.`,
    x: { label: 'Time', unit: 's', dimension: 'time' },
    y: force,
    series: [
      {
        name: 'force',
        points: branch(all, 0, parts, ({ result }, index) => (result.trace.times[index] ?? 0) - start),
      },
    ],
  });
}

/** `1.1 J`, `75 mJ` below a tenth. */
export function joules(work: number): string {
  return Math.abs(work) < 0.1
    ? `${Number((1000 * work).toPrecision(2))} mJ`
    : `${Number(work.toPrecision(3))} J`;
}
