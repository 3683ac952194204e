import { requireFinite, requireRecord } from '../base/checks.js';
import type { PistonPressureDrop } from '../flow/piston/piston-pressure-drop.js';
import { pressureOfGas } from '../gas/gas-state.js';
import { canCavitate, shaftSidePressure } from './chamber-pressures.js';
import { requireModel, requirePosition, type ShaftMotion } from './damper.js';
import type { DamperModel } from './damper-model.js';
import { type DamperForce, forceOfFlow } from './force-point.js';

/**
 * Force of a damper at a shaft speed and position, its oil whole.
 *
 * Beyond the onset of cavitation (`cavitating`) no stroke begins with this force: it starts at that of the onset, and the damping comes near to the one given
 * here as the cavity squeezes the gas, a little past it while a shaft that comes in fills the cavity; {@link forceAfterTravel} has the way between.
 *
 * @param model - from {@link damperModel}
 * @param motion - speed [m/s], either sign; position [m], 0 to the stroke
 * @throws InputError where the speed is not finite, the position is outside the stroke, or the gas has no room left
 * @example
 * ```ts
 * // model: of the example of damperModel
 * const { dampingForce, gasForce, force } = damperForce(model, { speed: 0.02, position: 0.014 });
 * dampingForce; // 3.635: 181.7 N·s/m, by hand
 * gasForce; // 0.1125: (p − p₀) A_s with p = p₀/(1 − 0.09896)^1.4, by hand
 * force; // 3.747: their sum
 * ```
 * @public
 */
export function damperForce(model: DamperModel, motion: ShaftMotion): DamperForce {
  requireModel(model);
  requireRecord(motion, 'motion');
  const { speed, position } = motion;
  requireFinite(speed, 'speed', 'm/s');
  requirePosition(position, model.damper.stroke);
  return wholeForce(model, speed, pressureOfGas(model.gas, model.shaftArea * position));
}

/** {@link damperForce} where the gas pressure [Pa] is known; `solved` is left out but where a preloaded valve comes from above. */
export function wholeForce(
  model: DamperModel,
  speed: number,
  gas: number,
  solved: PistonPressureDrop = model.pistonFlow.pressureDrop(model.dampingArea * speed),
): DamperForce {
  const { layout, airReleasePressure } = model.damper.gas;
  const flow = model.dampingArea * speed;
  const onShaftSide = shaftSidePressure(model, gas, solved.pressureDrop);
  const lowest = Math.min(onShaftSide, onShaftSide + solved.pressureDrop);
  const cavitating = lowest < airReleasePressure && canCavitate(layout, speed);
  return forceOfFlow(
    model,
    speed,
    gas,
    cavitating ? airReleasePressure : lowest,
    cavitating,
    0,
    flow,
    solved,
  );
}
