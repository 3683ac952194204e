import { requirePositive } from '../../base/checks.js';
import { requireShearThinning, type ShearThinning } from '../shear/thinning-viscosity.js';

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
  /**
   * Estimated longest relaxation time of the polymer [s], above 0, where the oil has one. It changes no
   * flow; it only decides when a result warns of shear thinning.
   */
  readonly relaxationTime?: number;
  /** How the oil thins, where its owner has measured it; Newtonian by default. */
  readonly shearThinning?: ShearThinning;
}

/** Throws unless viscosity and density are above 0. */
export function requireFluidState(fluid: FluidState): void {
  requirePositive(fluid.kinematicViscosity, 'fluid.kinematicViscosity', 'm²/s');
  requirePositive(fluid.density, 'fluid.density', 'kg/m³');
  if (fluid.shearThinning !== undefined) requireShearThinning(fluid.shearThinning, 'fluid.shearThinning');
}
