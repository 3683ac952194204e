import type { DamperModel } from '../../lib/damper/damper-model.js';
import { packSpeed } from '../../lib/damper/pack-speed.js';
import type { Build, PistonPart } from '../../lib/parts/parts.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { strokeForces } from '../base/after-onset.js';
import { dampingPerSpeedFigure, type ForceCurve, forceFigure } from '../base/force-figure.js';
import { curveAt, pointAt } from '../base/oil-forces.js';
import { listed, newtons, shaftSpeed } from '../base/wording.js';

const growthPoints = 60;

/** A piston in the shock with the oil of the page. */
export interface PistonCase {
  readonly part: PistonPart;
  readonly build: Build;
  readonly model: DamperModel;
}

/** The shaft speeds of the page [m/s]. */
export interface Speeds {
  readonly slow: number;
  readonly middle: number;
  readonly fast: number;
}

/** Rebound damping at a speed [N, positive]. */
export function holdsBack({ model }: PistonCase, speed: number): number {
  return -pointAt(model, -speed).dampingForce;
}

/** How many times its damping per speed at the slow speed a piston has at the middle one, in rebound. */
export function growthOf({ model }: PistonCase, { slow, middle }: Speeds): number {
  return pointAt(model, -middle).dampingCoefficient / pointAt(model, -slow).dampingCoefficient;
}

/** Force against shaft speed and damping per speed, one line a piston. */
export function forceFigures(
  cases: readonly PistonCase[],
  curves: readonly ForceCurve[],
  { slow, middle, fast }: Speeds,
): readonly [Figure, Figure] {
  const span = (force: (one: PistonCase) => number): string => {
    const sorted = cases
      .map((one) => ({ name: one.part.name, force: force(one) }))
      .sort((one, other) => one.force - other.force);
    const [softest, hardest] = [sorted[0], sorted.at(-1)];
    const text = (end: typeof softest) => `${newtons(end?.force ?? 0)} (${end?.name})`;
    return cases.length === 1 ? text(softest) : `${text(softest)} to ${text(hardest)}`;
  };
  return [
    forceFigure(
      {
        id: 'force-velocity',
        title: 'Damping force against shaft speed',
        alt: `In rebound at ${shaftSpeed(middle)} the shock holds back with ${span((one) => holdsBack(one, middle))}; pushed in at ${shaftSpeed(fast)} it is ${span(({ model }) => strokeForces(model, fast).afterTravel.dampingForce)} after the travel of the line.`,
      },
      curves,
      fast,
    ),
    dampingPerSpeedFigure(
      {
        id: 'per-speed',
        title: 'The same for each metre per second',
        alt: `Damping force over shaft speed, where slow speeds can be seen: in rebound at ${shaftSpeed(slow)} the shock holds back with ${span((one) => holdsBack(one, slow))}.`,
      },
      curves,
      fast,
    ),
  ];
}

/** Rebound damping per speed over its slow value, with the speed at which each piston packs. */
export function packFigure(cases: readonly PistonCase[], fast: number): Figure {
  const packs = cases.flatMap(({ part, model }) => {
    const speed = packSpeed(model, 'rebound');
    return speed === undefined || speed > fast ? [] : [{ part, model, speed }];
  });
  const speeds = Array.from({ length: growthPoints + 1 }, (_, step) => (-fast * step) / growthPoints);
  const said = packs.map(({ part, speed }) => `${part.name} at ${shaftSpeed(speed)}`);
  const times = (model: DamperModel, at: readonly number[]) => {
    const points = curveAt(model, [0, ...at]);
    const atRest = points[0]?.dampingCoefficient ?? 1;
    return points
      .slice(1)
      .map(({ speed, dampingCoefficient }) => ({ x: -speed, y: dampingCoefficient / atRest }));
  };
  return lineChart({
    id: 'pack',
    title: 'Where each piston packs in rebound',
    alt:
      said.length === 0
        ? `No piston packs below ${shaftSpeed(fast)} in rebound: all of them still damp as the oil dictates.`
        : `In rebound the pressure for each speed has doubled, so that the piston packs, at the dots: ${listed(said)}.`,
    x: { label: 'Shaft speed in rebound', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping per speed, times that of slow oil', unit: '' },
    series: cases.map(({ part, model }) => ({ name: part.name, points: times(model, speeds) })),
    points: packs.map(({ model, speed }) => ({ x: speed, y: times(model, [-speed])[0]?.y ?? 0, label: '' })),
  });
}
