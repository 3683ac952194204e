import { ConvergenceError } from '../base/root-finding.js';
import type { FluidState } from '../fluid/fluid-state.js';
import { annularGapConductance } from './annular-gap.js';
import { holeArea } from './hole.js';
import type { HoleLaw, HoleResistance } from './hole-law.js';
import { type Piston, requirePiston } from './piston.js';
import { sharpHoleLaw } from './sharp-hole.js';

/** The holes of one size, bound to a fluid. */
export interface HolePath {
  readonly diameter: number;
  readonly lengthRatio: number;
  /** Area of all holes of the group [m²]. */
  readonly area: number;
  readonly resistance: HoleResistance;
}

/**
 * A piston in its bore with one fluid, ready to compute.
 *
 * @public
 */
export interface PistonFlow {
  /** Flow at a pressure drop [m³/s]; odd. */
  readonly flow: (pressureDrop: number) => number;
  /** Pressure drop at a flow [Pa], with how it was reached; odd. */
  readonly pressureDrop: (flow: number) => PistonPressureDrop;
  /** Flow per pressure drop in the creeping limit [m³/(s·Pa)]. */
  readonly creepingConductance: number;
  /** Flow per pressure drop of the rim gap alone [m³/(s·Pa)]. */
  readonly gapConductance: number;
  readonly paths: readonly HolePath[];
  readonly law: HoleLaw;
}

/**
 * A solved pressure drop.
 *
 * @public
 */
export interface PistonPressureDrop {
  /** [Pa], with the sign of the flow. */
  readonly pressureDrop: number;
  /** Mean speed in the holes of each path [m/s], with the sign of the flow. */
  readonly holeSpeeds: readonly number[];
  /** Steps taken. */
  readonly iterations: number;
  /** Flow less the flow asked for [m³/s], at the last pressure drop tried. */
  readonly residual: number;
}

const stepLimit = 60;

/** Relative change after which one more Newton step, converging quadratically, would change nothing in double precision. */
const settled = 1e-10;

/** A step that shrinks less than this many times against the last one asks for a new slope. */
const goodContraction = 100;

/**
 * One hole size: the speed in the hole is the unknown. `area V + G Δp(V)` is convex and rises, and all flow through the holes is an
 * upper bound, so that each step falls towards the root, with the slope of any point above it too. The slope is kept as long as the steps
 * shrink well, since little leaks and it hardly changes.
 */
function pressureDropOfOnePath(path: HolePath, gapConductance: number, flow: number): PistonPressureDrop {
  const { area, resistance } = path;
  const target = Math.abs(flow);
  const sign = flow < 0 ? -1 : 1;
  let speed = target / area;
  let drop = resistance.pressureDrop(speed);
  let slope = area + gapConductance * resistance.slope(speed);
  let lastStep = Number.POSITIVE_INFINITY;
  for (let iterations = 1; iterations <= stepLimit; iterations++) {
    const step = Math.abs(area * speed + gapConductance * drop - target) / slope;
    speed -= step;
    drop = resistance.pressureDrop(speed);
    if (step <= settled * speed) {
      const residual = sign * (area * speed + gapConductance * drop - target);
      return { pressureDrop: sign * drop, holeSpeeds: [sign * speed], iterations, residual };
    }
    if (step * goodContraction > lastStep) slope = area + gapConductance * resistance.slope(speed);
    lastStep = step;
  }
  throw new ConvergenceError('pressure drop of the piston', 0, target / area);
}

/**
 * Several hole sizes: the pressure drop is the unknown. The flow is concave in it and viscosity alone is a lower bound, so that Newton
 * climbs to the root. The start takes one speed for all holes, which is nearer at high flow; where that start overshoots, the
 * next step falls below the root and is held at the lower bound.
 */
function pressureDropOfManyPaths(
  paths: readonly HolePath[],
  gapConductance: number,
  creepingConductance: number,
  flow: number,
): PistonPressureDrop {
  const target = Math.abs(flow);
  const sign = flow < 0 ? -1 : 1;
  const lowest = target / creepingConductance;
  const area = paths.reduce((sum, path) => sum + path.area, 0);
  let drop = lowest;
  for (const path of paths) {
    const viscousShare = 1 - gapConductance / creepingConductance;
    drop = Math.max(drop, viscousShare * path.resistance.pressureDrop((viscousShare * target) / area));
  }
  for (let iterations = 1; iterations <= stepLimit; iterations++) {
    let shortfall = target - gapConductance * drop;
    let conductance = gapConductance;
    const holeSpeeds: number[] = [];
    for (const { area: pathArea, resistance } of paths) {
      const speed = resistance.meanSpeed(drop);
      holeSpeeds.push(sign * speed);
      shortfall -= pathArea * speed;
      conductance += pathArea / resistance.slope(speed);
    }
    const next = Math.max(drop + shortfall / conductance, lowest);
    const change = Math.abs(next - drop);
    drop = next;
    if (change <= settled * drop) {
      return { pressureDrop: sign * drop, holeSpeeds, iterations, residual: -sign * shortfall };
    }
  }
  throw new ConvergenceError('pressure drop of the piston', lowest, drop);
}

/**
 * Binds a piston to its bore and a fluid: the holes and the rim gap in parallel share one pressure drop.
 *
 * @param piston - sizes above 0 m, holes smaller than the piston, eccentricity 0 to 0.99
 * @param bore - diameter of the bore [m], above the piston diameter
 * @param fluid - density above 0 kg/m³, kinematic viscosity above 0 m²/s
 * @param law - law of the holes; {@link sharpHoleLaw} by default
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
  const paths = piston.holes.map(({ count, diameter }): HolePath => {
    const hole = { diameter, length: piston.thickness };
    return {
      diameter,
      lengthRatio: hole.length / diameter,
      area: count * holeArea(hole),
      resistance: law.resistance(hole, fluid),
    };
  });
  const creepingConductance = paths.reduce(
    (sum, path) => sum + path.area / path.resistance.creepingSlope,
    gapConductance,
  );
  const only = paths.length === 1 ? paths[0] : undefined;
  return {
    paths,
    law,
    gapConductance,
    creepingConductance,
    flow: (drop) =>
      paths.reduce((sum, path) => sum + path.area * path.resistance.meanSpeed(drop), gapConductance * drop),
    pressureDrop: (flow) => {
      if (flow === 0) return { pressureDrop: 0, holeSpeeds: paths.map(() => 0), iterations: 0, residual: 0 };
      if (only !== undefined) return pressureDropOfOnePath(only, gapConductance, flow);
      return pressureDropOfManyPaths(paths, gapConductance, creepingConductance, flow);
    },
  };
}
