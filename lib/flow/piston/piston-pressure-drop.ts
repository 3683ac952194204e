import { monotoneRoot } from '../../numeric/monotone-root.js';
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
  readonly gapFlow: (pressureDrop: number) => number;
  /** Flow per pressure drop of the gap at rest [m³/(s·Pa)]. */
  readonly gapConductance: number;
  /** Flow per pressure drop of gap and open holes in the creeping limit [m³/(s·Pa)]. */
  readonly creepingConductance: number;
}

/** Flow through gap, open holes and open valves at a pressure drop above 0, and its slope, both without the sign. */
export function openFlow(
  { gapFlow, paths }: ParallelPaths,
  open: readonly ValvePath[],
  sign: number,
  drop: number,
): { value: number; slope: number } {
  const step = 1e-4 * drop;
  let value = sign * gapFlow(sign * drop);
  let slope = (sign * (gapFlow(sign * (drop + step)) - gapFlow(sign * (drop - step)))) / (2 * step);
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
  const excess = (drop: number) => {
    const { value, slope } = openFlow(ways, open, sign, drop);
    return { value: value - Math.abs(flow), slope };
  };
  const { root, iterations, residual } = monotoneRoot(
    excess,
    start,
    low,
    Number.POSITIVE_INFINITY,
    'pressure drop of the piston',
  );
  const holeSpeeds = paths.map(({ resistance }) => resistance.meanSpeed(sign * root));
  return { pressureDrop: sign * root, holeSpeeds, iterations, residual: sign * residual };
}
