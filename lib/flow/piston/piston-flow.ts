import { requirePositive } from '../../base/checks.js';
import { type FluidState, requireFluidState } from '../../fluid/oil/fluid-state.js';
import { annularGapConductance, rimGap } from '../gap/annular-gap.js';
import { gapDragViscosityRatio, thinningGapFlow } from '../gap/thinning-gap.js';
import type { Piston } from '../geometry/piston.js';
import { besideGap } from '../hole/bound-hole.js';
import type { HoleLaw } from '../hole/hole-law.js';
import { requireLaw } from '../hole/hole-law.js';
import { type HolePath, holePath } from '../hole/hole-path.js';
import { sharpHoleLaw } from '../hole/sharp-hole.js';
import type { DiscBinder } from '../valve/disc-between.js';
import { boundDisc } from '../valve/disc-film.js';
import { coveredHoles } from '../valve/disc-units.js';
import { coveredPitchDiameter, requireDiscValve } from '../valve/disc-valve.js';
import { type ValvePath, valvePath } from '../valve/valve-path.js';
import { jointPressureDrop } from './joint-newton.js';
import { newtonianRim, type PistonFlow, parallelFlow } from './parallel-flow.js';
import { holeAreaRatio, requirePiston } from './piston.js';
import { pressureDropOfManyPaths, pressureDropOfOnePath } from './piston-pressure-drop.js';
import { type OpenSolver, valvedSolver } from './valved-pressure-drop.js';

export type { PistonFlow } from './parallel-flow.js';

/** No valve stands open. */
const shut: readonly ValvePath[] = [];

/** The disc valves of a piston over the paths of their holes. */
function bindValves(
  piston: Piston,
  fluid: FluidState,
  paths: readonly HolePath[],
  bindDisc: DiscBinder,
): readonly ValvePath[] {
  return (piston.valves ?? []).map((valve, index) => {
    const field = `piston.valves[${index}]`;
    const covered = valve.covers.map((group) => paths[group]!);
    const groups = valve.covers.map((group) => piston.holes[group]!);
    const pitch = coveredPitchDiameter(valve, piston, field);
    return valvePath(valve, covered, bindDisc(valve, coveredHoles(groups, valve.face, pitch)), fluid);
  });
}

/**
 * Binds a piston to its bore and a fluid: holes, valves and the rim gap in parallel share one pressure drop.
 *
 * @param piston - sizes above 0 m, holes smaller than the piston, eccentricity 0 to 0.99
 * @param bore - diameter of the bore [m], above the piston diameter
 * @param fluid - density above 0 kg/m³, kinematic viscosity above 0 m²/s
 * @param law - law of the straight sharp holes; {@link sharpHoleLaw} by default
 * @throws InputError for a size or fluid property outside its range
 * @example
 * ```ts
 * const oil = { density: 970, kinematicViscosity: 350e-6 };
 * const piston = { diameter: 0.0115, thickness: 0.0025, holes: [], eccentricity: 0 };
 * const passage = pistonFlow(piston, 0.012, oil);
 * passage.flow(1e5); // 5.663e-6: π D h³ Δp/(12 μ L) with D = 11.75 mm, h = 0.25 mm, by hand
 * passage.pressureDrop(5.663e-6).pressureDrop; // 1.000e5: the inverse
 * ```
 * @public
 */
export function pistonFlow(
  piston: Piston,
  bore: number,
  fluid: FluidState,
  law: HoleLaw = sharpHoleLaw,
): PistonFlow {
  requireLaw(law);
  requirePositive(bore, 'bore', 'm');
  requirePiston(piston);
  requireFluidState(fluid);
  return bindPistonFlow(piston, bore, fluid, law);
}

/** {@link pistonFlow} of a piston and a fluid that were checked before, or are slightly off ones that were. */
export function bindPistonFlow(
  piston: Piston,
  bore: number,
  fluid: FluidState,
  law: HoleLaw = sharpHoleLaw,
  bindDisc: DiscBinder = boundDisc,
): PistonFlow {
  const gap = rimGap(piston, bore);
  const gapConductance = annularGapConductance(gap, fluid);
  const { shearThinning } = fluid;
  const discs = piston.valves ?? [];
  discs.forEach((valve, index) => {
    requireDiscValve(valve, piston, bore, `piston.valves[${index}]`);
  });
  const covered = new Set(discs.flatMap(({ covers }) => covers));
  // Oil from under a disc leaves sideways, and none does where it is shut: holes that are open both ways have the bore to themselves.
  const openRatio = holeAreaRatio(
    piston.holes.filter((_, index) => !covered.has(index)),
    bore,
  );
  const wholeRatio = covered.size === 0 ? openRatio : holeAreaRatio(piston.holes, bore);
  const all = piston.holes.map((group, index) =>
    holePath(group, piston.thickness, fluid, law, covered.has(index) ? wholeRatio : openRatio),
  );
  const paths = covered.size === 0 ? all : all.filter((_, index) => !covered.has(index));
  const valves = bindValves(piston, fluid, all, bindDisc);
  const rim =
    shearThinning === undefined
      ? newtonianRim(gapConductance)
      : {
          gapPoint: thinningGapFlow(gap, fluid, shearThinning),
          dragViscosityRatio: (speed: number) => gapDragViscosityRatio(gap, shearThinning, speed),
        };
  const solve: OpenSolver =
    shearThinning === undefined
      ? (all, open, flow) => jointPressureDrop(all, open, flow) ?? pressureDropOfManyPaths(all, open, flow)
      : pressureDropOfManyPaths;
  const only = paths.length === 1 && valves.length === 0 ? paths[0] : undefined;
  const bound = shearThinning === undefined ? only?.resistance.bound : undefined;
  return parallelFlow({ paths, valves, law, gap, gapConductance, ...rim }, (ways) => {
    if (bound !== undefined) {
      const towardsShaft = besideGap(bound.towardsShaft, ways.area, gapConductance);
      const towardsBlind = besideGap(bound.towardsBlind, ways.area, gapConductance);
      return (flow) => pressureDropOfOnePath(flow < 0 ? towardsBlind : towardsShaft, flow);
    }
    return valves.length === 0 ? (flow) => solve(ways, shut, flow) : valvedSolver(ways, solve);
  });
}
