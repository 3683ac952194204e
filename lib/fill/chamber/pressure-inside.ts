import { requirePositive, requireWithin } from '../../base/checks.js';
import { type GasCondition, gasLeft, volumeGivenUp } from '../../gas/gas-room.js';
import { bracketedRoot } from '../../numeric/root-finding.js';
import type { ClosedShock } from './closed-shock.js';
import { HydraulicLock } from './hydraulic-lock.js';

/**
 * What has changed since the cap was closed, apart from the position.
 *
 * @public
 */
export interface FillCondition {
  /** Polytropic exponent of the gas, 1 (slow) to 1.4 (fast air). */
  readonly polytropicExponent: number;
  /** Temperature of oil and gas [K], above 0. */
  readonly temperature: number;
  /** Oil volume over the oil volume at closing, above 0: density at closing over density now. */
  readonly oilExpansion: number;
}

/**
 * The condition of a closed shock at the temperature of its closing, moved slowly.
 *
 * @param shock - from {@link closeShock}
 * @public
 */
export function asClosed(shock: ClosedShock): FillCondition {
  return { polytropicExponent: 1, temperature: shock.closing.temperature, oilExpansion: 1 };
}

/** Throws unless exponent, temperature and expansion are in range. */
export function requireFillCondition(condition: FillCondition): void {
  requireWithin(condition.polytropicExponent, 1, 1.4, 'polytropicExponent', '');
  requirePositive(condition.temperature, 'temperature', 'K');
  requirePositive(condition.oilExpansion, 'oilExpansion', '');
}

/** Condition of the gas in the terms of its law. */
function gasCondition(shock: ClosedShock, condition: FillCondition): GasCondition {
  return {
    closingPressure: shock.closing.ambientPressure,
    temperatureRatio: condition.temperature / shock.closing.temperature,
    polytropicExponent: condition.polytropicExponent,
  };
}

/** Volume that all gas rooms have given up [m³] at a pressure, given as logarithm of its ratio to the pressure outside. */
export function totalGivenUp(shock: ClosedShock, logPressure: number, condition: FillCondition): number {
  const gas = gasCondition(shock, condition);
  return shock.gasRooms.reduce((sum, room) => sum + volumeGivenUp(room, logPressure, gas), 0);
}

/** Volume asked of the gas since closing [m³]: shaft that went in and oil that grew. */
function volumeAsked(shock: ClosedShock, position: number, condition: FillCondition): number {
  return (
    shock.shaftArea * (position - shock.closing.position) + shock.oilVolume * (condition.oilExpansion - 1)
  );
}

/**
 * Position at which the oil fills the shock and the shaft stops [m]. It may lie beyond the stroke (then it never locks) or below 0.
 *
 * @param shock - from {@link closeShock}
 * @param condition - exponent, temperature [K], oil expansion; as closed where left out
 * @public
 */
export function lockPosition(shock: ClosedShock, condition: FillCondition = asClosed(shock)): number {
  const grown = shock.oilVolume * (condition.oilExpansion - 1);
  return shock.closing.position + (shock.gasVolume - grown) / shock.shaftArea;
}

/** Largest and smallest logarithm of a pressure searched, over the pressure outside. */
const widestSearch = 80;

/** Empty space [m³] where the oil has torn: what is asked back of gas that even at no pressure at all does not grow so far. */
function tornVolume(shock: ClosedShock, asked: number, condition: FillCondition): number {
  return Math.max(totalGivenUp(shock, Number.NEGATIVE_INFINITY, condition) - asked, 0);
}

/**
 * Natural logarithm of the pressure inside over the pressure outside; minus infinity where the oil has torn. Throws as
 * {@link pressureInside} does.
 */
export function logPressureInside(shock: ClosedShock, position: number, condition: FillCondition): number {
  requireWithin(position, 0, shock.chamber.stroke, 'position', 'm');
  requireFillCondition(condition);
  const { gasVolume } = shock;
  const asked = volumeAsked(shock, position, condition);
  if (gasVolume === 0 && asked === 0) return 0;
  // The whole gas volume itself is refused too: an ideal gas would need infinite pressure.
  if (asked >= gasVolume) throw new HydraulicLock(position, lockPosition(shock, condition));
  if (tornVolume(shock, asked, condition) > 0) return Number.NEGATIVE_INFINITY;
  // As a part of all gas, so that no product of two values falls below the smallest number.
  const excess = (logPressure: number): number =>
    (totalGivenUp(shock, logPressure, condition) - asked) / gasVolume;
  const start = excess(0);
  if (Math.abs(start) <= Number.EPSILON / 2) return 0;
  const direction = start < 0 ? 1 : -1;
  let reach = 1;
  while (reach < widestSearch && excess(direction * reach) * direction < 0) reach *= 2;
  const nearer = reach === 1 ? 0 : (direction * reach) / 2;
  return bracketedRoot(excess, nearer, direction * reach, 'pressure inside').root;
}

/**
 * Absolute pressure inside [Pa] with the shaft at rest at a position.
 *
 * Where the shaft is pulled out further than the gas can follow the oil tears, and the pressure is taken as 0: a shock that is sealed
 * with nothing, or one whose bladder holds back.
 *
 * @param shock - from {@link closeShock}
 * @param position - how far the shaft is pushed in [m], 0 to the stroke
 * @param condition - exponent, temperature [K], oil expansion; as closed where left out
 * @throws HydraulicLock where the oil fills the shock before this position; InputError for a value outside its range
 * @public
 */
export function pressureInside(
  shock: ClosedShock,
  position: number,
  condition: FillCondition = asClosed(shock),
): number {
  return shock.closing.ambientPressure * Math.exp(logPressureInside(shock, position, condition));
}

/**
 * Everything inside the chamber at a position.
 *
 * @public
 */
export interface ChamberContents {
  /** [m³]. */
  readonly oil: number;
  /** Gas of compensator and bubbles [m³], with the empty space where the oil has torn. */
  readonly gas: number;
  /** Shaft inside [m³]. */
  readonly shaft: number;
  /** Piston, nut, spacers, and solid part of the compensator [m³]. */
  readonly solid: number;
}

/**
 * What fills the chamber at a position; the parts add up to the chamber.
 *
 * @param shock - from {@link closeShock}
 * @param position - how far the shaft is pushed in [m], 0 to the stroke
 * @param condition - exponent, temperature [K], oil expansion; as closed where left out
 * @throws HydraulicLock where the oil fills the shock before this position; InputError for a value outside its range
 * @public
 */
export function chamberContents(
  shock: ClosedShock,
  position: number,
  condition: FillCondition = asClosed(shock),
): ChamberContents {
  const logPressure = logPressureInside(shock, position, condition);
  const gas = gasCondition(shock, condition);
  // Torn oil leaves the gas as large as it gets, and the rest empty.
  const torn =
    logPressure === Number.NEGATIVE_INFINITY
      ? tornVolume(shock, volumeAsked(shock, position, condition), condition)
      : 0;
  return {
    oil: shock.oilVolume * condition.oilExpansion,
    gas: torn + shock.gasRooms.reduce((sum, room) => sum + gasLeft(room, logPressure, gas), 0),
    shaft: shock.shaftArea * (shock.chamber.shaftInside + position),
    solid: shock.chamber.solidVolume + shock.compensatorSolid,
  };
}
