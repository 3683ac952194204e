import { requireNotNegative, requirePositive } from '../../base/checks.js';
import { standardGravity } from '../../base/constants.js';
import { requireShape, type Shape } from '../../base/shape.js';
import type { Corner } from '../../motion/corner/corner.js';

/**
 * What of a corner says how it moves on its spring: the mass that the spring carries, the motion ratio and the spring rate.
 *
 * @public
 */
export type SpringCorner = Pick<Corner, 'sprungMass' | 'motionRatio' | 'springRate'>;

/** Form of {@link SpringCorner}. */
export const springCornerShape: Shape = { sprungMass: 'kg', motionRatio: '', springRate: 'N/m' };

/**
 * How a corner moves on its spring.
 *
 * @public
 */
export interface CornerMotion {
  /** Rate at the wheel [N/m]: the spring rate times the square of the motion ratio. */
  readonly wheelRate: number;
  /** Undamped natural frequency [Hz]. */
  readonly naturalFrequency: number;
  /** Damping of the shock at which the corner just does not swing [N·s/m], at the shaft. */
  readonly criticalDamping: number;
  /** How far the spring gives way under the mass [m], at the wheel. */
  readonly staticDeflection: number;
}

function requireCorner({ sprungMass, motionRatio, springRate }: SpringCorner): void {
  requirePositive(sprungMass, 'sprungMass', 'kg');
  requirePositive(motionRatio, 'motionRatio', '');
  requirePositive(springRate, 'springRate', 'N/m');
}

/**
 * Natural frequency and critical damping of a corner: one mass on one spring.
 *
 * @param corner - mass [kg], motion ratio and spring rate [N/m], above 0
 * @throws InputError for an input outside its range
 * @see Rao, Mechanical Vibrations, SI ed. 2017, sec. 2.2 and Eq. (2.65): ω = √(k/m), c = 2 m ω; the motion ratio enters squared since it
 * scales both force and travel
 * @public
 */
export function cornerMotion(corner: SpringCorner): CornerMotion {
  requireShape({ corner }, { corner: springCornerShape });
  requireCorner(corner);
  const { sprungMass, motionRatio, springRate } = corner;
  const wheelRate = springRate * motionRatio ** 2;
  const angularFrequency = Math.sqrt(wheelRate / sprungMass);
  return {
    wheelRate,
    naturalFrequency: angularFrequency / (2 * Math.PI),
    criticalDamping: (2 * sprungMass * angularFrequency) / motionRatio ** 2,
    staticDeflection: (sprungMass * standardGravity) / wheelRate,
  };
}

/**
 * Damping ratio of a corner: damping over critical damping; below 1 it swings.
 *
 * @param corner - mass [kg], motion ratio and spring rate [N/m], above 0
 * @param dampingCoefficient - force of the oil per shaft speed [N·s/m], 0 or more; for a shock that is not linear, at one speed
 * @throws InputError for an input outside its range
 * @see Rao, Mechanical Vibrations, SI ed. 2017, Eq. (2.66)
 * @public
 */
export function dampingRatio(corner: SpringCorner, dampingCoefficient: number): number {
  requireShape({ corner }, { corner: springCornerShape });
  requireNotNegative(dampingCoefficient, 'dampingCoefficient', 'N·s/m');
  return dampingCoefficient / cornerMotion(corner).criticalDamping;
}

/**
 * Part of a swing that is left at the next peak on the same side, 0 to 1.
 *
 * @param ratio - damping ratio, 0 or more; from 1 on nothing swings and 0 is left
 * @throws InputError for a ratio outside its range
 * @see logarithmic decrement: Rao, Mechanical Vibrations, SI ed. 2017, Eq. (2.85)
 * @public
 */
export function swingLeft(ratio: number): number {
  requireNotNegative(ratio, 'ratio', '');
  if (ratio >= 1) return 0;
  return Math.exp((-2 * Math.PI * ratio) / Math.sqrt(1 - ratio ** 2));
}

/**
 * What keeps a corner as it was when its mass changes.
 *
 * @public
 */
export interface ReloadedCorner {
  /** Spring rate that keeps the natural frequency [N/m], at the shock. */
  readonly springRate: number;
  /** Factor on all damping that keeps the damping ratio with that spring. */
  readonly dampingFactor: number;
  /** Factor on all damping that keeps the damping ratio with the old spring. */
  readonly dampingFactorOldSpring: number;
}

/**
 * Spring and damping for a heavier or lighter car: rate and damping in proportion to the mass keep frequency and damping ratio; with the old
 * spring the damping goes with the root of the mass.
 *
 * @param corner - the corner as it was
 * @param sprungMass - new mass on the corner [kg], above 0
 * @throws InputError for an input outside its range
 * @public
 */
export function reloadedCorner(corner: SpringCorner, sprungMass: number): ReloadedCorner {
  requireShape({ corner }, { corner: springCornerShape });
  requireCorner(corner);
  requirePositive(sprungMass, 'sprungMass', 'kg');
  const factor = sprungMass / corner.sprungMass;
  return {
    springRate: factor * corner.springRate,
    dampingFactor: factor,
    dampingFactorOldSpring: Math.sqrt(factor),
  };
}
