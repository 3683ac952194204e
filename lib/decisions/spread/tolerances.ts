import { requireShape } from '../../base/shape.js';
import type { Damper } from '../../damper/damper.js';
import { wholeForce } from '../../damper/damper-force.js';
import { damperAround, damperModel } from '../../damper/damper-model.js';
import { isStraight } from '../../damper/straight-build.js';
import type { HoleGroup } from '../../flow/geometry/piston.js';
import { sharpHoleLaw } from '../../flow/hole/sharp-hole.js';
import { requirePiston } from '../../flow/piston/piston.js';
import { bindPistonFlow } from '../../flow/piston/piston-flow.js';
import { type DiscBinder, discsBetween } from '../../flow/valve/disc-between.js';
import { boundDisc } from '../../flow/valve/disc-film.js';
import { oilDensity } from '../../fluid/oil/density.js';
import { fluidAt } from '../../fluid/oil/fluid-at.js';
import type { FluidState } from '../../fluid/oil/fluid-state.js';
import type { Oil } from '../../fluid/oil/oil.js';
import { viscosityAt } from '../../fluid/viscosity/viscosity-line.js';
import { pressureOfGas } from '../../gas/gas-state.js';
import { type Offsets, offsetReader } from './offsets.js';
import type { UnitCubeModel } from './sensitivity-indices.js';
import { straightHoleForces } from './straight-hole-forces.js';
import {
  deviatedGas,
  requireTolerancedBuild,
  type TolerancedBuild,
  type Tolerances,
  tolerancedBuildShape,
  toleranceInputs,
} from './toleranced-build.js';
import { deviationAt } from './uncertain.js';

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
    gas: deviatedGas(gas, off.gasVolume),
  };
}

/** The oil with its temperature and its label off; what only decides about warnings is left out where nothing thins. */
function deviatedFluid(oil: Oil, temperature: number, label: number): FluidState {
  if (oil.shearThinning !== undefined) {
    const state = fluidAt(oil, temperature);
    return { ...state, kinematicViscosity: state.kinematicViscosity * (1 + label) };
  }
  return {
    temperature,
    kinematicViscosity: viscosityAt(oil.typical, temperature) * (1 + label),
    density: oilDensity(oil.base, temperature, oil.densityAt15Celsius),
  };
}

/** Share of the widest deviation, and of the hole, at which discs over deviated holes are tabled. */
const tabledShare = 1 / 4;
const tabledPart = 0.03;
/** Steps below this share of the hole are no steps in double precision any more. */
const leastPart = 1e-6;

/** Binds discs over holes that are off by different amounts, without a table of its own for each hole. */
function discBinder(damper: Damper, { holeDiameter, holeTaper }: Tolerances): DiscBinder {
  const widest =
    deviationAt(holeDiameter ?? { kind: 'exact' }, 1) + deviationAt(holeTaper ?? { kind: 'exact' }, 1) / 2;
  const narrowest = Math.min(...damper.piston.holes.map(({ diameter }) => diameter));
  if (widest === 0) return boundDisc;
  const step = Math.max(Math.min(tabledShare * widest, tabledPart * narrowest), leastPart * narrowest);
  return discsBetween(step);
}

/**
 * Force of oil and gas at each speed [N] as a function of the unit cube, whose axes are the given tolerances.
 *
 * @param build - the build and how far each size may be off
 * @throws InputError for an input outside its range; while evaluating, where a size becomes impossible within its tolerance
 * @public
 */
export function toleranceModel(build: TolerancedBuild): UnitCubeModel {
  requireShape({ build }, { build: tolerancedBuildShape });
  requireTolerancedBuild(build);
  const names = toleranceInputs(build.tolerances);
  const { damper, oil, temperature, position, speeds, tolerances } = build;
  const checked = damperModel(damper, fluidAt(oil, temperature));
  const straight =
    isStraight(checked) && !names.includes('holeTaper') ? straightHoleForces(build, checked) : undefined;
  const bindDisc = discBinder(damper, tolerances);
  const offsetsAt = offsetReader(tolerances, names);
  const evaluate = (point: Float64Array, result: Float64Array): void => {
    const off = offsetsAt(point);
    if (straight?.(off, result) === true) return;
    const fluid = deviatedFluid(oil, temperature + off.temperature, off.viscosity);
    const built = deviatedDamper(damper, off);
    requirePiston(built.piston);
    const passage = bindPistonFlow(built.piston, built.bore, fluid, sharpHoleLaw, bindDisc);
    const model = damperAround(built, fluid, passage);
    const inside = pressureOfGas(model.gas, model.shaftArea * position);
    let place = 0;
    for (const speed of speeds) {
      const { dampingForce, gasForce } = wholeForce(model, speed, inside);
      result[place++] = dampingForce + gasForce;
    }
  };
  return { inputs: names.length, outputs: speeds.length, evaluate };
}
