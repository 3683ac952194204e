import { requirePositive, requireWithin } from '../base/checks.js';
import { InputError } from '../base/input-error.js';

/**
 * Where the gas is: behind the blind side of the piston (bladder, or air above a piston that faces up), behind its shaft side, or
 * mixed through the oil of both.
 *
 * @public
 */
export type GasLayout = 'blind-side' | 'shaft-side' | 'emulsion';

/** Part of the shaft that the gas of the blind side takes up; it decides on which area oil and pressure work. */
export function blindShare(gas: GasSide): number {
  // Mixed through, the gas is taken at half stroke, with like amounts on both sides.
  return { 'blind-side': 1, 'shaft-side': 0, emulsion: 0.5 }[gas.layout ?? 'blind-side'];
}

/**
 * The gas that makes room for the shaft.
 *
 * @public
 */
export interface GasSide {
  /** Gas volume at full extension [m³], above 0. */
  readonly volume: number;
  /** Absolute gas pressure at full extension [Pa], above 0. */
  readonly pressure: number;
  /** Polytropic exponent, 1 (slow, isothermal) to 1.4 (fast, adiabatic air). */
  readonly polytropicExponent: number;
  /** Absolute pressure of the air outside [Pa], above 0. */
  readonly ambientPressure: number;
  /** Where it is; `blind-side` by default. */
  readonly layout?: GasLayout;
  /**
   * Absolute pressure at which air comes out of the oil and it tears [Pa], 0 (the default: the most any oil holds) to 20 000. Oil left
   * standing in air is likely to be near the upper end (common practice, no source).
   */
  readonly airReleasePressure?: number;
}

/** Highest air-release pressure accepted [Pa]. */
const highestAirReleasePressure = 20_000;

/** Throws unless volume, pressures and exponent are in their ranges. */
export function requireGasSide(gas: GasSide): void {
  requirePositive(gas.volume, 'gas.volume', 'm³');
  requirePositive(gas.pressure, 'gas.pressure', 'Pa');
  requireWithin(gas.polytropicExponent, 1, 1.4, 'gas.polytropicExponent', '');
  requirePositive(gas.ambientPressure, 'gas.ambientPressure', 'Pa');
  const release = gas.airReleasePressure ?? 0;
  requireWithin(release, 0, highestAirReleasePressure, 'gas.airReleasePressure', 'Pa');
  if (release >= gas.pressure) {
    throw new InputError({
      field: 'gas.airReleasePressure',
      value: release,
      unit: 'Pa',
      accepted: `below the gas pressure of ${gas.pressure}`,
    });
  }
}

/**
 * Absolute pressure of the gas [Pa] after the shaft has taken a part of its room, `p V^n = const`.
 *
 * @param gas - volume [m³] and pressures [Pa] above 0, exponent 1 to 1.4
 * @param displacedVolume - volume that the shaft has pushed in [m³], 0 to less than the gas volume
 * @throws InputError where the shaft takes all the room: the oil locks
 * @see polytropic change of an ideal gas: any thermodynamics textbook, for example Çengel & Boles, Thermodynamics, sec. 4-1
 * (from memory)
 * @public
 */
export function gasPressure(gas: GasSide, displacedVolume: number): number {
  requireGasSide(gas);
  return compressedGasPressure(gas, displacedVolume);
}

/** {@link gasPressure} of a gas that was checked before. */
export function compressedGasPressure(gas: GasSide, displacedVolume: number): number {
  if (!(displacedVolume >= 0 && displacedVolume < gas.volume)) {
    throw new InputError({
      field: 'displacedVolume',
      value: displacedVolume,
      unit: 'm³',
      accepted: `0 or more and below the gas volume (where the oil locks) of ${gas.volume}`,
    });
  }
  const ratio = gas.volume / (gas.volume - displacedVolume);
  // A power takes three times as long.
  return gas.pressure * Math.exp(gas.polytropicExponent * Math.log(ratio));
}
