import {
  refuse,
  requireEach,
  requireKind,
  requireNotNegative,
  requirePositive,
  requireRecord,
  requireWithin,
  requireWord,
} from '../base/checks.js';
import { standardAtmosphere, zeroCelsius } from '../base/constants.js';
import type { GasRoom } from './gas-room.js';
import { pocketExponent } from './polytropic-exponent.js';

/**
 * Where the gas is: behind the blind side of the piston (bladder, or air above a piston that faces up), behind its shaft side, or
 * mixed through the oil of both.
 *
 * @public
 */
export type GasLayout = 'blind-side' | 'shaft-side' | 'emulsion';

/**
 * How things stood when the shock was closed.
 *
 * @public
 */
export interface GasClosing {
  /** Volume of shaft that was inside beyond that of full extension [m³], 0 or more: shaft area times how far it was pushed in. */
  readonly displacedVolume: number;
  /** Absolute pressure inside [Pa], above 0; that of the air outside in a shock closed by hand. */
  readonly pressure: number;
  /** Temperature of oil and gas [K], above 0. */
  readonly temperature: number;
  /** Oil inside [m³], 0 or more, which grows as it warms; 0 leaves that out. */
  readonly oilVolume: number;
  /** Density of that oil [kg/m³], above 0, where its growth shall follow from the density of the oil now. */
  readonly oilDensity?: number;
}

/**
 * The gas of a closed shock: everything that makes room for the shaft. Force, cavitation, filling, bleeding, static push and heat all ask
 * this one object.
 *
 * @public
 */
export interface Gas {
  readonly layout: GasLayout;
  /** What gives way, as it was at closing; more than one where bubbles float beside a bladder. Empty where nothing does. */
  readonly rooms: readonly GasRoom[];
  readonly closing: GasClosing;
  /** Absolute pressure of the air outside [Pa], above 0. */
  readonly ambientPressure: number;
  /** Polytropic exponent of a stroke, 1 (slow, isothermal) to 1.4 (fast, adiabatic air). */
  readonly polytropicExponent: number;
  /**
   * Absolute pressure at which air comes out of the oil and a cavity opens [Pa], 0 (the most any oil holds) to 20 000. Oil left
   * standing in air is likely to be near the upper end (common practice, no source).
   */
  readonly airReleasePressure: number;
}

/** Highest air-release pressure accepted [Pa]. */
const highestAirReleasePressure = 20_000;

/** Throws unless volumes, pressures, temperature and exponent are in their ranges. */
export function requireGas(gas: Gas): void {
  requireRecord(gas, 'gas');
  const { rooms, closing, ambientPressure, polytropicExponent, airReleasePressure } = gas;
  requireWord(gas.layout, ['blind-side', 'shaft-side', 'emulsion'], 'gas.layout');
  requireRecord(closing, 'gas.closing');
  requireEach(rooms, 'gas.rooms', requireRoom);
  requireNotNegative(closing.displacedVolume, 'gas.closing.displacedVolume', 'm³');
  requirePositive(closing.pressure, 'gas.closing.pressure', 'Pa');
  requirePositive(closing.temperature, 'gas.closing.temperature', 'K');
  requireNotNegative(closing.oilVolume, 'gas.closing.oilVolume', 'm³');
  if (closing.oilDensity !== undefined)
    requirePositive(closing.oilDensity, 'gas.closing.oilDensity', 'kg/m³');
  requirePositive(ambientPressure, 'gas.ambientPressure', 'Pa');
  requireWithin(polytropicExponent, 1, 1.4, 'gas.polytropicExponent', '');
  requireWithin(airReleasePressure, 0, highestAirReleasePressure, 'gas.airReleasePressure', 'Pa');
  if (airReleasePressure >= closing.pressure) {
    refuse(
      airReleasePressure,
      'gas.airReleasePressure',
      'Pa',
      `below the pressure of ${closing.pressure} at closing`,
    );
  }
}

function requireRoom(room: GasRoom, field: string): void {
  requireRecord(room, field);
  const { volume, stiffness, vented, dissolvedAir = 0 } = room;
  requireKind(vented, 'boolean', `${field}.vented`);
  requireNotNegative(dissolvedAir, `${field}.dissolvedAir`, 'm³');
  if (dissolvedAir > 0) requireNotNegative(volume, `${field}.volume`, 'm³');
  else requirePositive(volume, `${field}.volume`, 'm³');
  requireNotNegative(stiffness, `${field}.stiffness`, 'Pa/m³');
  // A slack bladder under a vented cap would leave the pressure undefined once it is full.
  if (vented) requirePositive(stiffness, `${field}.stiffness`, 'Pa/m³');
}

/**
 * A sealed pocket of gas, stated with the shaft fully out: the gas of a shock of which no more is known.
 *
 * @param pocket - gas volume with the shaft fully out [m³], above 0; absolute pressure there [Pa], standard atmosphere where left out; polytropic
 * exponent of a stroke, 1 to 1.4, by default that of a round pocket of this size (see {@link pocketExponent}); pressure outside [Pa], standard
 * atmosphere where left out; layout, blind side where left out; air-release pressure [Pa], 0 where left out; temperature [K] at
 * which it has that pressure, 20 °C where left out
 * @throws InputError for a value outside its range
 * @example
 * ```ts
 * const gas = sealedGas({ volume: 1e-6, polytropicExponent: 1.4 });
 * gasPressure(gasState(gas), 5e-7); // 267398: one atmosphere times 2^1.4, by hand
 * ```
 * @public
 */
export function sealedGas(pocket: {
  readonly volume: number;
  readonly pressure?: number;
  readonly polytropicExponent?: number;
  readonly ambientPressure?: number;
  readonly layout?: GasLayout;
  readonly airReleasePressure?: number;
  readonly temperature?: number;
}): Gas {
  requireRecord(pocket, 'pocket');
  const {
    volume,
    pressure = standardAtmosphere,
    ambientPressure = standardAtmosphere,
    layout = 'blind-side',
    airReleasePressure = 0,
    temperature = zeroCelsius + 20,
  } = pocket;
  requirePositive(volume, 'volume', 'm³');
  const { polytropicExponent = pocketExponent(volume) } = pocket;
  const gas: Gas = {
    layout,
    rooms: [{ volume, stiffness: 0, vented: false }],
    closing: {
      displacedVolume: 0,
      pressure,
      temperature,
      oilVolume: 0,
    },
    ambientPressure,
    polytropicExponent,
    airReleasePressure,
  };
  requireGas(gas);
  return gas;
}

/** Part of the shaft that the gas of the blind side makes room for; it decides on which area oil and pressure work. */
export function blindShare(layout: GasLayout): number {
  // Mixed through, the gas is taken at half stroke, with like amounts on both sides.
  return { 'blind-side': 1, 'shaft-side': 0, emulsion: 0.5 }[layout];
}
