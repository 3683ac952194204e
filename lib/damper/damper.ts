import type { Piston } from '../flow/piston.js';

/**
 * The gas that makes room for the shaft, on the blind side of the piston.
 *
 * @public
 */
export interface GasSide {
  /** Gas volume at full extension [m³], above 0. */
  readonly volume: number;
  /** Absolute gas pressure at full extension [Pa], above 0. */
  readonly pressure: number;
  /** Polytropic exponent, 1 (slow, isothermal) to 1.4 (fast, adiabatic air). */
  readonly polytropicExponent: number;
  /** Absolute pressure of the air outside [Pa], above 0. */
  readonly ambientPressure: number;
}

/**
 * Friction of the shaft seals, an input: measure it, since no law predicts it for small rings.
 *
 * @public
 */
export interface SealFriction {
  /** Friction while moving [N], 0 or more. */
  readonly kineticForce: number;
  /** Breakaway friction after rest [N], at least the moving friction. */
  readonly breakawayForce: number;
}

/**
 * One shock absorber without its spring.
 *
 * @public
 */
export interface Damper {
  /** Bore of the body [m], above the piston diameter. */
  readonly bore: number;
  /** Shaft diameter [m], below the piston diameter. */
  readonly shaftDiameter: number;
  /** Stroke from full extension to the bump stop [m], above 0. */
  readonly stroke: number;
  readonly piston: Piston;
  readonly gas: GasSide;
  readonly seal: SealFriction;
}
