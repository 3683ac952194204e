import { requirePositive, requireWithin } from '../../base/checks.js';
import { requireShape } from '../../base/shape.js';

/**
 * Interaction G of two oils, from one measured blend: `ln ν = ln ν_ideal + x₁ x₂ G`.
 *
 * With the ideal blend of additive logarithms (Arrhenius) this is the equation of Grunberg and Nissan; any other rule can be
 * pinned to the measurement in the same way.
 *
 * @param measured - measured kinematic viscosity of the blend [m²/s], above 0
 * @param ideal - what the rule gives for that blend [m²/s], above 0
 * @param secondFraction - share x₂ of the second oil by mass, above 0 and below 1
 * @throws InputError outside these
 * @see Grunberg & Nissan, Nature 164 (1949) 799; from memory; the source has moles
 * @public
 */
export function blendInteraction(measured: number, ideal: number, secondFraction: number): number {
  requirePositive(measured, 'measured', 'm²/s');
  requirePositive(ideal, 'ideal', 'm²/s');
  requireWithin(secondFraction, 1e-6, 1 - 1e-6, 'secondFraction', '');
  return Math.log(measured / ideal) / (secondFraction * (1 - secondFraction));
}

/**
 * Blend viscosity [m²/s] with an interaction: the ideal one times `exp(x₁ x₂ G)`.
 *
 * @param ideal - what the rule gives for the blend [m²/s], above 0
 * @param secondFraction - share x₂ of the second oil by mass, 0 to 1
 * @param interaction - G
 * @throws InputError outside these
 * @see Grunberg & Nissan, Nature 164 (1949) 799; from memory; the source has moles
 * @public
 */
export function interactingBlend(ideal: number, secondFraction: number, interaction: number): number {
  requireWithin(interaction, -100, 100, 'interaction', '');
  requireShape({ interaction }, { interaction: '' });
  requirePositive(ideal, 'ideal', 'm²/s');
  requireWithin(secondFraction, 0, 1, 'secondFraction', '');
  return ideal * Math.exp(secondFraction * (1 - secondFraction) * interaction);
}
