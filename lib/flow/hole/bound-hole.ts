import { ConvergenceError } from '../../numeric/root-finding.js';
import { type BoundLoss, bindLoss, evaluateLoss, evaluateSeparatingLoss } from './bound-loss.js';
import type { InertialLossShares, Separation } from './loss-shares.js';

/** A hole as its resistance sees it, for flow in one direction. */
export interface ResistingHole extends InertialLossShares {
  /** Diameter of the narrowest section [m]: it makes the Reynolds number. */
  readonly diameter: number;
  /** `Δp d / (μ V)` in the creeping limit, a pure number above 0. */
  readonly creepingNumber: number;
}

/** A hole with a fluid, for flow in one direction, its numbers worked out once: `Δp = V (creepingSlope + ½ ρ V ζ(Re))`. */
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

/** Binds a hole to a fluid of a density [kg/m³] and a kinematic viscosity [m²/s]. */
export function bindHole(hole: ResistingHole, density: number, kinematicViscosity: number): BoundHole {
  return {
    creepingSlope: (density * kinematicViscosity * hole.creepingNumber) / hole.diameter,
    halfDensity: 0.5 * density,
    reynoldsPerSpeed: hole.diameter / kinematicViscosity,
    loss: bindLoss(hole),
    separation: hole.separation,
  };
}

/** Writes pressure drop [Pa] and slope [Pa·s/m] at a mean speed of 0 or more [m/s] into the first two places. */
export function evaluateBoundHole(hole: BoundHole, speed: number, out: Float64Array): void {
  const reynoldsNumber = hole.reynoldsPerSpeed * speed;
  if (hole.separation === undefined) evaluateLoss(hole.loss, reynoldsNumber, 0, 0, out);
  else evaluateSeparatingLoss(hole.loss, hole.separation, reynoldsNumber, out);
  const coefficient = out[0] as number;
  const impulse = hole.halfDensity * speed;
  out[1] = hole.creepingSlope + impulse * (2 * coefficient + (out[1] as number));
  out[0] = speed * (hole.creepingSlope + impulse * coefficient);
}

/** Holes of one size beside a gap that leaks. */
export interface HolesBesideGap {
  readonly hole: BoundHole;
  /** Of all holes [m²]. */
  readonly area: number;
  /** Flow per pressure drop of the gap [m³/(s·Pa)]. */
  readonly gapConductance: number;
}

const stepLimit = 60;

/** Below this step against the speed the pressure drop is a straight line to twelve digits. */
const straight = 1e-6;

/** Filled and read at once and never handed out. */
const lossAndSlope = new Float64Array(2);

/**
 * Writes the mean speed in the holes [m/s] and the pressure drop [Pa] at each flow through holes and gap: `V` of `area V + G Δp(V) = flow`.
 *
 * The left side is convex and rises, and the speed by viscosity alone is an upper bound, so that each step of Newton's falls towards the root.
 * Many flows in one call, since calling would cost as much as a tenth of a solution.
 *
 * @param flows - 0 or more [m³/s]
 * @param count - how many of them
 * @returns the steps that the last of them took
 */
export function speedsBesideGap(
  { hole, area, gapConductance }: HolesBesideGap,
  flows: Float64Array,
  speeds: Float64Array,
  drops: Float64Array,
  count: number,
): number {
  const { loss, separation, creepingSlope, halfDensity, reynoldsPerSpeed } = hole;
  const perCreepingFlow = 1 / (area + gapConductance * creepingSlope);
  let steps = 0;
  for (let place = 0; place < count; place++) {
    const flow = flows[place] as number;
    let speed = flow * perCreepingFlow;
    for (steps = 0; ; steps++) {
      if (steps > stepLimit) throw new ConvergenceError('pressure drop of the piston', 0, flow / area);
      const reynoldsNumber = reynoldsPerSpeed * speed;
      if (separation === undefined) evaluateLoss(loss, reynoldsNumber, 0, 0, lossAndSlope);
      else evaluateSeparatingLoss(loss, separation, reynoldsNumber, lossAndSlope);
      const coefficient = lossAndSlope[0] as number;
      const impulse = halfDensity * speed;
      const drop = speed * (creepingSlope + impulse * coefficient);
      const slope = creepingSlope + impulse * (2 * coefficient + (lossAndSlope[1] as number));
      const step = (area * speed + gapConductance * drop - flow) / (area + gapConductance * slope);
      speed -= step;
      if (Math.abs(step) > straight * speed) continue;
      speeds[place] = speed;
      drops[place] = drop - step * slope;
      break;
    }
  }
  return steps;
}
