import { requireModel } from './damper.js';
import type { DamperModel } from './damper-model.js';

/**
 * Where a disc valve begins to lift.
 *
 * @public
 */
export interface ValveOpening {
  /** Index of the valve in the piston. */
  readonly valve: number;
  readonly direction: 'compression' | 'rebound';
  /** Pressure drop over the piston at which it lifts [Pa], 0 or more. */
  readonly pressureDrop: number;
  /** Shaft speed at which it lifts [m/s], with its sign. */
  readonly speed: number;
}

/**
 * Where each disc valve of a piston begins to lift.
 *
 * @param model - from `damperModel`
 * @public
 */
export function valveOpenings(model: DamperModel): readonly ValveOpening[] {
  requireModel(model);
  return model.pistonFlow.valves.map(({ opens, openingPressure }, valve) => ({
    valve,
    direction: opens > 0 ? 'compression' : 'rebound',
    pressureDrop: openingPressure,
    speed: model.pistonFlow.flow(opens * openingPressure) / model.dampingArea,
  }));
}
