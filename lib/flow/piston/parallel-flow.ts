import type { AnnularGap } from '../gap/annular-gap.js';
import { atGap, type GapFlow } from '../gap/thinning-gap.js';
import type { HoleLaw } from '../hole/hole-law.js';
import type { HolePath } from '../hole/hole-path.js';
import type { ValvePath } from '../valve/valve-path.js';
import type { ParallelPaths, PistonPressureDrop } from './piston-pressure-drop.js';

/**
 * A piston in its bore with one fluid, ready to compute. Flow and pressure drop are positive from the blind side to the shaft side.
 *
 * @public
 */
export interface PistonFlow {
  /**
   * Flow at a pressure drop [m³/s], rising; odd where holes are alike both ways and no valve covers any. Where a preloaded valve may be open or
   * shut, the one that a drop risen from 0 gives.
   */
  readonly flow: (pressureDrop: number) => number;
  /** Pressure drop at a flow [Pa], with how it was reached; where a preloaded valve may be open or shut, the one that a flow risen from 0 gives. */
  readonly pressureDrop: (flow: number) => PistonPressureDrop;
  /** The same for a flow that has fallen to its value from far above; differs only near the opening of a preloaded valve. */
  readonly fallingPressureDrop: (flow: number) => PistonPressureDrop;
  /** Flow per pressure drop of gap and open holes in the creeping limit [m³/(s·Pa)]. */
  readonly creepingConductance: number;
  readonly gap: AnnularGap;
  /** Flow per pressure drop of the rim gap alone, at rest [m³/(s·Pa)]. */
  readonly gapConductance: number;
  /** Flow through the rim gap [m³/s] at a pressure drop [Pa]. */
  readonly gapFlow: (pressureDrop: number) => number;
  /** Viscosity of the oil that the moving bore shears in the gap, over that at rest, at a sliding speed [m/s]. */
  readonly dragViscosityRatio: (speed: number) => number;
  /** Holes that are open both ways. */
  readonly paths: readonly HolePath[];
  /** Holes under a disc valve. */
  readonly valves: readonly ValvePath[];
  readonly law: HoleLaw;
}

/** Which way a flow has come to its value, where a preloaded valve may stand open or shut. */
export type FlowHistory = 'rising' | 'falling';

/** Finds the pressure drop at a flow other than 0. */
export type FlowSolver = (flow: number, history: FlowHistory) => PistonPressureDrop;

/** What a piston offers the oil, before it is asked anything. */
export interface Ways
  extends Omit<
    PistonFlow,
    'flow' | 'pressureDrop' | 'fallingPressureDrop' | 'creepingConductance' | 'gapFlow'
  > {
  readonly gapPoint: GapFlow;
}

/** The rim gap of an oil that does not thin. */
export function newtonianRim(gapConductance: number): Pick<Ways, 'gapPoint' | 'dragViscosityRatio'> {
  const gapPoint: GapFlow = (drop, out) => {
    out[0] = gapConductance * drop;
    out[1] = 1;
  };
  return { gapPoint, dragViscosityRatio: () => 1 };
}

/** Lets the oil through all ways at once; `solver` prepares what finds the pressure drop at a flow other than 0. */
export function parallelFlow(ways: Ways, solver: (ways: ParallelPaths) => FlowSolver): PistonFlow {
  const { paths, valves, gapPoint, gapConductance } = ways;
  const gapFlow = (drop: number): number => {
    gapPoint(drop, atGap);
    return atGap[0]!;
  };
  let area = 0;
  let creepingConductance = gapConductance;
  for (const path of paths) {
    area += path.area;
    creepingConductance += path.area / path.resistance.creepingSlope;
  }
  const parallel = { paths, area, valves, gapPoint, gapConductance, creepingConductance };
  const solve = solver(parallel);
  const atRest = { pressureDrop: 0, holeSpeeds: paths.map(() => 0), iterations: 0, residual: 0 };
  return {
    ...ways,
    gapFlow,
    creepingConductance,
    flow: (drop) => {
      let flow = gapFlow(drop);
      for (const path of paths) flow += path.area * path.resistance.meanSpeed(drop);
      for (const valve of valves) flow += valve.flow(drop);
      return flow;
    },
    pressureDrop: (flow) => (flow === 0 ? atRest : solve(flow, 'rising')),
    fallingPressureDrop: (flow) => (flow === 0 ? atRest : solve(flow, 'falling')),
  };
}
