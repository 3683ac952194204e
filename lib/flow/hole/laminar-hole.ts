import type { FluidState } from '../../fluid/oil/fluid-state.js';
import type { HoleResistance } from './hole-law.js';
import { type InertialLossShares, inertialEvaluation } from './inertial-loss.js';
import type { Jet } from './jet-momentum.js';

/** A hole as its resistance sees it, for flow in one direction. */
export interface LaminarHole extends InertialLossShares {
  /** Diameter of the narrowest section [m]: it makes the Reynolds number. */
  readonly diameter: number;
  /** `Δp d / (μ V)` in the creeping limit, a pure number above 0. */
  readonly creepingNumber: number;
  readonly jet: Jet;
}

const stepLimit = 60;

/** Filled and read within one call and never handed out: a buffer for each hole would cost a tenth of binding it. */
const dropAndSlope = new Float64Array(2);

/**
 * Resistance of a hole by viscosity and inertia, `Δp = (μ V/d) · creepingNumber + ½ ρ V² ζ(Re)`, with the sign of the
 * speed.
 */
export function laminarHoleResistance(hole: Omit<LaminarHole, 'jet'>, fluid: FluidState): HoleResistance {
  const { diameter, creepingNumber } = hole;
  const evaluateInertia = inertialEvaluation(hole);
  const creepingSlope = (fluid.density * fluid.kinematicViscosity * creepingNumber) / diameter;
  const halfDensity = 0.5 * fluid.density;
  const reynoldsPerSpeed = diameter / fluid.kinematicViscosity;

  const evaluate = (meanSpeed: number, out: Float64Array): void => {
    const size = Math.abs(meanSpeed);
    const reynoldsNumber = reynoldsPerSpeed * size;
    evaluateInertia(reynoldsNumber, out);
    const coefficient = out[0]!;
    const bent = out[1]!;
    out[0] = meanSpeed * (creepingSlope + halfDensity * size * coefficient);
    out[1] = creepingSlope + halfDensity * size * (2 * coefficient + reynoldsNumber * bent);
  };
  const pressureDrop = (meanSpeed: number): number => {
    evaluate(meanSpeed, dropAndSlope);
    return dropAndSlope[0]!;
  };
  const slope = (meanSpeed: number): number => {
    evaluate(meanSpeed, dropAndSlope);
    return dropAndSlope[1]!;
  };
  // The pressure drop is convex in the speed (test/laws/hole-law.test.ts), so that Newton lands above the root from any start and falls
  // onto it. The quadratic with a middle loss coefficient is near everywhere.
  const meanSpeed = (wanted: number): number => {
    const target = Math.abs(wanted);
    let speed =
      (2 * target) / (creepingSlope + Math.sqrt(creepingSlope * creepingSlope + 8 * halfDensity * target));
    for (let step = 0; step < stepLimit; step++) {
      evaluate(speed, dropAndSlope);
      const correction = (target - dropAndSlope[0]!) / dropAndSlope[1]!;
      speed += correction;
      // Quadratic convergence: the next correction would be below the twelfth digit.
      if (Math.abs(correction) <= 1e-6 * speed) break;
    }
    return wanted < 0 ? -speed : speed;
  };
  return { pressureDrop, slope, evaluate, meanSpeed, creepingSlope };
}
