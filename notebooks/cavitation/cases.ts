import { cavitationOnset } from '../../lib/damper/cavitation-onset.js';
import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { type AssembledShock, assembleShock, type Build } from '../../lib/parts/index.js';
import { knownOil } from '../base/known.js';

/** Highest pressure at which air may come out of the oil [Pa]; common practice, no source. */
export const earliestRelease = 0.2e5;

/** The direction in which a build cavitates. */
export type Direction = 'compression' | 'rebound';

/** A build filled and closed, its oil at one temperature. */
export interface ClosedBuild {
  readonly build: Build;
  readonly shock: AssembledShock;
  readonly model: DamperModel;
  /** The same with the thinnest and the thickest oil that its label allows, where it is sold by an interval. */
  readonly bounds?: readonly [DamperModel, DamperModel];
}

/** A build as the file has it, or closed with its shaft somewhere else [m]. */
export function closedBuild(build: Build, temperature: number, closeAt?: number): ClosedBuild {
  const shock = assembleShock(build, closeAt === undefined ? {} : { closeAt });
  const oil = knownOil(build.oil.definition);
  const model = (bound: 'low' | 'typical' | 'high') =>
    damperModel(shock.damper, fluidAt(oil, temperature, bound));
  const closed = { build, shock, model: model('typical') };
  return oil.isInterval ? { ...closed, bounds: [model('low'), model('high')] } : closed;
}

/** Where a cavity begins with the shaft somewhere [m]: shaft speed [m/s] and damping [N], without signs. */
export interface Onset {
  readonly speed: number;
  readonly damping: number;
}

export function onsetOf(model: DamperModel, direction: Direction, position: number): Onset {
  const onset = cavitationOnset(model, direction, position);
  if (onset === undefined) throw new RangeError(`nothing cavitates in ${direction}`);
  return { speed: Math.abs(onset.speed), damping: Math.abs(onset.dampingForce) };
}

/** The direction in which a cavity can open, or `undefined` with the gas mixed through the oil. */
export function cavitatingDirection({ damper }: DamperModel): Direction | undefined {
  switch (damper.gas.layout) {
    case 'blind-side':
      return 'compression';
    case 'shaft-side':
      return 'rebound';
    default:
      return undefined;
  }
}

/** The same shock with oil that lets its air go at another absolute pressure [Pa]. */
export function releasingAt(model: DamperModel, airReleasePressure: number): DamperModel {
  const { damper, fluid } = model;
  return damperModel({ ...damper, gas: { ...damper.gas, airReleasePressure } }, fluid);
}

/** The same shock with oil of another viscosity. */
export function thicker(model: DamperModel, times: number): DamperModel {
  const { damper, fluid } = model;
  return damperModel(damper, { ...fluid, kinematicViscosity: times * fluid.kinematicViscosity });
}
