import type { UnsteadyFlowError } from '../../flow/hole/apparent-mass.js';

/**
 * What passes a piston at a pressure drop.
 *
 * @public
 */
export interface Passage {
  /** Flow through holes, valves and gap [m³/s], with the sign of the pressure drop. */
  flow: number;
  /** What the jets take back of the pressure force on the piston [N], with the sign of the flow. */
  recoil: number;
}

/**
 * The gas that gives way to shaft and cavity.
 *
 * @public
 */
export interface GivingGas {
  /**
   * Absolute pressure [Pa] once it has given up a volume [m³]; rising, also for a negative volume. Asked below `capacity` only.
   */
  readonly pressure: (volume: number) => number;
  /** Volume that it can give up at most [m³]: beyond it the oil locks. */
  readonly capacity: number;
}

/**
 * Oil with air in it, `v(p) = (1 − a) exp(−(p − p₀)/K) + a (p₀/p)^(1/n)`.
 *
 * @public
 */
export interface MovingOil {
  /** Volume of oil, with its free air, at the reference pressure [m³], above 0. */
  readonly volume: number;
  /** Absolute pressure at which volumes are counted: that of the shock at full extension [Pa], above 0. */
  readonly referencePressure: number;
  /** Bulk modulus of the oil without air [Pa], above 0. */
  readonly bulkModulus: number;
  /** Part of the volume that is free air at the reference pressure, 0 to 0.999. */
  readonly airFraction: number;
  /** Polytropic exponent of that air, 1 to 1.4. */
  readonly airExponent: number;
}

/**
 * All that motion needs to know of one shock. Signs: compression is positive for travel, speed, pressure drop and flow (blind side to
 * shaft side); a positive force pushes the shaft out.
 *
 * @public
 */
export interface MovingShock {
  /** Area of the piston out to the middle of its gap [m²]. */
  readonly pistonArea: number;
  /** Cross-section of the shaft [m²], below the piston area. */
  readonly shaftArea: number;
  /** From full extension to the end of the travel [m], above 0. */
  readonly stroke: number;
  /** Writes what passes the piston at a pressure drop [Pa]. */
  readonly passage: (pressureDrop: number, passage: Passage) => void;
  /** Viscous drag of the rim [N] at a shaft speed [m/s], with its sign. */
  readonly rimDrag: (speed: number) => number;
  /** Friction of the seals [N] at a shaft speed [m/s], with its sign. */
  readonly sealForce: (speed: number) => number;
  readonly oil: MovingOil;
  /** Where the gas is: behind the piston or in front of it; `mixed` through the oil as its air, without a room of its own. */
  readonly layout: 'blind-side' | 'shaft-side' | 'mixed';
  /** The gas; of no use where mixed. */
  readonly gas: GivingGas;
  /** Room at full extension of the chamber that has no gas [m³]: the shaft side, but with the gas there the blind side. Above 0. */
  readonly farVolume: number;
  /** Absolute pressure outside [Pa], above 0. */
  readonly ambientPressure: number;
  /** Absolute pressure at which a cavity opens [Pa], 0 or more. */
  readonly releasePressure: number;
  /** Inertance of the oil in and about the holes, `ρ ℓ/A` [Pa·s²/m³]; no equation has it in, each result says what it would have added. */
  readonly inertance: number;
  /** How far laws for steady flow are off at a frequency [Hz] above 0, in the hole that lags most; for a warning. */
  readonly unsteadyFlow: (frequency: number) => UnsteadyFlowError;
  /** Largest Reynolds number of the holes at a pressure drop [Pa], for a warning. */
  readonly holeReynoldsNumber: (pressureDrop: number) => number;
}
