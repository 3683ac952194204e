import { annularGapDrag, gapCircumference, gapHeight } from '../flow/gap/annular-gap.js';
import type { PistonFlow } from '../flow/piston/parallel-flow.js';
import { type FluidState, requireFluidState } from '../fluid/oil/fluid-state.js';
import { type Damper, requireDamper, shaftArea } from './damper.js';
import { blindShare } from './gas.js';

/**
 * A damper filled with one fluid, checked once and ready to compute many forces.
 *
 * @public
 */
export interface DamperModel {
  readonly damper: Damper;
  readonly fluid: FluidState;
  readonly pistonFlow: PistonFlow;
  /**
   * Area on which the pressure drop acts and with which the piston displaces oil [m²]: the piston out to the middle of its gap, less the
   * part of the shaft whose room the gas on the blind side makes.
   */
  readonly dampingArea: number;
  /** That part: 1 with the gas on the blind side, 0 on the shaft side, one half mixed through. */
  readonly blindShare: number;
  /** Cross-section of the shaft [m²]. */
  readonly shaftArea: number;
  /** Viscous drag of the piston rim per speed, of the oil at rest [N·s/m]. */
  readonly skirtDrag: number;
}

/** Binds a damper to a fluid once the flow through its piston is known. */
export function bindDamper(
  damper: Damper,
  fluid: FluidState,
  pistonFlow: (damper: Damper) => PistonFlow,
): DamperModel {
  requireDamper(damper);
  requireFluidState(fluid);
  const flow = pistonFlow(damper);
  const { gap } = flow;
  const halfGapArea = (gapCircumference(gap) * gapHeight(gap)) / 2;
  const rod = shaftArea(damper);
  const share = blindShare(damper.gas);
  return {
    damper,
    fluid,
    pistonFlow: flow,
    dampingArea: (Math.PI / 4) * damper.piston.diameter ** 2 + halfGapArea - share * rod,
    blindShare: share,
    shaftArea: rod,
    skirtDrag: annularGapDrag(gap, fluid),
  };
}
