import { powerRoot } from '../../numeric/power-root.js';
import { atGap, type GapFlow } from '../gap/thinning-gap.js';
import { type HolesBesideGap, solveBesideGap } from '../hole/bound-hole.js';
import type { HolePath } from '../hole/hole-path.js';
import type { ValvePath } from '../valve/valve-path.js';

/**
 * A solved pressure drop.
 *
 * @public
 */
export interface PistonPressureDrop {
  /** [Pa], with the sign of the flow. */
  readonly pressureDrop: number;
  /** Mean speed in the open holes of each path [m/s], with the sign of the flow. */
  readonly holeSpeeds: readonly number[];
  /** Steps taken. */
  readonly iterations: number;
  /** Flow less the flow asked for [m³/s], at the last pressure drop tried. */
  readonly residual: number;
}

/** Pressure drop of holes of one size beside the gap. */
export function pressureDropOfOnePath(holes: HolesBesideGap, flow: number): PistonPressureDrop {
  const { speed, drop, steps } = solveBesideGap(holes, Math.abs(flow));
  const sign = flow < 0 ? -1 : 1;
  return {
    pressureDrop: sign * drop,
    holeSpeeds: [sign * speed],
    iterations: steps,
    residual: sign * (holes.area * speed + holes.gapConductance * drop) - flow,
  };
}

/** Everything that lets oil through a piston. */
export interface ParallelPaths {
  readonly paths: readonly HolePath[];
  readonly valves: readonly ValvePath[];
  /** Area of the open holes [m²]. */
  readonly area: number;
  readonly gapPoint: GapFlow;
  /** Flow per pressure drop of the gap at rest [m³/(s·Pa)]. */
  readonly gapConductance: number;
  /** Flow per pressure drop of gap and open holes in the creeping limit [m³/(s·Pa)]. */
  readonly creepingConductance: number;
}

/** Flow through gap, open holes and open valves at a pressure drop above 0, and its slope, both without the sign. */
export function openFlow(
  { gapPoint, paths }: ParallelPaths,
  open: readonly ValvePath[],
  sign: number,
  drop: number,
): { value: number; slope: number } {
  gapPoint(drop, atGap);
  let value = atGap[0]!;
  let slope = (atGap[1]! * value) / drop;
  for (const { area, resistance } of paths) {
    const speed = resistance.meanSpeed(sign * drop);
    value += area * sign * speed;
    slope += area / resistance.slope(speed);
  }
  for (const valve of open) {
    const point = valve.openAt(drop);
    if (point === undefined) continue;
    value += point.flow;
    if (point.dropSlope > 0) slope += point.flowSlope / point.dropSlope;
  }
  return { value, slope };
}

/**
 * Several ways through: the pressure drop is the unknown, and the flow rises with it. The start takes one speed for all open holes, or
 * viscosity alone where that asks for more; a rough start only costs steps.
 *
 * @param open - valves that stand open, where their pressure rises with the flow
 */
export function pressureDropOfManyPaths(
  ways: ParallelPaths,
  open: readonly ValvePath[],
  flow: number,
): PistonPressureDrop {
  const { paths, area, gapConductance, creepingConductance } = ways;
  const sign = flow < 0 ? -1 : 1;
  // The last to open decides; those before it may have fallen shut again.
  const low = open.at(-1)?.leastOpenDrop ?? 0;
  const throughHoles = (1 - gapConductance / creepingConductance) * flow;
  let start = Math.max(Math.abs(flow) / creepingConductance, 1.1 * low);
  for (const { resistance } of paths) {
    start = Math.max(start, Math.abs(resistance.pressureDrop(throughHoles / area)));
  }
  const excess = (drop: number, out: Float64Array): void => {
    const { value, slope } = openFlow(ways, open, sign, drop);
    out[0] = Math.log(value / Math.abs(flow));
    out[1] = (slope * drop) / value;
  };
  const { root, iterations, residual } = powerRoot(excess, start, 'pressure drop of the piston', low);
  const holeSpeeds = paths.map(({ resistance }) => resistance.meanSpeed(sign * root));
  return { pressureDrop: sign * root, holeSpeeds, iterations, residual: flow * Math.expm1(residual) };
}
