/**
 * A measured or printed viscosity.
 *
 * @public
 */
export interface ViscosityPoint {
  /** Temperature [K], above 0. */
  readonly temperature: number;
  /** Kinematic viscosity [m²/s], above 0. */
  readonly kinematicViscosity: number;
}
