import { requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import type { Damper } from '../../damper/damper.js';
import { damperModel } from '../../damper/damper-model.js';
import { compressedGasPressure } from '../../damper/gas.js';
import { oilForce } from '../../damper/oil-force.js';
import { pressureDropLimitAt } from '../../damper/pressure-drop-limit.js';
import type { HoleGroup } from '../../flow/geometry/piston.js';
import { oilDensity } from '../../fluid/oil/density.js';
import { fluidAt } from '../../fluid/oil/fluid-at.js';
import type { FluidState } from '../../fluid/oil/fluid-state.js';
import type { Oil } from '../../fluid/oil/oil.js';
import { viscosityAt } from '../../fluid/viscosity/viscosity-line.js';
import { isLight, lightModel } from './light-model.js';
import { type Offsets, offsetReader } from './offsets.js';
import type { UnitCubeModel } from './sensitivity-indices.js';
import { isStraight } from './straight-hole-arithmetic.js';
import { straightHoleForces } from './straight-hole-forces.js';
import { type Deviation, requireDeviation } from './uncertain.js';

/**
 * The sizes that may be off, in the order of the inputs.
 *
 * @public
 */
export const toleranceNames = [
  'holeDiameter',
  'holeTaper',
  'thickness',
  'bore',
  'gap',
  'viscosity',
  'temperature',
  'gasVolume',
] as const;

/**
 * A size that may be off.
 *
 * @public
 */
export type ToleranceName = (typeof toleranceNames)[number];

/**
 * How far each size of a build may be off.
 *
 * @public
 */
export type Tolerances = {
  /**
   * - `holeDiameter` [m]: all holes, as one drill makes them
   * - `holeTaper` [m]: diameter at the shaft side less that at the blind side, of straight holes
   * - `thickness` [m]: of the piston
   * - `bore` [m]: with the piston following, so that the gap stays
   * - `gap` [m]: between piston and bore, on the radius
   * - `viscosity`: relative, 0.05 stands for 5 %
   * - `temperature` [K]: of the oil
   * - `gasVolume` [m³]: what the fill leaves for the gas
   */
  readonly [Name in ToleranceName]?: Deviation;
};

/**
 * A build whose sizes may be off; plain data, so that it can go to a worker.
 *
 * @public
 */
export interface TolerancedBuild {
  readonly damper: Damper;
  readonly oil: Oil;
  /** Oil temperature [K]. */
  readonly temperature: number;
  /** How far the shaft is pushed in where the force of the gas is taken [m], 0 to the stroke. */
  readonly position: number;
  /** Shaft speeds [m/s], not 0, 1 or more. */
  readonly speeds: readonly number[];
  readonly tolerances: Tolerances;
}

const units: Readonly<Record<ToleranceName, string>> = {
  holeDiameter: 'm',
  holeTaper: 'm',
  thickness: 'm',
  bore: 'm',
  gap: 'm',
  viscosity: '',
  temperature: 'K',
  gasVolume: 'm³',
};

/** Throws unless the build can be computed and each deviation is in its range. */
export function requireTolerancedBuild({ damper, position, speeds, tolerances }: TolerancedBuild): void {
  requireWithin(position, 0, damper.stroke, 'position', 'm');
  if (speeds.length === 0) throw new InputError({ field: 'speeds', value: 0, accepted: '1 or more' });
  speeds.forEach((speed, index) => {
    requirePositive(Math.abs(speed), `size of speeds[${index}]`, 'm/s');
  });
  for (const name of toleranceNames) {
    const deviation = tolerances[name];
    if (deviation !== undefined) requireDeviation(deviation, `tolerances.${name}`, units[name]);
  }
}

/** The tolerances that are given and not exact, in the order of {@link toleranceNames}. */
export function givenTolerances(tolerances: Tolerances): readonly ToleranceName[] {
  return toleranceNames.filter((name) => {
    const deviation = tolerances[name];
    return deviation !== undefined && deviation.kind !== 'exact';
  });
}

function deviatedHole(group: HoleGroup, { holeDiameter, holeTaper }: Offsets): HoleGroup {
  const diameter = group.diameter + holeDiameter;
  if (group.shape === undefined && group.pitchDiameter === undefined && holeTaper === 0)
    return { count: group.count, diameter };
  if (holeTaper === 0 || group.shape !== undefined) return { ...group, diameter };
  const shape = { kind: 'conical', shaftSideDiameter: diameter + holeTaper / 2 } as const;
  return { ...group, diameter: diameter - holeTaper / 2, shape };
}

/** The damper with all its sizes off by given amounts. */
function deviatedDamper(damper: Damper, off: Offsets): Damper {
  const { piston, gas } = damper;
  return {
    ...damper,
    bore: damper.bore + off.bore,
    piston: {
      ...piston,
      diameter: piston.diameter + off.bore - 2 * off.gap,
      thickness: piston.thickness + off.thickness,
      holes: piston.holes.map((group) => deviatedHole(group, off)),
    },
    gas: off.gasVolume === 0 ? gas : { ...gas, volume: gas.volume + off.gasVolume },
  };
}

/** The oil with its temperature and its label off; what only decides about warnings is left out where nothing thins. */
function deviatedFluid(oil: Oil, temperature: number, label: number): FluidState {
  if (oil.shearThinning !== undefined) {
    const state = fluidAt(oil, temperature);
    return { ...state, kinematicViscosity: state.kinematicViscosity * (1 + label) };
  }
  return {
    kinematicViscosity: viscosityAt(oil.typical, temperature) * (1 + label),
    density: oilDensity(oil.base, temperature, oil.densityAt15Celsius),
  };
}

/**
 * Force of oil and gas at each speed [N] as a function of the unit cube, whose axes are the given tolerances.
 *
 * @param build - the build and how far each size may be off
 * @throws InputError for an input outside its range; while evaluating, where a size becomes impossible within its tolerance
 * @public
 */
export function toleranceModel(build: TolerancedBuild): UnitCubeModel {
  requireTolerancedBuild(build);
  const names = givenTolerances(build.tolerances);
  const { damper, oil, temperature, position, speeds, tolerances } = build;
  const checked = damperModel(damper, fluidAt(oil, temperature));
  const light = isLight(damper, checked.fluid);
  const straight =
    isStraight(damper, checked.fluid) && !names.includes('holeTaper')
      ? straightHoleForces(build, checked)
      : undefined;
  const offsetsAt = offsetReader(tolerances, names);
  const evaluate = (point: Float64Array, result: Float64Array): void => {
    const off = offsetsAt(point);
    if (straight?.(off, result) === true) return;
    const fluid = deviatedFluid(oil, temperature + off.temperature, off.viscosity);
    const built = deviatedDamper(damper, off);
    const model = light ? lightModel(built, fluid, checked) : damperModel(built, fluid);
    const { gas } = model.damper;
    const inside = compressedGasPressure(gas, model.shaftArea * position);
    const gasForce = model.shaftArea * (inside - gas.ambientPressure);
    let place = 0;
    for (const speed of speeds) {
      result[place++] = oilForce(model, speed, pressureDropLimitAt(model, inside, speed)).force + gasForce;
    }
  };
  return { inputs: names.length, outputs: speeds.length, evaluate };
}
