import { refuse, requireEach, requireFinite } from '../base/checks.js';
import { recoilOfJet } from '../flow/hole/jet-momentum.js';
import { requireModel } from './damper.js';
import type { DamperModel } from './damper-model.js';

/**
 * Part of the pressure force that the jets take back [N], with the sign of the flow.
 *
 * Far behind the piston the jets have given their momentum back as pressure; on its face it is missing. By
 * the momentum balance of the oil in the bore the force is the face pressure less `Σ ρ a (m V² + c ν V/d − ½ V U)`, with `U` the mean
 * speed in the bore, and `m` the momentum of the jet, which depends on the shape of the hole (docs/piston.md). Jets from under a
 * disc leave sideways and do not count.
 *
 * @param model - from `damperModel`
 * @param holeSpeeds - mean speed in the open holes [m/s], one a path, all of one sign
 * @param flow - through piston and gap [m³/s]
 * @throws InputError for a number that is not finite, or not one speed a path
 * @example
 * ```ts
 * // model: of the example of damperModel
 * jetRecoil(model, [], 1e-6); // 0: no holes, no jets
 * ```
 * @public
 */
export function jetRecoil(model: DamperModel, holeSpeeds: readonly number[], flow: number): number {
  requireModel(model);
  requireEach(holeSpeeds, 'holeSpeeds', (speed, field) => requireFinite(speed, field, 'm/s'));
  const { length } = model.pistonFlow.paths;
  if (holeSpeeds.length !== length) refuse(holeSpeeds.length, 'holeSpeeds.length', '', `${length}`);
  requireFinite(flow, 'flow', 'm³/s');
  return recoilOfHoles(model, holeSpeeds, flow);
}

/** {@link jetRecoil} of what was checked before. */
export function recoilOfHoles(model: DamperModel, holeSpeeds: readonly number[], flow: number): number {
  const boreSpeed = Math.abs(flow) / model.boreArea;
  const { paths } = model.pistonFlow;
  let sum = 0;
  // Counted, since an iterator would cost as much as the physics.
  for (let index = 0; index < paths.length; index++) {
    const { area, momentumFlow } = paths[index]!;
    const speed = holeSpeeds[index]!;
    sum += area * recoilOfJet(momentumFlow(speed), Math.abs(speed), boreSpeed);
  }
  return (flow < 0 ? -1 : 1) * model.fluid.density * sum;
}
