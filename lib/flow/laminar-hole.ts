import type { FluidState } from '../fluid/fluid-state.js';
import type { HoleResistance } from './hole-law.js';
import { type InertialLossShares, inertialLoss } from './inertial-loss.js';

/** A hole as its resistance sees it, for flow in one direction. */
export interface LaminarHole extends InertialLossShares {
  /** Diameter of the narrowest section [m]: it makes the Reynolds number. */
  readonly diameter: number;
  /** `Δp d / (μ V)` in the creeping limit, a pure number above 0. */
  readonly creepingNumber: number;
}

const stepLimit = 60;

/**
 * Resistance of a hole by viscosity and inertia, `Δp = (μ V/d) · creepingNumber + ½ ρ V² ζ(Re)`, with the sign of the
 * speed.
 */
export function laminarHoleResistance(hole: LaminarHole, fluid: FluidState): HoleResistance {
  const { diameter, creepingNumber } = hole;
  const loss = inertialLoss(hole);
  const creepingSlope = (fluid.density * fluid.kinematicViscosity * creepingNumber) / diameter;
  const halfDensity = 0.5 * fluid.density;
  const reynoldsPerSpeed = diameter / fluid.kinematicViscosity;

  const pressureDrop = (meanSpeed: number): number => {
    const size = Math.abs(meanSpeed);
    return meanSpeed * (creepingSlope + halfDensity * size * loss.coefficient(reynoldsPerSpeed * size));
  };
  const slope = (meanSpeed: number): number => {
    const size = Math.abs(meanSpeed);
    const reynoldsNumber = reynoldsPerSpeed * size;
    const bent = 2 * loss.coefficient(reynoldsNumber) + reynoldsNumber * loss.slope(reynoldsNumber);
    return creepingSlope + halfDensity * size * bent;
  };
  // The pressure drop is convex in the speed (test/laws/hole-law.test.ts), so that Newton lands above the root from any start and falls
  // onto it. The quadratic with a middle loss coefficient is near everywhere.
  const meanSpeed = (wanted: number): number => {
    const target = Math.abs(wanted);
    let speed = (2 * target) / (creepingSlope + Math.sqrt(creepingSlope ** 2 + 8 * halfDensity * target));
    for (let step = 0; step < stepLimit; step++) {
      const correction = (target - pressureDrop(speed)) / slope(speed);
      speed += correction;
      // Quadratic convergence: the next correction would be below the last place.
      if (Math.abs(correction) <= 1e-9 * speed) break;
    }
    return wanted < 0 ? -speed : speed;
  };
  return { pressureDrop, slope, meanSpeed, creepingSlope };
}
