import { damperForce } from '../../lib/damper/damper-force.js';
import type { DamperModel } from '../../lib/damper/damper-model.js';
import type { DamperForce } from '../../lib/damper/force-point.js';
import { forceVelocityCurve } from '../../lib/damper/force-velocity.js';
import { oilForce } from '../../lib/damper/oil-force.js';

/** Everything computed of whole oil at one shaft speed, half way down the stroke. */
export function pointAt(model: DamperModel, speed: number): DamperForce {
  return damperForce(model, { speed, position: model.damper.stroke / 2 });
}

/** Force of the oil alone at a shaft speed [N, signed], as plans count it: an emulsion adds some of its gas to one way and takes it from the other. */
export function oilAlone(model: DamperModel, speed: number): number {
  return model.damper.gas.layout === 'emulsion' ? oilForce(model, speed) : pointAt(model, speed).dampingForce;
}

/** Everything computed of whole oil at each shaft speed, half way down the stroke; quicker than point by point. */
export function curveAt(model: DamperModel, speeds: readonly number[]): readonly DamperForce[] {
  return forceVelocityCurve(model, speeds, model.damper.stroke / 2);
}
