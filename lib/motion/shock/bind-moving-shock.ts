import { requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import type { DamperModel } from '../../damper/damper-model.js';
import { compressedGasPressure } from '../../damper/gas.js';
import { sealFrictionForce } from '../../damper/seal-friction.js';
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

/**
 * Turns a damper bound to its fluid into what motion moves.
 *
 * @param model - from `damperModel`
 * @param oil - volumes [m³] and bulk modulus [Pa] above 0, air fraction 0 to 0.999, exponent 1 to 1.4
 * @throws InputError for an input outside its range, or oil that does not fill the shock
 * @public
 */
export function movingShock(model: DamperModel, oil: OilInMotion): MovingShock {
  const { damper, fluid, pistonFlow, shaftArea, blindShare, dampingArea, skirtDrag } = model;
  const { gas } = damper;
  requirePositive(oil.volume, 'oil.volume', 'm³');
  requirePositive(oil.farVolume, 'oil.farVolume', 'm³');
  requirePositive(oil.bulkModulus, 'oil.bulkModulus', 'Pa');
  const airFraction = oil.airFraction ?? 0;
  requireNotNegative(airFraction, 'oil.airFraction', '');
  requireWithin(airFraction, 0, 0.999, 'oil.airFraction', '');
  const mixed = gas.layout === 'emulsion';
  const shock: MovingShock = {
    ...pistonPassage(pistonFlow, damper.bore, fluid),
    pistonArea: dampingArea + blindShare * shaftArea,
    shaftArea,
    stroke: damper.stroke,
    rimDrag: (speed) => pistonFlow.dragViscosityRatio(speed) * skirtDrag * speed,
    sealForce: (speed) => sealFrictionForce(damper.seal, speed),
    oil: {
      volume: oil.volume,
      referencePressure: gas.pressure,
      bulkModulus: oil.bulkModulus,
      airFraction: mixed ? Math.min(0.999, airFraction + gas.volume / oil.volume) : airFraction,
      airExponent: mixed ? gas.polytropicExponent : (oil.airExponent ?? 1),
    },
    layout: mixed ? 'mixed' : (gas.layout ?? 'blind-side') === 'shaft-side' ? 'shaft-side' : 'blind-side',
    gas: {
      pressure: (volume) =>
        volume < 0
          ? gas.pressure * (gas.volume / (gas.volume - volume)) ** gas.polytropicExponent
          : compressedGasPressure(gas, volume),
      capacity: gas.volume,
    },
    farVolume: oil.farVolume,
    ambientPressure: gas.ambientPressure,
    releasePressure: gas.airReleasePressure ?? 0,
  };
  requireMovingShock(shock);
  return shock;
}
