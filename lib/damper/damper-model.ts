import { annularGapDrag, gapCircumference, gapHeight } from '../flow/annular-gap.js';
import type { HoleLaw } from '../flow/hole-law.js';
import { type PistonFlow, pistonFlow } from '../flow/piston-flow.js';
import { sharpHoleLaw } from '../flow/sharp-hole.js';
import { type FluidState, requireFluidState } from '../fluid/fluid-state.js';
import { type Damper, requireDamper, shaftArea } from './damper.js';
import { blindShare } from './gas.js';
import { requireValvesOpen } from './valve-opening.js';

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

/**
 * Binds a damper to a fluid.
 *
 * The flow through piston and gap is `(A_m − f A_s) v` and the pressure force `(A_m − f A_s) Δp`, with `A_m` the area to the middle of
 * the gap: the oil dragged along by the moving bore is exactly what `A_m` adds to the piston area. `f` is the part of the gas on
 * the blind side; the chambers stand at `p_gas + (1 − f) Δp` and `p_gas − f Δp`.
 *
 * @param damper - sizes above 0 m that fit into each other, gas and seal in their ranges
 * @param fluid - density above 0 kg/m³, kinematic viscosity above 0 m²/s
 * @param law - law of the holes; {@link sharpHoleLaw} by default
 * @throws InputError for an input outside its range
 * @see the closed-cylinder limit agrees with Rao, Mechanical Vibrations, SI ed. 2017, Example 1.16, Eq. (E.11)
 * @public
 */
export function damperModel(damper: Damper, fluid: FluidState, law: HoleLaw = sharpHoleLaw): DamperModel {
  requireDamper(damper);
  requireFluidState(fluid);
  const { piston, bore } = damper;
  const flow = pistonFlow(piston, bore, fluid, law);
  const gap = {
    bore,
    pistonDiameter: piston.diameter,
    length: piston.thickness,
    eccentricity: piston.eccentricity,
  };
  const halfGapArea = (gapCircumference(gap) * gapHeight(gap)) / 2;
  const rod = shaftArea(damper);
  const share = blindShare(damper.gas);
  const model = {
    damper,
    fluid,
    pistonFlow: flow,
    dampingArea: (Math.PI / 4) * piston.diameter ** 2 + halfGapArea - share * rod,
    blindShare: share,
    shaftArea: rod,
    skirtDrag: annularGapDrag(gap, fluid),
  };
  requireValvesOpen(model);
  return model;
}
