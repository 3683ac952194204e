import type { DamperModel } from '../../lib/damper/damper-model.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { formatQuantity, roundedText } from '../../lib/units/index.js';
import { newtons, percent, shaftSpeed } from '../base/wording.js';
import { dampingAtSpeed, dropAt, flowExponent, lostTo, type ShapeCase } from './shaped.js';

const steps = 40;

/** Rebound damping that is left, against how much larger the holes are drilled, at each of the speeds. */
export function drillFigure(model: DamperModel, speeds: readonly number[], drill: number): Figure {
  const smallest = Math.min(...model.damper.piston.holes.map(({ diameter }) => diameter));
  const smaller = Math.min(drill, 0.5 * smallest);
  const size = formatQuantity(drill, 'length', 'mm', 2);
  const said = speeds.map((speed) => `${percent(lostTo(model, drill, speed))} at ${shaftSpeed(speed)}`);
  return lineChart({
    id: 'drill',
    title: 'What the drill does to rebound damping',
    alt: `Holes drilled ${size} larger lose ${said.join(' and ')}.`,
    x: { label: 'Holes larger by', unit: 'mm', dimension: 'length', digits: 2 },
    y: { label: 'Damping left', unit: '%', dimension: 'ratio' },
    series: speeds.map((speed) => ({
      name: `at ${shaftSpeed(speed)}`,
      points: Array.from({ length: steps + 1 }, (_, step) => {
        const larger = -smaller + ((drill + smaller) * step) / steps;
        return { x: larger, y: 1 - lostTo(model, larger, speed) };
      }),
    })),
  });
}

/** Percent of flow for each percent of diameter, against the shaft speed in rebound. */
export function exponentFigure(model: DamperModel, fast: number): Figure {
  const points = Array.from({ length: steps + 1 }, (_, step) => {
    // Crowded towards rest, where the curve bends most.
    const speed = fast * ((step + 0.4) / (steps + 0.4)) ** 2;
    return { x: speed, y: flowExponent(model, dropAt(model, speed)) };
  });
  const [first, last] = [points[0]?.y ?? 0, points.at(-1)?.y ?? 0];
  return lineChart({
    id: 'exponent',
    title: 'How much more oil a larger hole passes',
    alt: `One percent more diameter passes ${roundedText(first, 2)} percent more oil when it creeps and ${roundedText(last, 2)} percent more at the pressure of ${shaftSpeed(fast)}.`,
    x: { label: 'Shaft speed in rebound', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'More oil for 1 % more diameter', unit: '%', domain: [0, 4.5] },
    series: [{ name: 'this piston', points }],
    rules: [
      { axis: 'y', value: 4, label: 'slow oil, long round hole: 4' },
      { axis: 'y', value: 2, label: 'only the area counts: 2' },
    ],
  });
}

/** Force of whole oil against shaft speed for each shape. */
export function shapeFigure(cases: readonly ShapeCase[], fast: number): Figure {
  const ends = cases
    .map(({ name, model }) => ({ name, force: -dampingAtSpeed(model, -fast) }))
    .sort((one, other) => one.force - other.force);
  const [softest, hardest] = [ends[0], ends.at(-1)];
  return lineChart({
    id: 'shapes',
    title: 'Same drill, other shape',
    alt: `In rebound at ${shaftSpeed(fast)} holes that are ${softest?.name} are the softest, ${newtons(softest?.force ?? 0)}, and those that are ${hardest?.name} the hardest, ${newtons(hardest?.force ?? 0)}.`,
    x: { label: 'Shaft speed, compression positive', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping force of whole oil', unit: 'N', dimension: 'force' },
    series: cases.map(({ name, model }) => ({
      name,
      points: Array.from({ length: steps + 1 }, (_, step) => {
        const speed = fast * ((2 * step) / steps - 1);
        return { x: speed, y: dampingAtSpeed(model, speed) };
      }),
    })),
  });
}
