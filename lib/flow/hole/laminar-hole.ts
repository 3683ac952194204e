import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { type BoundHole, bindHole, evaluateBoundHole, type ResistingHole } from './bound-hole.js';
import type { HoleResistance } from './hole-law.js';
import type { Jet } from './jet-momentum.js';

/** A hole as its resistance and the recoil of its jet see it, for flow in one direction. */
export interface LaminarHole extends ResistingHole {
  readonly jet: Jet;
}

const stepLimit = 60;

/**
 * Resistance of a hole by viscosity and inertia, `Δp = (μ V/d) · creepingNumber + ½ ρ V² ζ(Re)`, with the sign of the
 * speed.
 */
export function laminarHoleResistance(hole: ResistingHole, fluid: FluidState): HoleResistance {
  const bound = bindHole(hole, fluid);
  return { ...resistanceOfBound(bound), bound: { towardsShaft: bound, towardsBlind: bound } };
}

/** The functions of a bound hole. */
export function resistanceOfBound(bound: BoundHole): HoleResistance {
  const { creepingSlope, halfDensity } = bound;
  const evaluate = (meanSpeed: number, out: Float64Array): void => {
    const { drop, slope } = evaluateBoundHole(bound, Math.abs(meanSpeed));
    out[0] = meanSpeed < 0 ? -drop : drop;
    out[1] = slope;
  };
  const pressureDrop = (meanSpeed: number): number => {
    const { drop } = evaluateBoundHole(bound, Math.abs(meanSpeed));
    return meanSpeed < 0 ? -drop : drop;
  };
  const slope = (meanSpeed: number): number => evaluateBoundHole(bound, Math.abs(meanSpeed)).slope;
  // The pressure drop is convex in the speed (test/laws/hole-law.test.ts), so that Newton lands above the root from any start and falls
  // onto it. The quadratic with a middle loss coefficient is near everywhere.
  const meanSpeed = (wanted: number): number => {
    const target = Math.abs(wanted);
    let speed =
      (2 * target) / (creepingSlope + Math.sqrt(creepingSlope * creepingSlope + 8 * halfDensity * target));
    for (let step = 0; step < stepLimit; step++) {
      const here = evaluateBoundHole(bound, speed);
      const correction = (target - here.drop) / here.slope;
      speed += correction;
      // Quadratic convergence: the next correction would be below the twelfth digit.
      if (Math.abs(correction) <= 1e-6 * speed) break;
    }
    return wanted < 0 ? -speed : speed;
  };
  return { pressureDrop, slope, evaluate, meanSpeed, creepingSlope };
}
