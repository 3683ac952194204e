import { requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { madeWith, optional, requireShape, type Shape } from '../../base/shape.js';
import type { DamperModel } from '../../damper/damper-model.js';
import { frictionAt } from '../../damper/seal-friction.js';
import { pressureOfGas } from '../../gas/gas-state.js';
import { requireMovingShock } from './check-shock.js';
import type { MovingShock } from './moving-shock.js';
import { pistonPassage } from './piston-passage.js';

/**
 * What motion needs besides the steady model: how much oil there is, where, and how springy.
 *
 * @public
 */
export interface OilInMotion {
  /** Oil in the shock, free air included, at the pressure of full extension [m³]; where the gas is mixed in, the gas too. Above 0. */
  readonly volume: number;
  /** Room at full extension of the chamber without gas [m³]: the shaft side, with the gas there the blind side. Above 0. */
  readonly farVolume: number;
  /** Bulk modulus of the oil without air [Pa], above 0; silicone about 0.9 GPa. */
  readonly bulkModulus: number;
  /** Part of the oil that is free air at the pressure of full extension, 0 (the default) to 0.999. */
  readonly airFraction?: number;
  /** Polytropic exponent of that air, 1 (the default, small bubbles) to 1.4. */
  readonly airExponent?: number;
}

/** Form of {@link OilInMotion}. */
export const oilInMotionShape: Shape = {
  volume: 'm³',
  farVolume: 'm³',
  bulkModulus: 'Pa',
  airFraction: optional(''),
  airExponent: optional(''),
};

/**
 * Turns a damper bound to its fluid into what motion moves.
 *
 * @param model - from `damperModel`
 * @param oil - volumes [m³] and bulk modulus [Pa] above 0, air fraction 0 to 0.999, exponent 1 to 1.4
 * @throws InputError for an input outside its range, or oil that does not fill the shock
 * @public
 */
export function movingShock(model: DamperModel, oil: OilInMotion): MovingShock {
  requireShape({ model, oil }, { model: madeWith('pistonFlow'), oil: oilInMotionShape });
  const { damper, fluid, pistonArea, pistonFlow, rimDrag, shaftArea } = model;
  const { layout, ambientPressure, airReleasePressure } = damper.gas;
  const atExtension = pressureOfGas(model.gas, 0);
  requirePositive(oil.volume, 'oil.volume', 'm³');
  requirePositive(oil.farVolume, 'oil.farVolume', 'm³');
  requirePositive(oil.bulkModulus, 'oil.bulkModulus', 'Pa');
  const airFraction = oil.airFraction ?? 0;
  requireNotNegative(airFraction, 'oil.airFraction', '');
  requireWithin(airFraction, 0, 0.999, 'oil.airFraction', '');
  const mixed = layout === 'emulsion';
  const shock: MovingShock = {
    ...pistonPassage(pistonFlow, damper.bore, fluid),
    pistonArea,
    shaftArea,
    stroke: damper.stroke,
    rimDrag: (speed) => pistonFlow.dragViscosityRatio(speed) * rimDrag * speed,
    sealForce: (speed) => frictionAt(damper.seal, speed),
    oil: {
      volume: oil.volume,
      referencePressure: atExtension,
      bulkModulus: oil.bulkModulus,
      airFraction: mixed ? Math.min(0.999, airFraction + model.gas.capacity / oil.volume) : airFraction,
      airExponent: mixed ? model.gas.polytropicExponent : (oil.airExponent ?? 1),
    },
    layout: mixed ? 'mixed' : layout,
    gas: {
      pressure: (volume) => pressureOfGas(model.gas, volume),
      capacity: model.gas.capacity,
    },
    farVolume: oil.farVolume,
    ambientPressure,
    releasePressure: airReleasePressure,
  };
  requireMovingShock(shock);
  return shock;
}
