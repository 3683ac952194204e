import {
  refuse,
  requireFinite,
  requireList,
  requireNotNegative,
  requirePositive,
  requireRecord,
  requireWithin,
} from '../base/checks.js';
import { rootAbove } from '../numeric/root-finding.js';
import { type Gas, requireGas } from './gas.js';
import { type RestingRoom, roomPressure, volumeGivenUp } from './gas-room.js';
import { pressureOfTwo } from './two-rooms.js';

/**
 * What has changed since the shock was closed, apart from the position of the shaft.
 *
 * @public
 */
export interface GasCondition {
  /** Temperature of oil and gas [K], above 0; that of closing where left out. */
  readonly temperature?: number;
  /** Oil volume over the oil volume at closing, above 0: density at closing over density now; 1 where left out. */
  readonly oilExpansion?: number;
  /** Polytropic exponent of the movement, 1 (slow) to 1.4 (fast air); that of the gas where left out. */
  readonly polytropicExponent?: number;
}

/**
 * A gas at a temperature, ready to be squeezed.
 *
 * @public
 */
export interface GasState {
  readonly gas: Gas;
  /** Temperature [K]. */
  readonly temperature: number;
  /** Polytropic exponent of the movement. */
  readonly polytropicExponent: number;
  /** The rooms from which the movement starts. */
  readonly rooms: readonly RestingRoom[];
  /** Displaced volume, counted from full extension, at which the rooms stand so [m³]; it may be negative. */
  readonly restDisplacement: number;
  /** Displaced volume, counted from full extension, at which no gas is left and the shaft locks [m³]. */
  readonly capacity: number;
}

/**
 * The gas of a closed shock at another temperature: its pressure goes with the absolute temperature, and oil that has grown takes from it as the
 * shaft does.
 *
 * The body is taken as stiff and as not expanding; an aluminium body grows by 0.07 ml per litre and kelvin, which takes
 * 8 % off the growth of silicone.
 *
 * @param gas - checked by `requireGas`
 * @param condition - temperature [K], oil expansion, exponent
 * @throws InputError for a value outside its range
 * @example
 * ```ts
 * const gas = sealedGas({ volume: 1e-6, pressure: 1e5, polytropicExponent: 1 });
 * const warm = gasState(gas, { temperature: 1.1 * 293.15 });
 * gasPressure(warm, 0); // 1.1e5: pressure goes with the absolute temperature (Gay-Lussac)
 * ```
 * @public
 */
export function gasState(gas: Gas, condition: GasCondition = {}): GasState {
  requireGas(gas);
  requireRecord(condition, 'condition');
  const { closing } = gas;
  const {
    temperature = closing.temperature,
    oilExpansion = 1,
    polytropicExponent = gas.polytropicExponent,
  } = condition;
  requirePositive(temperature, 'temperature', 'K');
  requirePositive(oilExpansion, 'oilExpansion', '');
  requireWithin(polytropicExponent, 1, 1.4, 'polytropicExponent', '');
  return bindGas(gas, temperature, oilExpansion, polytropicExponent);
}

/** {@link gasState} of numbers that were checked before. */
export function bindGas(
  gas: Gas,
  temperature: number,
  oilExpansion: number,
  polytropicExponent: number,
): GasState {
  const { closing } = gas;
  const warmth = temperature / closing.temperature;
  const logWarmth = Math.log(warmth);
  const rooms: RestingRoom[] = [];
  let volumes = 0;
  for (const { volume, stiffness, vented } of gas.rooms) {
    // A room of nothing but dissolved air has no part in a movement.
    if (volume === 0) continue;
    volumes += volume;
    rooms.push({
      volume,
      logGasPressure: vented ? 0 : logWarmth,
      gasPressure: vented ? closing.pressure : closing.pressure * warmth,
      wallPressure: 0,
      stiffness,
      vented,
    });
  }
  // Where the rooms have the volume of closing: by as much further out as the oil has grown.
  const restDisplacement = closing.displacedVolume - closing.oilVolume * (oilExpansion - 1);
  return {
    gas,
    temperature,
    polytropicExponent,
    rooms,
    restDisplacement,
    capacity: restDisplacement + volumes,
  };
}

/** Widest search, as logarithm. */
const widestSearch = 80;

/** Volume that all rooms give up [m³] at a pressure, given as logarithm of its ratio to the pressure at closing. */
export function totalGivenUp({ gas, rooms, polytropicExponent }: GasState, logPressure: number): number {
  let sum = 0;
  for (const room of rooms) sum += volumeGivenUp(room, logPressure, gas.closing.pressure, polytropicExponent);
  return sum;
}

/** Empty space [m³] beside the gas at a displaced volume: what even gas at no pressure at all does not fill. */
export function emptySpace(state: GasState, displacedVolume: number): number {
  const asked = displacedVolume - state.restDisplacement;
  return Math.max(totalGivenUp(state, Number.NEGATIVE_INFINITY) - asked, 0);
}

