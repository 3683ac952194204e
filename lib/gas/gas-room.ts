import { bracketedRoot } from '../numeric/root-finding.js';

/**
 * A volume of gas that gives way to the oil, as it is when the cap is closed, at the pressure outside.
 *
 * @public
 */
export interface GasRoom {
  /** Volume [m³], above 0. */
  readonly volume: number;
  /** Pressure that rubber or foam walls add per volume taken [Pa/m³], 0 or more. */
  readonly stiffness: number;
  /** True where a hole in the cap keeps the gas at the pressure outside. */
  readonly vented: boolean;
}

/** How a gas room is squeezed. */
export interface GasCondition {
  /** Absolute pressure when the cap was closed [Pa], above 0. */
  readonly closingPressure: number;
  /** Gas temperature over the temperature at closing, both absolute; above 0. */
  readonly temperatureRatio: number;
  /** Polytropic exponent, 1 (slow) to 1.4 (fast). */
  readonly polytropicExponent: number;
}

/** Walls softer than this part of the gas itself do nothing that its last digit could show. */
const softestWalls = 1e-12;

/**
 * Volume that a gas room has given up [m³] at an oil pressure; negative where it has grown. It rises with the pressure.
 *
 * A sealed room follows `p = p₀ τ (V/(V − w))^n + k w`, a vented one `p = p₀ + k w` until it is full, with `τ` the ratio of
 * temperatures, `k` the stiffness. The pressure is given as `ln(p/p₀)`, which keeps all digits near `p₀`.
 *
 * @param logPressure - natural logarithm of the oil pressure over the pressure at closing; minus infinity at no pressure
 */
export function volumeGivenUp(room: GasRoom, logPressure: number, condition: GasCondition): number {
  const { volume, stiffness, vented } = room;
  const { closingPressure, temperatureRatio, polytropicExponent } = condition;
  if (vented) return Math.min((closingPressure * Math.expm1(logPressure)) / stiffness, volume);
  const logExcess = logPressure - Math.log(temperatureRatio);
  const walls = (stiffness * volume) / (closingPressure * temperatureRatio);
  const growth = -logExcess / polytropicExponent;
  return (
    -volume *
    Math.expm1(walls < softestWalls ? growth : heldGrowth(growth, walls, logExcess, polytropicExponent))
  );
}

/**
 * Logarithm of the volume of a gas held by walls, over its volume at closing.
 *
 * With `u` that logarithm, the law of the sealed room is `expm1(−n u) − K expm1(u) = expm1(ln p/(p₀τ))`.
 */
function heldGrowth(free: number, walls: number, logExcess: number, exponent: number): number {
  const excess = (u: number): number =>
    Math.expm1(-exponent * u) - walls * Math.expm1(u) - Math.expm1(logExcess);
  // The walls hold the gas nearer to its volume at closing than it would be alone; alone they would give way further.
  const wallsAlone = -Math.expm1(logExcess) / walls;
  const [low, high] =
    free > 0
      ? [0, Math.min(free, Math.log1p(wallsAlone))]
      : [wallsAlone > -1 ? Math.max(free, Math.log1p(wallsAlone)) : free, 0];
  if (excess(low) <= 0) return low;
  if (excess(high) >= 0) return high;
  return bracketedRoot(excess, low, high, 'gas behind a wall').root;
}

/** Volume of gas left in the room [m³] after it gave up a volume. */
export function gasLeft(room: GasRoom, logPressure: number, condition: GasCondition): number {
  return room.volume - volumeGivenUp(room, logPressure, condition);
}
