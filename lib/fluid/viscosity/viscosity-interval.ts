/**
 * A viscosity known only within limits.
 *
 * @public
 */
export interface ViscosityInterval {
  /** Lowest kinematic viscosity [m²/s]. */
  readonly low: number;
  /** Typical kinematic viscosity [m²/s]. */
  readonly typical: number;
  /** Highest kinematic viscosity [m²/s]. */
  readonly high: number;
}
