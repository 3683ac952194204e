import { requirePositive, requireRecord, requireWithin } from '../../base/checks.js';
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
  /** Temperature [K], above 0, where it is known: that of the gas in the same shock too. */
  readonly temperature?: number;
  /**
   * Estimated longest relaxation time of the polymer [s], above 0, where the oil has one. It changes no
   * flow; it only decides when a result warns of shear thinning.
   */
  readonly relaxationTime?: number;
  /** How the oil thins, where its owner has measured it; Newtonian by default. */
  readonly shearThinning?: ShearThinning;
}

/** Widest values accepted of a liquid [m²/s], [kg/m³]. */
const thickest = 1;
const lightest = 300;
const heaviest = 3000;

/** Throws unless viscosity and density are above 0. */
export function requireFluidState(fluid: FluidState): void {
  requireRecord(fluid, 'fluid');
  requirePositive(fluid.kinematicViscosity, 'fluid.kinematicViscosity', 'm²/s');
  // Beyond these a value was given in another unit: water has 1e-6 m²/s, 100 000 cSt is 0.1.
  requireWithin(fluid.kinematicViscosity, 0, thickest, 'fluid.kinematicViscosity', 'm²/s');
  requireWithin(fluid.density, lightest, heaviest, 'fluid.density', 'kg/m³');
  if (fluid.temperature !== undefined) requirePositive(fluid.temperature, 'fluid.temperature', 'K');
  if (fluid.shearThinning !== undefined) requireShearThinning(fluid.shearThinning, 'fluid.shearThinning');
}
