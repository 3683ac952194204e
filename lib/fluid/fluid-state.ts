/**
 * What the flow laws need to know of an oil at one temperature.
 *
 * @public
 */
export interface FluidState {
  /** Kinematic viscosity [m²/s], above 0. */
  readonly kinematicViscosity: number;
  /** Density [kg/m³], above 0. */
  readonly density: number;
}
