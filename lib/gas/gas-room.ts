import { bracketedRoot } from '../numeric/root-finding.js';

/**
 * A volume of gas that gives way to the oil, as it is when the shock is closed.
 *
 * @public
 */
export interface GasRoom {
  /** Volume [m³], 0 or more; above 0 unless air is dissolved beside it. */
  readonly volume: number;
  /** Pressure that rubber or foam walls add per volume taken [Pa/m³], 0 or more. */
  readonly stiffness: number;
  /** True where a hole in the cap keeps the gas at the pressure outside; its stiffness is then above 0. */
  readonly vented: boolean;
  /**
   * Air that the oil beside it holds dissolved [m³ at the pressure of closing], 0 or more; 0 where left out. It takes hours to come and go, and so has no part in a
   * stroke, only in how a shock stands.
   */
  readonly dissolvedAir?: number;
}

/**
 * A gas room at rest, from where a stroke squeezes it.
 *
 * @public
 */
export interface RestingRoom {
  /** Volume of gas [m³], above 0. */
  readonly volume: number;
  /** Natural logarithm of the pressure of the gas itself over the pressure at closing. */
  readonly logGasPressure: number;
  /** Pressure of the gas itself [Pa]. */
  readonly gasPressure: number;
  /** Pressure that the walls add at rest [Pa], either sign. */
  readonly wallPressure: number;
  /** [Pa/m³] */
  readonly stiffness: number;
  readonly vented: boolean;
}

/** Pressure of the oil beside a room [Pa] that has given up a volume [m³] below its own, by `p = p_g (V/(V − u))^n + k (w + u)`. */
export function roomPressure(room: RestingRoom, takenVolume: number, exponent: number): number {
  const { volume, gasPressure, wallPressure, stiffness, vented } = room;
  const walls = wallPressure + stiffness * takenVolume;
  if (vented) return gasPressure + walls;
  // A power takes three times as long.
  return gasPressure * Math.exp(exponent * Math.log(volume / (volume - takenVolume))) + walls;
}

/** Walls softer than this part of the gas itself do nothing that its last digit could show. */
const softestWalls = 1e-12;

/**
 * Volume that a room gives up [m³] at an oil pressure, the inverse of {@link roomPressure}; negative where it grows. It rises with the pressure.
 *
 * @param logPressure - natural logarithm of the oil pressure over the pressure at closing, which keeps all digits near that; minus infinity at no pressure
 * @param closingPressure - [Pa]
 */
export function volumeGivenUp(
  room: RestingRoom,
  logPressure: number,
  closingPressure: number,
  exponent: number,
): number {
  const { volume, logGasPressure, gasPressure, wallPressure, stiffness, vented } = room;
  if (vented) {
    const excess = closingPressure * Math.expm1(logPressure) + (closingPressure - gasPressure) - wallPressure;
    return Math.min(excess / stiffness, volume);
  }
  const logExcess = logPressure - logGasPressure;
  const walls = (stiffness * volume) / gasPressure;
  if (walls < softestWalls) return -volume * Math.expm1(-logExcess / exponent);
  return (
    -volume * Math.expm1(heldGrowth(walls, Math.expm1(logExcess) - wallPressure / gasPressure, exponent))
  );
}

/** Logarithm of the volume of a gas held by walls, over its volume at rest: `u` of `expm1(−n u) − K expm1(u) = E`. */
function heldGrowth(walls: number, relativeExcess: number, exponent: number): number {
  const excess = (u: number): number => Math.expm1(-exponent * u) - walls * Math.expm1(u) - relativeExcess;
  const free = relativeExcess > -1 ? -Math.log1p(relativeExcess) / exponent : Number.POSITIVE_INFINITY;
  // The walls hold the gas nearer to its volume at rest than it would be alone; alone they would give way further.
  const wallsAlone = -relativeExcess / walls;
  const [low, high] =
    free > 0
      ? [0, Math.min(free, Math.log1p(wallsAlone))]
      : [wallsAlone > -1 ? Math.max(free, Math.log1p(wallsAlone)) : free, 0];
  if (excess(low) <= 0) return low;
  if (excess(high) >= 0) return high;
  return bracketedRoot(excess, low, high, 'gas behind a wall').root;
}
