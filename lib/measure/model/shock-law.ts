import { call, requireShape } from '../../base/shape.js';
import type { ShockState } from './shock-state.js';

/**
 * A shock at one temperature of its oil.
 *
 * @public
 */
export interface WarmShock {
  /** Kinematic viscosity of the oil [m²/s]. */
  readonly kinematicViscosity: number;
  /** Density of the oil [kg/m³]. */
  readonly density: number;
  /** Damping force [N] at a shaft speed [m/s], compression positive, and a position [m]: odd in the speed, or nearly. */
  readonly dampingForce: (speed: number, position: number) => number;
  /** Push of the gas on the shaft [N] at a position [m], moved slowly; positive pushes it out. */
  readonly gasForce: (position: number) => number;
  /**
   * Sizes of the shaft speeds [m/s] at sizes of damping forces [N], for a law that is odd in the speed, does not depend on the position, and has a shorter way to
   * them than asking for many forces; left out by all others.
   */
  readonly speedsAt?: (forces: Float64Array) => Float64Array;
}

/**
 * One shock, as readings see it in steady movement.
 *
 * @public
 */
export interface SteadyShock {
  /** Friction of the seals while moving [N], against the movement. */
  readonly friction: number;
  /** The shock at an oil temperature [K]. */
  readonly at: (temperature: number) => WarmShock;
}

/**
 * The law that makes a shock of a state. All that is fitted goes through it, so that any law can be fitted.
 *
 * @public
 */
export type ShockLaw = (state: ShockState) => SteadyShock;

/** Throws unless a law makes a shock of a state. */
export function requireLaw(law: ShockLaw, state: ShockState, field: string): void {
  const made = `${field}(known)`;
  const shock = law(state);
  requireShape(shock, { friction: 'N', at: call }, made);
  const warm = { kinematicViscosity: 'm²/s', density: 'kg/m³', dampingForce: call, gasForce: call };
  requireShape(shock.at(298.15), warm, `${made}.at(298.15)`);
}

/** A shock that computes each temperature once. */
export function rememberTemperatures(shock: SteadyShock): SteadyShock {
  const seen = new Map<number, WarmShock>();
  const at = (temperature: number): WarmShock => {
    const known = seen.get(temperature);
    if (known !== undefined) return known;
    const warm = shock.at(temperature);
    seen.set(temperature, warm);
    return warm;
  };
  return { ...shock, at };
}
