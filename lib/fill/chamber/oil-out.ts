import { requireCount, requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { optional, requireShape } from '../../base/shape.js';
import type { Compensator } from '../../gas/compensator.js';
import { compensatorShape } from '../../gas/compensator.js';
import { fluidRoom, type ShockChamber, shockChamberShape } from './chamber.js';
import { type Closing, closeShock, closingShape } from './closed-shock.js';

/**
 * What a fill takes and what comes out again.
 *
 * @public
 */
export interface OilOut {
  /** Oil poured in to the rim, with the shaft at the filling position [m³]. */
  readonly poured: number;
  /** Oil that comes out of bleed or thread until the cap is closed [m³]; negative where it must be topped up. */
  readonly out: number;
  /** Oil that stays [m³]. */
  readonly kept: number;
}

/**
 * Oil that comes out when a body filled to the rim gets its cap and its shaft is brought to the closing position with the
 * bleed open.
 *
 * @param chamber - sizes that fit into each other
 * @param compensator - what sits under the cap
 * @param closing - position [m], temperature [K], pressure outside [Pa], free air [m³]
 * @param fillingPosition - how far the shaft is pushed in while oil is poured [m], 0 to the stroke
 * @throws InputError for an input outside its range
 * @public
 */
export function oilOutOnClosing(
  chamber: ShockChamber,
  compensator: Compensator,
  closing: Closing,
  fillingPosition: number,
): OilOut {
  requireShape(
    { chamber, compensator, closing },
    { chamber: shockChamberShape, compensator: compensatorShape, closing: closingShape },
  );
  requireWithin(fillingPosition, 0, chamber.stroke, 'fillingPosition', 'm');
  const poured = fluidRoom(chamber, fillingPosition) - chamber.capVolume;
  const kept = closeShock(chamber, compensator, closing).oilVolume;
  return { poured, out: poured - kept, kept };
}

/**
 * How much oil a season takes.
 *
 * @public
 */
export interface OilNeed {
  /** For one shock [m³], spilled oil included. */
  readonly perShock: number;
  /** For all shocks built alike [m³]. */
  readonly perBuild: number;
  /** For all rebuilds [m³]. */
  readonly perSeason: number;
  /** Bottles to buy, where a bottle size is known. */
  readonly bottles?: number;
}

/**
 * Oil for a shock, a set of shocks and a season of rebuilds.
 *
 * @param pouredVolume - oil poured into one shock [m³], 0 or more
 * @param use - shocks built alike; rebuilds in a season; part of the poured oil that is spilled besides, 0 or more; volume of a bottle [m³]
 * @throws InputError for an input outside its range
 * @public
 */
export function oilNeed(
  pouredVolume: number,
  use: {
    readonly shocks: number;
    readonly rebuilds: number;
    readonly spilledFraction: number;
    readonly bottleVolume?: number;
  },
): OilNeed {
  requireShape(
    { use },
    { use: { shocks: '', rebuilds: '', spilledFraction: '', bottleVolume: optional('') } },
  );
  requireNotNegative(pouredVolume, 'pouredVolume', 'm³');
  requireCount(use.shocks, 'shocks');
  requireCount(use.rebuilds, 'rebuilds');
  requireNotNegative(use.spilledFraction, 'spilledFraction', '');
  const perShock = pouredVolume * (1 + use.spilledFraction);
  const perBuild = perShock * use.shocks;
  const perSeason = perBuild * use.rebuilds;
  const need = { perShock, perBuild, perSeason };
  if (use.bottleVolume === undefined) return need;
  requirePositive(use.bottleVolume, 'bottleVolume', 'm³');
  return { ...need, bottles: Math.ceil(perSeason / use.bottleVolume) };
}
