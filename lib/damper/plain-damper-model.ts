import type { HoleLaw } from '../flow/hole/hole-law.js';
import { sharpHoleLaw } from '../flow/hole/sharp-hole.js';
import { plainPistonFlow } from '../flow/piston/plain-piston-flow.js';
import type { FluidState } from '../fluid/oil/fluid-state.js';
import { bindDamper, type DamperModel } from './bound-damper.js';
import type { Damper } from './damper.js';

/**
 * Binds a damper whose piston has straight sharp holes to a fluid. The entry `dashpot/piston` has a function of the same name for
 * shaped holes, disc valves and oils that thin.
 *
 * The flow through piston and gap is `(A_m − f A_s) v` and the pressure force `(A_m − f A_s) Δp`, with `A_m` the area to the middle of
 * the gap and `f` the part of the gas on the blind side; the chambers stand at `p_gas + (1 − f) Δp` and `p_gas − f Δp`.
 *
 * @param damper - sizes above 0 m that fit into each other, gas and seal in their ranges; no hole shapes, no valves
 * @param fluid - density above 0 kg/m³, kinematic viscosity above 0 m²/s; no shear thinning
 * @param law - law of the holes; {@link sharpHoleLaw} by default
 * @throws InputError for an input outside its range, or a feature of the other entry
 * @see the closed-cylinder limit agrees with Rao, Mechanical Vibrations, SI ed. 2017, Example 1.16, Eq. (E.11)
 * @public
 */
export function plainDamperModel(
  damper: Damper,
  fluid: FluidState,
  law: HoleLaw = sharpHoleLaw,
): DamperModel {
  return bindDamper(damper, fluid, ({ piston, bore }) => plainPistonFlow(piston, bore, fluid, law));
}
