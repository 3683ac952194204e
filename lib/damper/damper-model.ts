import type { HoleLaw } from '../flow/hole/hole-law.js';
import { sharpHoleLaw } from '../flow/hole/sharp-hole.js';
import { pistonFlow } from '../flow/piston/piston-flow.js';
import type { FluidState } from '../fluid/oil/fluid-state.js';
import { bindDamper, type DamperModel } from './bound-damper.js';
import type { Damper } from './damper.js';
import { requireValvesOpen } from './valve-opening.js';

export type { DamperModel } from './bound-damper.js';

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
  const model = bindDamper(damper, fluid, ({ piston, bore }) => pistonFlow(piston, bore, fluid, law));
  requireValvesOpen(model);
  return model;
}
