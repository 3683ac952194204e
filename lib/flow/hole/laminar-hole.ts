import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { bindHole, evaluateBoundHole, type ResistingHole, speedsBesideGap } from './bound-hole.js';
import type { HoleResistance, SolverBesideGap } from './hole-law.js';
import type { Jet } from './jet-momentum.js';

/** A hole as its resistance and the recoil of its jet see it, for flow in one direction. */
export interface LaminarHole extends ResistingHole {
  readonly jet: Jet;
}

const stepLimit = 60;

/** Filled and read within one call and never handed out: a buffer for each hole would cost a tenth of binding it. */
const dropAndSlope = new Float64Array(2);
const oneFlow = new Float64Array(1);
const oneSpeed = new Float64Array(1);
const oneDrop = new Float64Array(1);

/**
 * Resistance of a hole by viscosity and inertia, `Δp = (μ V/d) · creepingNumber + ½ ρ V² ζ(Re)`, with the sign of the
 * speed.
 */
export function laminarHoleResistance(hole: ResistingHole, fluid: FluidState): HoleResistance {
  const bound = bindHole(hole, fluid.density, fluid.kinematicViscosity);
  const { creepingSlope, halfDensity } = bound;
  const evaluate = (meanSpeed: number, out: Float64Array): void => {
    evaluateBoundHole(bound, Math.abs(meanSpeed), out);
    if (meanSpeed < 0) out[0] = -(out[0] as number);
  };
  const pressureDrop = (meanSpeed: number): number => {
    evaluate(meanSpeed, dropAndSlope);
    return dropAndSlope[0] as number;
  };
  const slope = (meanSpeed: number): number => {
    evaluate(meanSpeed, dropAndSlope);
    return dropAndSlope[1] as number;
  };
  // The pressure drop is convex in the speed (test/laws/hole-law.test.ts), so that Newton lands above the root from any start and falls
  // onto it. The quadratic with a middle loss coefficient is near everywhere.
  const meanSpeed = (wanted: number): number => {
    const target = Math.abs(wanted);
    let speed =
      (2 * target) / (creepingSlope + Math.sqrt(creepingSlope * creepingSlope + 8 * halfDensity * target));
    for (let step = 0; step < stepLimit; step++) {
      evaluateBoundHole(bound, speed, dropAndSlope);
      const correction = (target - (dropAndSlope[0] as number)) / (dropAndSlope[1] as number);
      speed += correction;
      // Quadratic convergence: the next correction would be below the twelfth digit.
      if (Math.abs(correction) <= 1e-6 * speed) break;
    }
    return wanted < 0 ? -speed : speed;
  };
  const besideGap = (area: number, gapConductance: number): SolverBesideGap => {
    const holes = { hole: bound, area, gapConductance };
    return (flow) => {
      oneFlow[0] = Math.abs(flow);
      const iterations = speedsBesideGap(holes, oneFlow, oneSpeed, oneDrop, 1);
      const sign = flow < 0 ? -1 : 1;
      return {
        meanSpeed: sign * (oneSpeed[0] as number),
        pressureDrop: sign * (oneDrop[0] as number),
        iterations,
      };
    };
  };
  return { pressureDrop, slope, evaluate, meanSpeed, besideGap, creepingSlope };
}
