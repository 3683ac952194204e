import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { monotoneRoot } from '../../numeric/monotone-root.js';
import type { DiscValve } from '../geometry/disc-valve.js';
import { lookAtHole } from '../hole/hole-law.js';
import type { HolePath } from '../hole/hole-path.js';
import { discLiftPerPressure } from './disc-valve.js';

/** Filled and read within one call and never handed out. */
const both = new Float64Array(2);

/** Contraction of the sheet of oil that leaves under the disc: Kirchhoff's free jet, `π/(π + 2)`. */
const sheetContraction = 0.611;

/**
 * A disc valve at a pressure under the disc, all in the opening direction.
 *
 * @public
 */
export interface ValveLook {
  /** Pressure drop over holes and disc [Pa]. */
  readonly drop: number;
  /** Its slope over the pressure under the disc. */
  readonly dropSlope: number;
  /** Flow [m³/s]. */
  readonly flow: number;
  /** Its slope over the pressure under the disc [m³/(s·Pa)]. */
  readonly flowSlope: number;
}

/**
 * A disc valve over its holes, bound to a fluid.
 *
 * @public
 */
export interface ValvePath {
  readonly valve: DiscValve;
  readonly holes: readonly HolePath[];
  /** Sign of the pressure drop that opens it. */
  readonly opens: 1 | -1;
  /** Pressure drop at which the disc begins to lift [Pa]. */
  readonly openingPressure: number;
  /** Lift at the holes [m] at a pressure drop under the disc [Pa]. */
  readonly lift: (pressureUnderDisc: number) => number;
  /** Pressure under the disc [Pa] at a pressure drop over holes and disc [Pa], both in the opening direction. */
  readonly pressureUnderDisc: (pressureDrop: number) => number;
  /** Of a disc over one hole size: everything at a pressure under it [Pa], all in the opening direction. */
  readonly atPressureUnderDisc?: (pressureUnderDisc: number) => ValveLook;
  /** Flow [m³/s] at a pressure drop over holes and disc [Pa], with the sign of the drop; none in the shut direction. */
  readonly flow: (pressureDrop: number) => number;
  /** Slope of the flow [m³/(s·Pa)], 0 or more. */
  readonly slope: (pressureDrop: number) => number;
}

/** Flow and its slope through the sheet under the disc. */
interface Sheet {
  readonly flow: number;
  readonly slope: number;
}

/**
 * Sheet of oil between disc and seat: viscous over the land from the holes to the rim, then a free jet from its edge,
 * `Δp = 12 μ Q ℓ/(P w³) + ½ ρ (Q/(C P w))²`.
 */
function sheetFlow(
  valve: DiscValve,
  holes: readonly HolePath[],
  counts: number,
  pitch: number,
  fluid: FluidState,
) {
  const widest = Math.max(...holes.map(({ diameter }) => diameter));
  const land = (valve.outerDiameter - pitch - widest) / 2;
  // Oil spreads from each hole until the sheets meet: the edge is that of the holes or of the circle, whichever is shorter.
  const edge = Math.min(counts * Math.PI * widest, Math.PI * (pitch + widest));
  const viscous = (12 * fluid.density * fluid.kinematicViscosity * land) / edge;
  const inertial = (0.5 * fluid.density) / (sheetContraction * edge) ** 2;
  return (pressure: number, lift: number, liftSlope: number): Sheet => {
    if (lift <= 0 || pressure <= 0) return { flow: 0, slope: 0 };
    const square = lift * lift;
    const a = viscous / (square * lift);
    const b = inertial / square;
    const flow = (2 * pressure) / (a + Math.sqrt(a * a + 4 * b * pressure));
    // Δp = a Q + b Q²; a and b fall as the disc lifts.
    const byLift = (3 * a * flow + 2 * b * flow * flow) / lift;
    return { flow, slope: (1 + byLift * liftSlope) / (a + 2 * b * flow) };
  };
}

/**
 * Binds a disc to the holes it covers. The pressure under the disc acts on the area of the holes and bends it as a load on
 * their pitch circle; the oil passes holes and sheet one after the other.
 *
 * @see Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, Table 3, for the disc; plane Poiseuille flow for the sheet
 */
export function valvePath(
  valve: DiscValve,
  holes: readonly HolePath[],
  counts: number,
  pitch: number,
  fluid: FluidState,
): ValvePath {
  const opens = valve.face === 'shaft-side' ? 1 : -1;
  const area = holes.reduce((sum, path) => sum + path.area, 0);
  const liftPerPressure = discLiftPerPressure(valve, area, pitch);
  const highest = valve.largestLift ?? Number.POSITIVE_INFINITY;
  const openingPressure = valve.preload / liftPerPressure;
  const lift = (pressure: number) =>
    Math.min(Math.max(liftPerPressure * (pressure - openingPressure), 0), highest);
  const sheet = sheetFlow(valve, holes, counts, pitch, fluid);
  const sheetAt = (pressure: number): Sheet => {
    const height = lift(pressure);
    return sheet(pressure, height, height < highest ? liftPerPressure : 0);
  };
  const throughHoles = (drop: number): Sheet => {
    let flow = 0;
    let slope = 0;
    for (const path of holes) {
      const speed = path.resistance.meanSpeed(opens * drop);
      flow += path.area * Math.abs(speed);
      slope += path.area / path.resistance.slope(speed);
    }
    return { flow, slope };
  };
  const pressureUnderDisc = (drop: number): number => {
    if (drop <= openingPressure) return Math.max(drop, 0);
    const excess = (pressure: number) => {
      const before = throughHoles(drop - pressure);
      const behind = sheetAt(pressure);
      return { value: behind.flow - before.flow, slope: behind.slope + before.slope };
    };
    return monotoneRoot(excess, (openingPressure + drop) / 2, openingPressure, drop, 'pressure under a disc')
      .root;
  };
  const flow = (drop: number): number => {
    const opening = opens * drop;
    return opening <= openingPressure ? 0 : opens * sheetAt(pressureUnderDisc(opening)).flow;
  };
  const slope = (drop: number): number => {
    const opening = opens * drop;
    if (opening <= openingPressure) return 0;
    const pressure = pressureUnderDisc(opening);
    const behind = sheetAt(pressure).slope;
    const before = throughHoles(opening - pressure).slope;
    return (behind * before) / (behind + before);
  };
  const bound = { valve, holes, opens, openingPressure, lift, pressureUnderDisc, flow, slope } as const;
  const [only, ...others] = holes;
  if (only === undefined || others.length > 0) return bound;
  return {
    ...bound,
    atPressureUnderDisc: (pressure) => {
      const behind = sheetAt(pressure);
      lookAtHole(only.resistance, (opens * behind.flow) / only.area, both);
      const drop = pressure + opens * (both[0] ?? 0);
      const dropSlope = 1 + ((both[1] ?? 0) * behind.slope) / only.area;
      return { drop, dropSlope, flow: behind.flow, flowSlope: behind.slope };
    },
  };
}
