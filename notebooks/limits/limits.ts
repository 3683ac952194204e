import { cavitationOnset } from '../../lib/damper/cavitation-onset.js';
import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';
import { type Gas, sealedGas } from '../../lib/gas/gas.js';
import { gasPressure } from '../../lib/gas/gas-state.js';

/** Directions in the words of the page. */
export type Direction = 'compression' | 'rebound';

/** The same damper with as much gas, in one pocket, at another pressure at full extension [Pa]. */
export function withPressure(model: DamperModel, pressure: number): DamperModel {
  const { damper, fluid, gas } = model;
  const pocket = sealedGas({ ...damper.gas, volume: gas.capacity, temperature: gas.temperature, pressure });
  return damperModel({ ...damper, gas: pocket }, fluid);
}

/** The first direction in which a cavity can open, with its onset at full extension, where the gas is weakest; the force is that of the pressures alone. */
export function weakest(model: DamperModel): {
  readonly direction: Direction;
  readonly speed: number;
  readonly force: number;
} {
  const onset = cavitationOnset(model, 'compression', 0) ?? cavitationOnset(model, 'rebound', 0);
  if (onset === undefined) throw new Error('no cavity opens: the gas is mixed through the oil');
  const sign = onset.direction === 'compression' ? 1 : -1;
  const outside = model.damper.gas.ambientPressure;
  const force =
    sign * model.dampingArea * onset.pressureDrop + model.shaftArea * (gasPressure(model.gas, 0) - outside);
  return { direction: onset.direction, speed: onset.speed, force };
}

/**
 * Force of a shock of a bore and a shaft where cavitation begins in compression [N], by the pressure on its faces alone:
 * `(A − A_s)(p − p_release) + A_s (p − p_ambient)` with the gas on the blind side.
 */
export function capOf(bore: number, shaftDiameter: number, gas: Gas, pressure: number): number {
  const area = (Math.PI / 4) * bore ** 2;
  const shaft = (Math.PI / 4) * shaftDiameter ** 2;
  return (area - shaft) * (pressure - gas.airReleasePressure) + shaft * (pressure - gas.ambientPressure);
}
