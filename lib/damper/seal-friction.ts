import { refuse, requireFinite, requireNotNegative, requireRecord } from '../base/checks.js';

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

/** Speed over which breakaway friction falls to moving friction [m/s]; a usual size for rubber on steel (from memory). */
const stribeckSpeed = 0.01;

/** Speed over which the friction reverses [m/s]: small against any speed of a shock, finite so that the force is smooth. */
const reversalSpeed = 0.001;

/** Speed above which neither shows in a double [m/s]. */
const settledSpeed = 10 * stribeckSpeed;

/** Throws unless breakaway friction is at least moving friction, and both are 0 or more. */
export function requireSealFriction(seal: SealFriction): void {
  requireRecord(seal, 'seal');
  requireNotNegative(seal.kineticForce, 'seal.kineticForce', 'N');
  requireNotNegative(seal.breakawayForce, 'seal.breakawayForce', 'N');
  if (seal.breakawayForce < seal.kineticForce) {
    refuse(
      seal.breakawayForce,
      'seal.breakawayForce',
      'N',
      `at least the moving friction of ${seal.kineticForce}`,
    );
  }
}

/**
 * Friction force of the seals [N], with the sign of the speed:
 * `(F_c + (F_s − F_c) exp(−(v/v_s)²)) tanh(v/v_0)`, `v_s` 10 mm/s, `v_0` 1 mm/s.
 *
 * @param seal - forces [N], 0 or more
 * @param speed - shaft speed [m/s], either sign
 * @see Stribeck form as in Canudas de Wit, Olsson, Åström & Lischinsky, IEEE Trans. Autom. Control 40 (1995) 419; the smooth
 * reversal by tanh is a common regularisation
 * @example
 * ```ts
 * const seal = { kineticForce: 0.4, breakawayForce: 0.6 };
 * sealFrictionForce(seal, 0.1); // 0.4: fast enough that only the kinetic force is left
 * sealFrictionForce(seal, 0); // 0: at rest the smooth law has none
 * ```
 * @public
 */
export function sealFrictionForce(seal: SealFriction, speed: number): number {
  requireSealFriction(seal);
  requireFinite(speed, 'speed', 'm/s');
  return frictionAt(seal, speed);
}

/** {@link sealFrictionForce} of what was checked before. */
export function frictionAt(seal: SealFriction, speed: number): number {
  const { kineticForce, breakawayForce } = seal;
  // From here on both functions are 1 and 0 to the last digit, and would take as long as a hole.
  if (speed > settledSpeed) return kineticForce;
  if (speed < -settledSpeed) return -kineticForce;
  const ratio = speed / stribeckSpeed;
  const stribeck = (breakawayForce - kineticForce) * Math.exp(-ratio * ratio);
  return (kineticForce + stribeck) * Math.tanh(speed / reversalSpeed);
}
