import type { DamperModel } from '../../lib/damper/damper-model.js';
import { forcesAlongTravel } from '../../lib/damper/force-after-travel.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart } from '../../lib/plot/index.js';
import { strokeOf } from '../base/after-onset.js';
import { newtons, shaftSpeed } from '../base/wording.js';
import { type Direction, onsetOf, thicker } from './cases.js';
import type { Change } from './what-moves-it.js';

const steps = 40;

const even = (end: number): readonly number[] =>
  Array.from({ length: steps + 1 }, (_, step) => Math.min((end * step) / steps, end));

/** Damping along a stroke at one speed, with this oil and with one twice as thick. */
export function travelFigure(model: DamperModel, oil: string, direction: Direction, speed: number): Figure {
  const sign = direction === 'compression' ? 1 : -1;
  const { position, rest } = strokeOf(model, sign * speed);
  const travels = even(rest);
  const line = (one: DamperModel) =>
    forcesAlongTravel(one, { speed: sign * speed, position }, travels).map(({ dampingForce }, index) => ({
      x: travels[index] ?? 0,
      y: Math.abs(dampingForce),
    }));
  const [own, thick] = [line(model), line(thicker(model, 2))];
  const last = (points: readonly { readonly y: number }[]) => newtons(points.at(-1)?.y ?? 0);
  return lineChart({
    id: 'travel',
    title: `What travel makes of it at ${shaftSpeed(speed)}`,
    alt: `At ${shaftSpeed(speed)} the damping goes from ${newtons(own[0]?.y ?? 0)} to ${last(own)} over the stroke, and with oil twice as thick from ${newtons(thick[0]?.y ?? 0)} to ${last(thick)}.`,
    x: { label: 'Travel since the stroke began', unit: 'mm', dimension: 'length' },
    y: { label: 'Damping force', unit: 'N', dimension: 'force' },
    series: [
      { name: oil, points: own },
      { name: 'twice as thick', points: thick },
    ],
  });
}

/** Damping at the onset along the stroke, for each way to close the shock. */
export function closingFigure(closed: readonly Change[], stroke: number, direction: Direction): Figure {
  const positions = even(stroke);
  const outside = closed.map(({ name, model }) => `${newtons(onsetOf(model, direction, 0).damping)} ${name}`);
  return lineChart({
    id: 'closing',
    title: 'How it was closed',
    alt: `With the shaft fully out cavitation begins at a damping of ${outside.join(', ')}.`,
    x: { label: 'Shaft in', unit: 'mm', dimension: 'length' },
    y: { label: 'Damping where cavitation begins', unit: 'N', dimension: 'force' },
    series: closed.map(({ name, model }) => ({
      name,
      points: positions
        .filter((position) => model.shaftArea * position < 0.999 * model.gas.capacity)
        .map((position) => ({ x: position, y: onsetOf(model, direction, position).damping })),
    })),
  });
}
