import { InputError } from '../base/input-error.js';
import type { DamperModel } from './damper-model.js';
import { pressureDropLimit } from './pressure-drop-limit.js';

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
  return model.pistonFlow.valves.map(({ opens, openingPressure }, valve) => ({
    valve,
    direction: opens > 0 ? 'compression' : 'rebound',
    pressureDrop: openingPressure,
    speed: model.pistonFlow.flow(opens * openingPressure) / model.dampingArea,
  }));
}

/** Throws where the gas cannot give the pressure drop that opens a valve anywhere in the stroke. */
export function requireValvesOpen(model: DamperModel): void {
  const { damper, pistonFlow, shaftArea } = model;
  if (pistonFlow.valves.length === 0) return;
  const deepest = Math.min(damper.stroke, (0.999 * damper.gas.volume) / shaftArea);
  for (const [index, { opens, openingPressure, valve }] of pistonFlow.valves.entries()) {
    const limit = pressureDropLimit(model, deepest, opens);
    if (openingPressure < limit) continue;
    throw new InputError({
      field: `piston.valves[${index}].preload`,
      value: valve.preload,
      unit: 'm',
      accepted: `small enough to open: the disc lifts at ${Math.round(openingPressure)} Pa, but before the oil tears the gas holds ${Math.round(limit)} Pa; below ${Number(((valve.preload * limit) / openingPressure).toPrecision(3))}`,
    });
  }
}
