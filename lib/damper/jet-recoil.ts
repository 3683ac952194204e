import type { DamperModel } from './damper-model.js';

/**
 * Momentum of a jet over `ρ V² A` of its hole, between 4/3 (parabolic) and 1 (flat); 1.19 to 1.25 in our own numerical reference
 * from Re 30 to 800.
 */
export const jetMomentum = 1.2;

/**
 * Part of the pressure force that the jets take back [N], with the sign of the flow.
 *
 * Far behind the piston the jets have given their momentum back as pressure; on its face it is missing. By
 * the momentum balance of the oil in the bore the force is the face pressure less `Σ ρ a V (1.2 V − U)`, with `U` the mean
 * speed in the bore; our own numerical reference agrees within 3 % of the recoil (docs/piston.md). Jets from under a disc leave
 * sideways and do not count.
 *
 * @param model - from `damperModel`
 * @param holeSpeeds - mean speed in the open holes of each path [m/s], all of one sign
 * @param flow - through piston and gap [m³/s]
 * @public
 */
export function jetRecoil(model: DamperModel, holeSpeeds: readonly number[], flow: number): number {
  const boreSpeed = Math.abs(flow) / model.boreArea;
  let sum = 0;
  let index = 0;
  for (const { area } of model.pistonFlow.paths) {
    const speed = Math.abs(holeSpeeds[index++] ?? 0);
    sum += area * speed * Math.max(jetMomentum * speed - boreSpeed, 0);
  }
  return (flow < 0 ? -1 : 1) * model.fluid.density * sum;
}
