import type { FluidState } from '../fluid/fluid-state.js';
import { type AnnularGap, annularGapConductance } from './annular-gap.js';
import { coveredPitchDiameter, requireDiscValve } from './disc-valve.js';
import type { HoleLaw } from './hole-law.js';
import { type HolePath, holePath } from './hole-path.js';
import { jointPressureDrop } from './joint-newton.js';
import { type Piston, requirePiston } from './piston.js';
import {
  type PistonPressureDrop,
  pressureDropOfManyPaths,
  pressureDropOfOnePath,
} from './piston-pressure-drop.js';
import { sharpHoleLaw } from './sharp-hole.js';
import { thinningGapFlow } from './thinning-gap.js';
import { type ValvePath, valvePath } from './valve-path.js';

/**
 * A piston in its bore with one fluid, ready to compute. Flow and pressure drop are positive from the blind side to the shaft side.
 *
 * @public
 */
export interface PistonFlow {
  /** Flow at a pressure drop [m³/s], rising; odd where holes are alike both ways and no valve covers any. */
  readonly flow: (pressureDrop: number) => number;
  /** Pressure drop at a flow [Pa], with how it was reached. */
  readonly pressureDrop: (flow: number) => PistonPressureDrop;
  /** Flow per pressure drop of gap and open holes in the creeping limit [m³/(s·Pa)]. */
  readonly creepingConductance: number;
  readonly gap: AnnularGap;
  /** Flow per pressure drop of the rim gap alone, at rest [m³/(s·Pa)]. */
  readonly gapConductance: number;
  /** Flow through the rim gap [m³/s] at a pressure drop [Pa]. */
  readonly gapFlow: (pressureDrop: number) => number;
  /** Holes that are open both ways. */
  readonly paths: readonly HolePath[];
  /** Holes under a disc valve. */
  readonly valves: readonly ValvePath[];
  readonly law: HoleLaw;
}

/** The disc valves of a piston over the paths of their holes. */
function bindValves(
  piston: Piston,
  bore: number,
  fluid: FluidState,
  paths: readonly HolePath[],
): readonly ValvePath[] {
  return (piston.valves ?? []).map((valve, index) => {
    const field = `piston.valves[${index}]`;
    requireDiscValve(valve, piston, bore, field);
    const covered = valve.covers.flatMap((group) => paths[group] ?? []);
    const count = valve.covers.reduce((sum, group) => sum + (piston.holes[group]?.count ?? 0), 0);
    return valvePath(valve, covered, count, coveredPitchDiameter(valve, piston, field), fluid);
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
 * @public
 */
export function pistonFlow(
  piston: Piston,
  bore: number,
  fluid: FluidState,
  law: HoleLaw = sharpHoleLaw,
): PistonFlow {
  requirePiston(piston);
  const gap = {
    bore,
    pistonDiameter: piston.diameter,
    length: piston.thickness,
    eccentricity: piston.eccentricity,
  };
  const gapConductance = annularGapConductance(gap, fluid);
  const gapFlow =
    fluid.shearThinning === undefined
      ? (drop: number) => gapConductance * drop
      : thinningGapFlow(gap, fluid, fluid.shearThinning);
  const all = piston.holes.map((group) => holePath(group, piston.thickness, fluid, law));
  const covered = new Set((piston.valves ?? []).flatMap(({ covers }) => covers));
  const paths = all.filter((_, index) => !covered.has(index));
  const valves = bindValves(piston, bore, fluid, all);
  const creepingConductance = paths.reduce(
    (sum, path) => sum + path.area / path.resistance.creepingSlope,
    gapConductance,
  );
  const area = paths.reduce((sum, path) => sum + path.area, 0);
  const ways = { paths, area, valves, gapFlow, gapConductance, creepingConductance };
  const [only, ...others] = paths;
  const simple =
    only !== undefined && others.length === 0 && valves.length === 0 && fluid.shearThinning === undefined;
  return {
    paths,
    valves,
    law,
    gap,
    gapConductance,
    gapFlow,
    creepingConductance,
    flow: (drop) => {
      let flow = gapFlow(drop);
      for (const path of paths) flow += path.area * path.resistance.meanSpeed(drop);
      for (const valve of valves) flow += valve.flow(drop);
      return flow;
    },
    pressureDrop: (flow) => {
      if (flow === 0) return { pressureDrop: 0, holeSpeeds: paths.map(() => 0), iterations: 0, residual: 0 };
      if (simple) return pressureDropOfOnePath(only, gapConductance, flow);
      const joint = fluid.shearThinning === undefined ? jointPressureDrop(ways, flow) : undefined;
      return joint ?? pressureDropOfManyPaths(ways, flow);
    },
  };
}