/**
 * Natural logarithm of the pressure inside over the pressure at closing, which keeps all digits near that; minus infinity where the shaft is
 * pulled out further than the gas can follow.
 *
 * @throws InputError where no gas is left
 */
export function logGasPressure(state: GasState, displacedVolume: number): number {
  const asked = displacedVolume - state.restDisplacement;
  const volumes = state.capacity - state.restDisplacement;
  if (volumes === 0 && asked === 0) return 0;
  requireRoom(state, displacedVolume);
  if (emptySpace(state, displacedVolume) > 0) return Number.NEGATIVE_INFINITY;
  // As a part of all gas, so that no product of two values falls below the smallest number.
  const excess = (logPressure: number): number => (totalGivenUp(state, logPressure) - asked) / volumes;
  return rootFromZero(excess, 'pressure inside');
}

/** Root of a rising function of a logarithm, looked for outward from 0. */
export function rootFromZero(excess: (logarithm: number) => number, what: string): number {
  const start = excess(0);
  if (Math.abs(start) <= Number.EPSILON / 2) return 0;
  const direction = start < 0 ? 1 : -1;
  const rising = (reach: number): number => direction * excess(direction * reach);
  return direction * rootAbove(rising, 1, widestSearch, what).root;
}

/** Throws where no gas is left. The whole gas itself is refused too: an ideal gas would need infinite pressure. */
function requireRoom({ capacity }: GasState, displacedVolume: number): void {
  if (displacedVolume < capacity) return;
  refuse(
    displacedVolume,
    'displacedVolume',
    'm³',
    `below ${capacity}, where no gas is left and the shaft locks, in`,
  );
}

/**
 * Absolute pressure inside [Pa] at a displaced volume.
 *
 * A sealed room follows `p = p₀ τ (V/(V − w))^n + k w`, a vented one `p = p₀ + k w` until it is full; rooms side by side share one
 * pressure. `τ` is the absolute temperature over that at closing, `k` the stiffness of the walls. Where the shaft is pulled out further than the
 * gas can follow, the pressure is 0 and a space stays empty.
 *
 * @param state - from {@link gasState}
 * @param displacedVolume - volume taken from the gas, counted from full extension [m³]: shaft area times position, plus any cavity
 * @throws InputError where no gas is left: the shaft locks
 * @see polytropic change of an ideal gas: any thermodynamics textbook, for example Çengel & Boles, Thermodynamics, sec. 4-1 (from memory)
 * @example
 * ```ts
 * const gas = sealedGas({ volume: 1e-6, pressure: 1e5, polytropicExponent: 1 });
 * gasPressure(gasState(gas), 5e-7); // 2e5: twice the pressure in half the volume (Boyle)
 * ```
 * @public
 */
export function gasPressure(state: GasState, displacedVolume: number): number {
  requireState(state);
  requireFinite(displacedVolume, 'displacedVolume', 'm³');
  return pressureOfGas(state, displacedVolume);
}

/** {@link gasPressure} of what was checked before. */
export function pressureOfGas(state: GasState, displacedVolume: number): number {
  // By place: taking a list apart would cost as much as the pressure.
  const room = state.rooms[0];
  const second = state.rooms[1];
  if (room === undefined || state.rooms.length > 2) return searchedPressure(state, displacedVolume);
  requireRoom(state, displacedVolume);
  if (second !== undefined) {
    const taken = displacedVolume - state.restDisplacement;
    const ofTwo = pressureOfTwo([room, second], taken, state.polytropicExponent);
    return ofTwo ?? searchedPressure(state, displacedVolume);
  }
  const pressure = roomPressure(room, displacedVolume - state.restDisplacement, state.polytropicExponent);
  // Walls that hold back more than the gas pushes leave a space empty.
  return Math.max(pressure, 0);
}

function searchedPressure(state: GasState, displacedVolume: number): number {
  return state.gas.closing.pressure * Math.exp(logGasPressure(state, displacedVolume));
}

/**
 * Displaced volume at which the gas has a pressure, counted from full extension [m³]: the inverse of {@link gasPressure}.
 *
 * @param state - from {@link gasState}, with some gas in it
 * @param pressure - absolute [Pa], above 0
 * @returns the volume, {@link GasState.capacity} where a vented room is full before it reaches the pressure
 * @throws InputError for a pressure that is not above 0
 * @example
 * ```ts
 * const gas = sealedGas({ volume: 1e-6, pressure: 1e5, polytropicExponent: 1 });
 * displacedVolumeAt(gasState(gas), 2e5); // 5e-7: twice the pressure in half the volume (Boyle)
 * ```
 * @public
 */
export function displacedVolumeAt(state: GasState, pressure: number): number {
  requireState(state);
  requireNotNegative(pressure, 'pressure', 'Pa');
  requirePositive(pressure, 'pressure', 'Pa');
  return state.restDisplacement + totalGivenUp(state, Math.log(pressure / state.gas.closing.pressure));
}

function requireState(state: GasState): void {
  requireRecord(state, 'state');
  requireList(state.rooms, 'state.rooms');
}
