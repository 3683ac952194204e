import { requireFinite } from '../base/checks.js';
import { pistonInertance } from '../flow/piston/inertance.js';
import { requireModel } from './damper.js';
import type { DamperModel } from './damper-model.js';

/**
 * Apparent mass at the shaft of the oil in and about the holes [kg], `A² / Σ (A_i / (ρ ℓ_i))`, `ℓ_i = 4/3 L + 1.03 d` and `A_i` the area of the holes of each
 * size, `A` that with which the piston displaces oil. Some grams: a thimble of oil, but sped up by the ratio of the areas.
 *
 * Holes by their narrowest diameter. Where a disc valve opens beside them it is less; under discs alone it is that of the open valve. Whole oil: with a cavity
 * behind the piston the shaft does not speed up the oil.
 *
 * @param model - from `damperModel`
 * @throws InputError for a model that is none
 * @see `apparentMass` of one hole, from our own solutions of flow that swings (docs/hole-law.md)
 * @example
 * ```ts
 * // model: of the example of damperModel
 * const holes = [{ count: 4, diameter: 0.0013 }];
 * const drilled = damperModel({ ...shock, piston: { ...shock.piston, holes } }, oil);
 * apparentMassAtShaft(drilled); // 8.779e-3: A² ρ (4/3 L + 1.03 d) over the area of four holes, A = 101.4 mm², by hand
 * apparentMassAtShaft(model); // 0: no holes
 * ```
 * @public
 */
export function apparentMassAtShaft(model: DamperModel): number {
  requireModel(model);
  return model.dampingArea ** 2 * pistonInertance(model.pistonFlow, model.fluid.density);
}

/**
 * Force that speeds up the oil in the holes [N], with the sign of the acceleration: {@link apparentMassAtShaft} times it. No other force of the library has it in:
 * `damperForce` is that of a steady speed. It adds to it up to `ω d²/ν` of 10 within 3 % of the swing; `unsteadyFlowError` says how far.
 *
 * @param model - from `damperModel`
 * @param acceleration - of the shaft, compression positive [m/s²], either sign
 * @throws InputError for an acceleration that is not finite
 * @example
 * ```ts
 * // model: of the example of damperModel
 * const holes = [{ count: 4, diameter: 0.0013 }];
 * const drilled = damperModel({ ...shock, piston: { ...shock.piston, holes } }, oil);
 * inertiaForce(drilled, 100); // 0.8779: 8.78 g, as apparentMassAtShaft, times 100 m/s²
 * ```
 * @public
 */
export function inertiaForce(model: DamperModel, acceleration: number): number {
  requireModel(model);
  requireFinite(acceleration, 'acceleration', 'm/s²');
  return apparentMassAtShaft(model) * acceleration;
}
