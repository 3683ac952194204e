import type { DamperModel } from '../../lib/damper/damper-model.js';
import type { Piston } from '../../lib/flow/geometry/piston.js';
import type { OilPart, PistonPart } from '../../lib/parts/parts.js';
import type { ShockPart } from '../../lib/parts/shock-part.js';
import { modelAt, oilCase, pointAt } from '../base/oil-forces.js';

/** One shock on the bench of the lesson. */
export interface Bench {
  readonly name: string;
  readonly model: DamperModel;
  readonly holeCount: number;
  readonly holeDiameter: number;
}

/** What stays the same through the lesson. */
export interface Shelf {
  readonly oil: OilPart;
  readonly shock: ShockPart;
  readonly piston: PistonPart;
}

/** What one experiment changes. */
export interface Change {
  readonly holeCount: number;
  readonly holeDiameter: number;
  readonly temperature: number;
}

/** So slow that the inertia of the oil is lost in the rounding of a hand calculation [m/s]. */
export const crawl = 1e-3;

/** A shock whose piston has straight holes of one size, at one oil temperature. */
export function bench(name: string, { oil, shock, piston }: Shelf, change: Change): Bench {
  const { holeCount, holeDiameter, temperature } = change;
  const plain: Piston = {
    diameter: piston.piston.diameter,
    thickness: piston.piston.thickness,
    eccentricity: piston.piston.eccentricity,
    holes: [{ count: holeCount, diameter: holeDiameter }],
  };
  const model = modelAt(oilCase(oil, shock, { name: piston.name, piston: plain }), temperature);
  return { name, model, holeCount, holeDiameter };
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
