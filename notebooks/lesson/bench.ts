import type { DamperModel } from '../../lib/damper/damper-model.js';
import type { Piston } from '../../lib/flow/geometry/piston.js';
import type { Build } from '../../lib/parts/index.js';
import { formatQuantity } from '../../lib/units/quantity-text.js';
import { modelsOf, requireGoesTogether } from '../base/chosen-shock.js';
import { pointAt } from '../base/oil-forces.js';

/** One shock on the bench of the lesson. */
export interface Bench {
  readonly name: string;
  /** The build, its piston with the holes of the experiment. */
  readonly build: Build;
  readonly model: DamperModel;
  readonly holeCount: number;
  readonly holeDiameter: number;
}

/** What one experiment changes. */
export interface Change {
  readonly holeCount: number;
  readonly holeDiameter: number;
  readonly temperature: number;
}

/** So slow that the inertia of the oil is lost in the rounding of a hand calculation [m/s]. */
export const crawl = 1e-3;

/** The shock of a build whose piston has straight holes of one size, at one oil temperature. */
export function bench(name: string, build: Build, change: Change): Bench {
  const { holeCount, holeDiameter, temperature } = change;
  const { diameter, thickness, eccentricity } = build.piston.piston;
  const plain: Piston = {
    diameter,
    thickness,
    eccentricity,
    holes: [{ count: holeCount, diameter: holeDiameter }],
  };
  const size = formatQuantity(holeDiameter, 'length', 'mm', 3);
  // Its own name would tell the holes that it has no longer.
  const called = `${holesText(holeCount)} of ${size} in ${build.shock.name}`;
  const changed = { ...build, name: called, piston: { name: build.piston.name, piston: plain } };
  requireGoesTogether(changed);
  return { name, build: changed, model: modelsOf(changed, temperature).model, holeCount, holeDiameter };
}

/** `one hole`, `4 holes` */
export const holesText = (count: number): string => (count === 1 ? 'one hole' : `${count} holes`);

/** Force with which the shock holds back at a rebound speed [N]. */
export function holdsBack({ model }: Bench, speed: number): number {
  return -pointAt(model, -speed).dampingForce;
}

/** Mean speed of the oil in the holes at a rebound speed [m/s], from the Reynolds number that the solver reached. */
export function holeSpeed({ model, holeDiameter }: Bench, speed: number): number {
  return (pointAt(model, -speed).holeReynoldsNumber * model.fluid.kinematicViscosity) / holeDiameter;
}
