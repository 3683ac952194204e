import type { DamperModel } from '../../lib/damper/damper-model.js';
import { creepingDampingCoefficient } from '../../lib/damper/force-point.js';
import { symmetricSpeeds } from '../../lib/damper/force-velocity.js';
import { packSpeed } from '../../lib/damper/pack-speed.js';
import type { PistonPart } from '../../lib/parts/parts.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { curveAt, pointAt } from '../base/oil-forces.js';
import { listed, newtons, shaftSpeed } from '../base/wording.js';

const pointsEachWay = 30;
const coefficientPoints = 60;

/** A piston in the shock with the oil of the page. */
export interface PistonCase {
  readonly part: PistonPart;
  readonly model: DamperModel;
}

/** Force against shaft speed, one line a piston. */
export function forceVelocityFigure(cases: readonly PistonCase[], fast: number): Figure {
  const ends = cases
    .map(({ part, model }) => ({ name: part.name, force: -pointAt(model, -fast).dampingForce }))
    .sort((one, other) => one.force - other.force);
  const [softest, stiffest] = [ends[0], ends.at(-1)];
  const speeds = symmetricSpeeds(fast, pointsEachWay);
  return lineChart({
    id: 'force-velocity',
    title: 'Damping force against shaft speed',
    alt: `Pulled out at ${shaftSpeed(fast)}, the shock holds back with ${newtons(softest?.force ?? 0)} on ${softest?.name} and ${newtons(stiffest?.force ?? 0)} on ${stiffest?.name}.`,
    x: { label: 'Shaft speed, compression positive', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping force', unit: 'N', dimension: 'force' },
    series: cases.map(({ part, model }) => ({
      name: part.name,
      points: curveAt(model, speeds).map(({ speed, dampingForce }) => ({ x: speed, y: dampingForce })),
    })),
  });
}

/** Rebound damping coefficient against shaft speed, with the speed at which each piston packs. */
export function packFigure(cases: readonly PistonCase[], fast: number): Figure {
  const packs = cases.flatMap(({ part, model }) => {
    const speed = packSpeed(model);
    return speed === undefined || speed > fast ? [] : [{ part, model, speed }];
  });
  const reboundSpeeds = Array.from(
    { length: coefficientPoints + 1 },
    (_, step) => (-fast * step) / coefficientPoints,
  );
  const said = packs.map(({ part, speed }) => `${part.name} at ${shaftSpeed(speed)}`);
  return lineChart({
    id: 'pack',
    title: 'Damping per speed, and where it packs',
    alt:
      said.length === 0
        ? `No piston packs below ${shaftSpeed(fast)}: all of them still damp as the oil dictates.`
        : `The damping per speed has doubled, so the piston packs: ${listed(said)}.`,
    x: { label: 'Shaft speed in rebound', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping coefficient', unit: 'N·s/m', domain: [0, highestCoefficient(cases, fast)] },
    series: cases.map(({ part, model }) => ({
      name: part.name,
      points: curveAt(model, reboundSpeeds).map(({ speed, dampingCoefficient }) => ({
        x: -speed,
        y: dampingCoefficient,
      })),
    })),
    points: packs.map(({ model, speed }) => ({
      x: speed,
      y: pointAt(model, -speed).dampingCoefficient,
      label: 'packs',
    })),
  });
}

/** A round number above every coefficient shown. */
function highestCoefficient(cases: readonly PistonCase[], fast: number): number {
  const highest = Math.max(
    ...cases.map(({ model }) =>
      Math.max(pointAt(model, -fast).dampingCoefficient, creepingDampingCoefficient(model)),
    ),
  );
  const step = 10 ** Math.floor(Math.log10(highest));
  return (Math.ceil((2 * highest) / step) / 2) * step;
}
