import { requireFinite, requireRecord, requireWithin } from '../../base/checks.js';
import type { Shape } from '../../base/shape.js';
/**
 * Friction that sticks: bristles that bend before they slide (LuGre). Other than the smooth law of the seals it holds a shaft at rest.
 *
 * @public
 */
export interface BristleFriction {
  /** Friction while sliding and at breakaway [N], above 0; the second at least the first. */
  readonly kineticForce: number;
  readonly breakawayForce: number;
  /** Speed over which breakaway falls to sliding friction [m/s], above 0. */
  readonly stribeckSpeed: number;
  /** Stiffness of the bristles [N/m], above 0: sliding friction over the travel before sliding, 10 to 50 µm for a rubber ring. */
  readonly stiffness: number;
  /** Their damping [N·s/m], 0 or more. */
  readonly damping: number;
  /** Friction that grows with the speed [N·s/m], 0 or more. */
  readonly viscous: number;
}

/** Form of {@link BristleFriction}. */
export const bristleFrictionShape: Shape = {
  kineticForce: 'N',
  breakawayForce: '',
  stribeckSpeed: 'm/s',
  stiffness: 'N/m',
  damping: 'N·s/m',
  viscous: 'N·s/m',
};

/** Friction at which the bristles slide at a speed [N]. */
function sliding({ kineticForce, breakawayForce, stribeckSpeed }: BristleFriction, speed: number): number {
  return kineticForce + (breakawayForce - kineticForce) * Math.exp(-((speed / stribeckSpeed) ** 2));
}

/**
 * Rate at which the bristles bend [m/s], `v − σ₀ |v| z / g(v)`.
 *
 * @param friction - forces, stiffness and speed above 0
 * @param bend - of the bristles [m]
 * @param speed - of sliding [m/s]
 * @see Canudas de Wit, Olsson, Åström & Lischinsky, IEEE Trans. Autom. Control 40 (1995) 419 (form from memory)
 * @public
 */
export function bristleRate(friction: BristleFriction, bend: number, speed: number): number {
  requireBristles(friction);
  requireFinite(bend, 'bend', 'm');
  requireFinite(speed, 'speed', 'm/s');
  return rateOfBristles(friction, bend, speed);
}

/** {@link bristleRate} of what was checked before. */
export function rateOfBristles(friction: BristleFriction, bend: number, speed: number): number {
  return speed - (friction.stiffness * Math.abs(speed) * bend) / sliding(friction, speed);
}

/**
 * Friction of bent bristles [N], `σ₀ z + σ₁ z' + σ₂ v`.
 *
 * @param friction - forces, stiffness and speed above 0
 * @param bend - of the bristles [m]
 * @param speed - of sliding [m/s]
 * @public
 */
export function bristleForce(friction: BristleFriction, bend: number, speed: number): number {
  requireBristles(friction);
  requireFinite(bend, 'bend', 'm');
  requireFinite(speed, 'speed', 'm/s');
  return forceOfBristles(friction, bend, speed);
}

/** {@link bristleForce} of what was checked before. */
export function forceOfBristles(friction: BristleFriction, bend: number, speed: number): number {
  const { stiffness, damping, viscous } = friction;
  return stiffness * bend + damping * rateOfBristles(friction, bend, speed) + viscous * speed;
}

/** Throws unless the forces are in order and the bristles are those of a seal of this size. */
export function requireBristles(friction: BristleFriction, field = 'bristles'): void {
  requireRecord(friction, field);
  const { kineticForce, breakawayForce, stiffness, damping, stribeckSpeed, viscous } = friction;
  requireWithin(kineticForce, 1e-6, 1e3, `${field}.kineticForce`, 'N');
  requireWithin(breakawayForce, kineticForce, 1e3, `${field}.breakawayForce`, 'N');
  requireWithin(stiffness, 1, 1e7, `${field}.stiffness`, 'N/m');
  requireWithin(damping, 0, 1e4, `${field}.damping`, 'N·s/m');
  requireWithin(stribeckSpeed, 1e-5, 10, `${field}.stribeckSpeed`, 'm/s');
  requireWithin(viscous, 0, 1e3, `${field}.viscous`, 'N·s/m');
}
