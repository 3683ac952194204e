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
 * @example
 * ```ts
 * // model, shock and oil: of the example of damperModel
 * const piston = { diameter: 0.0115, thickness: 0.0025, holes: [{ count: 4, diameter: 0.0015, pitchDiameter: 0.007 }], eccentricity: 0 };
 * const slack = { face: 'shaft-side', covers: [0], outerDiameter: 0.0105, clampDiameter: 0.005, thickness: 1e-4, count: 1, elasticModulus: 2e11, poissonRatio: 0.3, preload: 0 } as const;
 * const valved = damperModel({ ...shock, piston: { ...piston, valves: [slack] } }, oil);
 * valveOpenings(valved)[0]?.direction; // 'compression': a disc on the face of the shaft side
 * valveOpenings(valved)[0]?.pressureDrop; // 0: without preload it lifts at once
 * valveOpenings(model).length; // 0: a piston without valves
 * ```
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
