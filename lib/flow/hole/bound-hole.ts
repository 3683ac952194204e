import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { ConvergenceError } from '../../numeric/root-finding.js';
import { type BoundLoss, bindLoss, evaluateLoss, separationLoss } from './bound-loss.js';
import type { InertialLossShares, Separation } from './loss-shares.js';

const { abs } = Math;

/** A hole as its resistance sees it, for flow in one direction. */
export interface ResistingHole extends InertialLossShares {
  /** Diameter of the narrowest section [m]: it makes the Reynolds number. */
  readonly diameter: number;
  /** `Δp d / (μ V)` in the creeping limit, a pure number above 0. */
  readonly creepingNumber: number;
}

/**
 * A hole with a fluid, for flow in one direction, its numbers worked out once: `Δp = V (creepingSlope + ½ ρ V ζ(Re))`.
 *
 * @public
 */
export interface BoundHole {
  /** [Pa·s/m] */
  readonly creepingSlope: number;
  /** [kg/m³] */
  readonly halfDensity: number;
  /** [s/m] */
  readonly reynoldsPerSpeed: number;
  readonly loss: BoundLoss;
  readonly separation: Separation | undefined;
}

/** Binds a hole to a fluid; what its inertia costs is the same in all of them. */
export function bindHole(
  hole: ResistingHole,
  { density, kinematicViscosity }: Pick<FluidState, 'density' | 'kinematicViscosity'>,
  loss = bindLoss(hole),
): BoundHole {
  return {
    creepingSlope: (density * kinematicViscosity * hole.creepingNumber) / hole.diameter,
    halfDensity: 0.5 * density,
    reynoldsPerSpeed: hole.diameter / kinematicViscosity,
    loss,
    separation: hole.separation,
  };
}

/** Pressure drop [Pa], and its slope [Pa·s/m]. */
interface DropAndSlope {
  readonly drop: number;
  readonly slope: number;
}

/** Pressure drop and slope at a mean speed of 0 or more [m/s]. */
export function evaluateBoundHole(hole: BoundHole, speed: number): DropAndSlope {
  const { loss, separation, creepingSlope, halfDensity, reynoldsPerSpeed } = hole;
  const reynoldsNumber = reynoldsPerSpeed * speed;
  let separated = 0;
  let separatedSlope = 0;
  if (separation !== undefined) {
    const more = separationLoss(separation, reynoldsNumber);
    separated = more.coefficient;
    separatedSlope = more.slope;
  }
  const { coefficient, slope } = evaluateLoss(loss, reynoldsNumber, separated, separatedSlope);
  const impulse = halfDensity * speed;
  return {
    drop: speed * (creepingSlope + impulse * coefficient),
    slope: creepingSlope + impulse * (2 * coefficient + slope),
  };
}

/** Holes of one size beside a gap that leaks. */
export interface HolesBesideGap {
  readonly hole: BoundHole;
  /** Of all holes [m²]. */
  readonly area: number;
  /** Flow per pressure drop of the gap [m³/(s·Pa)]. */
  readonly gapConductance: number;
  /** Speed in the holes per flow as that tends to zero [1/m²]: the most that there can be. */
  readonly creepingSpeed: number;
}

/** Mean speed in the holes [m/s], pressure drop [Pa], and the steps it took. */
export interface SolvedBesideGap {
  readonly speed: number;
  readonly drop: number;
  readonly steps: number;
}

const stepLimit = 60;

/** Below this step against the speed the pressure drop is a straight line to twelve digits. */
const straight = 1e-6;

/** Holes of an area [m²] beside a gap of a conductance [m³/(s·Pa)]. */
export function besideGap(hole: BoundHole, area: number, gapConductance: number): HolesBesideGap {
  return { hole, area, gapConductance, creepingSpeed: 1 / (area + gapConductance * hole.creepingSlope) };
}

/**
 * What oil does in holes and gap at a flow of 0 or more [m³/s]: `V` of `area V + G Δp(V) = flow`.
 *
 * The left side is convex and rises, and the speed by viscosity alone is an upper bound, so that each step of Newton's falls towards the root.
 */
export function solveBesideGap(
  { hole, area, gapConductance, creepingSpeed }: HolesBesideGap,
  flow: number,
): SolvedBesideGap {
  let speed = flow * creepingSpeed;
  for (let steps = 0; ; steps++) {
    if (steps > stepLimit) throw new ConvergenceError('pressure drop of the piston', 0, flow / area);
    const { drop, slope } = evaluateBoundHole(hole, speed);
    const step = (area * speed + gapConductance * drop - flow) / (area + gapConductance * slope);
    speed -= step;
    if (abs(step) <= straight * speed) return { speed, drop: drop - step * slope, steps };
  }
}
