import type { DamperModel } from '../../lib/damper/damper-model.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { formatQuantity, roundedText } from '../../lib/units/index.js';
import { newtons, percent, shaftSpeed } from '../base/wording.js';
import { dampingAtSpeed, drilled, flowExponent, type ShapeCase } from './shaped.js';

const steps = 40;

/** Force left of that of the holes as they are, against how much larger they are drilled. */
export function drillFigure(model: DamperModel, slow: number, fast: number, drill: number): Figure {
  const smallest = Math.min(...model.damper.piston.holes.map(({ diameter }) => diameter));
  const reach = Math.min(0.4e-3, 0.6 * smallest);
  const left = (larger: number, speed: number) =>
    dampingAtSpeed(drilled(model, larger), -speed) / dampingAtSpeed(model, -speed);
  const series = [slow, fast].map((speed) => ({
    name: `at ${shaftSpeed(speed)}`,
    points: Array.from({ length: steps + 1 }, (_, step) => {
      const larger = reach * ((2 * step) / steps - 1);
      return { x: larger, y: left(larger, speed) };
    }),
  }));
  const lost = percent(1 - left(drill, slow));
  return lineChart({
    id: 'drill',
    title: 'What the drill does to the force',
    alt: `Holes drilled ${formatQuantity(drill, 'length', 'mm', 2)} larger lose ${lost} of the force at ${shaftSpeed(slow)}.`,
    x: { label: 'Holes larger by', unit: 'mm', dimension: 'length', digits: 2 },
    y: { label: 'Force, of that of the piston as it is', unit: '%', dimension: 'ratio' },
    series,
    points: [{ x: drill, y: left(drill, slow), label: `${formatQuantity(drill, 'length', 'mm', 2)} more` }],
  });
}

/** Percent of flow for each percent of diameter, against the pressure over the piston. */
export function exponentFigure(model: DamperModel, fast: number): Figure {
  const most = Math.abs(model.pistonFlow.pressureDrop(model.dampingArea * fast).pressureDrop);
  const points = Array.from({ length: steps + 1 }, (_, step) => {
    // Crowded towards no pressure, where the curve bends most.
    const drop = most * ((step + 0.02) / (steps + 0.02)) ** 3;
    return { x: drop, y: flowExponent(model, drop) };
  });
  const [first, last] = [points[0]?.y ?? 0, points.at(-1)?.y ?? 0];
  return lineChart({
    id: 'exponent',
    title: 'How much more oil a larger hole passes',
    alt: `One percent more diameter passes ${roundedText(first, 2)} percent more oil when it creeps and ${roundedText(last, 2)} percent more at ${shaftSpeed(fast)}.`,
    x: { label: 'Pressure over the piston', unit: 'bar', dimension: 'pressure' },
    y: { label: 'More oil for 1 % more diameter', unit: '%', domain: [0, 4.5] },
    series: [{ name: 'this piston', points }],
    rules: [
      { axis: 'y', value: 4, label: 'thick oil in a long hole: 4' },
      { axis: 'y', value: 2, label: 'fast oil in any hole: 2' },
    ],
  });
}

/** Force against shaft speed for each shape, as if no oil tore. */
export function shapeFigure(cases: readonly ShapeCase[], fast: number): Figure {
  const ends = cases
    .map(({ name, model }) => ({ name, force: dampingAtSpeed(model, fast) }))
    .sort((one, other) => one.force - other.force);
  const [softest, stiffest] = [ends[0], ends.at(-1)];
  return lineChart({
    id: 'shapes',
    title: 'Same drill, other shape',
    alt: `Pushed in at ${shaftSpeed(fast)}, the hole that is ${softest?.name} needs ${newtons(softest?.force ?? 0)} and the one that is ${stiffest?.name} ${newtons(stiffest?.force ?? 0)}, if no oil tears.`,
    x: { label: 'Shaft speed, compression positive', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping force', unit: 'N', dimension: 'force' },
    series: cases.map(({ name, model }) => ({
      name,
      points: Array.from({ length: steps + 1 }, (_, step) => {
        const speed = fast * ((2 * step) / steps - 1);
        return { x: speed, y: dampingAtSpeed(model, speed) };
      }),
    })),
  });
}
