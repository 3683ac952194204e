import type { Damper } from '../damper/damper.js';
import type { PistonPart, ShockPart } from './parts.js';

/**
 * The damper that a shock body and a piston of a parts file make together.
 *
 * @param shock - body, shaft, gas and seal, in SI
 * @param piston - the piston, in SI; whether it fits is checked where the damper is bound to an oil
 * @public
 */
export function damperOf(shock: ShockPart, piston: PistonPart): Damper {
  const { bore, shaftDiameter, stroke, gas, seal } = shock;
  return { bore, shaftDiameter, stroke, piston: piston.piston, gas, seal };
}
