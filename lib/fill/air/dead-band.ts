import { requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { madeWith, requireShape, type Shape } from '../../base/shape.js';
import type { DamperModel } from '../../damper/damper-model.js';
import { type AiryOil, airyOilShape, compressAiryOil } from '../../fluid/air/air-in-oil.js';
import { simpson } from '../../numeric/quadrature.js';

/**
 * Oil with air on the side of the piston that its gas does not hold: the shaft side where the gas is on the blind side, and the
 * other way round.
 *
 * @public
 */
export interface AirySide {
  /** Volume of oil and free air on that side [m³], above 0. */
  readonly volume: number;
  /** The mixture; its reference pressure is the pressure at rest. */
  readonly oil: AiryOil;
}

/** Form of {@link AirySide}. */
export const airySideShape: Shape = { volume: 'm³', oil: airyOilShape };

/** Part of the steady pressure drop at which damping counts as built up. */
const builtUpShare = 0.9;

/** Even number of intervals of Simpson's rule. */
const intervals = 64;

/**
 * Shaft travel before damping has built up [m]: from rest to a part of the steady pressure drop, at a steady speed.
 *
 * On the side away from the gas `A dx = (dV/dp) dp + Q(p) dx/v`: what the piston sweeps squeezes (or stretches) oil and air, and flows
 * through the piston once there is pressure. So `x = ∫ (dV/dp)/(A − Q(p)/v) dp`. With the gas on the blind side compression stretches, towards
 * vacuum; with the gas on the shaft side rebound does.
 *
 * @param model - from `damperModel`, its gas on one side of the piston
 * @param side - volume [m³] and mixture on the other side
 * @param speed - shaft speed [m/s], positive in compression, not 0
 * @param share - part of the steady pressure drop, above 0 to 0.99; 0.9 where left out
 * @throws InputError for a value outside its range, an emulsion, or a motion in which a cavity opens before damping has built up
 * @public
 */
export function deadBand(
  model: DamperModel,
  side: AirySide,
  speed: number,
  share: number = builtUpShare,
): number {
  requireShape({ model, side, speed }, { model: madeWith('pistonFlow'), side: airySideShape, speed: 'm/s' });
  requirePositive(side.volume, 'volume', 'm³');
  requirePositive(Math.abs(speed), 'speed', 'm/s');
  requirePositive(share, 'share', '');
  requireWithin(share, 0, 0.99, 'share', '');
  const { pistonFlow, dampingArea } = model;
  const steady = pistonFlow.pressureDrop(dampingArea * speed).pressureDrop;
  const rest = side.oil.referencePressure;
  const away = pressureSign(model);
  const end = rest + away * share * steady;
  if (end <= 0) {
    throw new InputError({
      field: 'speed',
      value: speed,
      unit: 'm/s',
      accepted: `below ${pistonFlow.flow(rest / share) / dampingArea}, where a cavity opens before damping has built up, in`,
    });
  }
  const travelPerDrop = (drop: number): number => {
    const { relativeVolume, bulkModulus } = compressAiryOil(side.oil, rest + away * drop);
    const swept = dampingArea - pistonFlow.flow(drop) / speed;
    return (side.volume * relativeVolume) / bulkModulus / swept;
  };
  return Math.abs(simpson(travelPerDrop, 0, share * steady, intervals));
}

/** Which way the pressure goes on the side away from the gas, for a pressure drop in the sense of compression. */
function pressureSign({ damper }: DamperModel): 1 | -1 {
  const layout = damper.gas.layout ?? 'blind-side';
  if (layout === 'emulsion') {
    const accepted = 'blind-side or shaft-side: in an emulsion neither side is held';
    throw new InputError({ field: 'gas.layout', value: layout, accepted });
  }
  return layout === 'shaft-side' ? 1 : -1;
}

/**
 * Shaft travel that is lost while a pocket of free air passes the piston [m]: it meets next to no resistance in the holes.
 *
 * @param model - from `damperModel`
 * @param airVolume - air that passes [m³], 0 or more
 * @public
 */
export function airPassageTravel(model: DamperModel, airVolume: number): number {
  requireShape({ model }, { model: madeWith('pistonFlow') });
  requireNotNegative(airVolume, 'airVolume', 'm³');
  return airVolume / model.dampingArea;
}
