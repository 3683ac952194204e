import { requireFinite, requireNotNegative, requirePositive } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { madeWith, requireShape } from '../../base/shape.js';
import { damperForce } from '../../damper/damper-force.js';
import type { DamperModel } from '../../damper/damper-model.js';
import { bracketedRoot } from '../../numeric/root-finding.js';

/**
 * What two readings of a scale at one position say.
 *
 * @public
 */
export interface ScaleReading {
  /** Push of the gas [N]; negative where it sucks. */
  readonly gasForce: number;
  /** Friction of the seals [N]. */
  readonly friction: number;
}

/**
 * Gas force and friction from the scale: the reading while the shaft is pushed in slowly holds gas and friction, the one while it is
 * let out slowly holds gas less friction.
 *
 * @param pushingIn - reading while the shaft goes in [N]
 * @param lettingOut - reading while it comes out at the same position [N], at most `pushingIn`
 * @throws InputError for readings that are not finite or the wrong way round
 * @public
 */
export function frictionFromScale(pushingIn: number, lettingOut: number): ScaleReading {
  requireFinite(pushingIn, 'pushingIn', 'N');
  requireFinite(lettingOut, 'lettingOut', 'N');
  if (lettingOut > pushingIn) {
    throw new InputError({
      field: 'lettingOut',
      value: lettingOut,
      unit: 'N',
      accepted: `at most the reading of ${pushingIn} while pushing in`,
    });
  }
  return { gasForce: (pushingIn + lettingOut) / 2, friction: (pushingIn - lettingOut) / 2 };
}

/** Part of the friction that damping may add before a reading of the scale is no longer that of slow movement. */
const slowShare = 0.1;

/**
 * Fastest hand on the scale that still counts as slow [m/s]: the shaft speed at which damping is a tenth of the friction. Faster, and the difference of the two
 * readings holds damping too.
 *
 * @param model - from `damperModel`
 * @param friction - friction of the seals [N], above 0
 * @returns the speed, or `undefined` above 1000 m/s
 * @throws InputError for a friction that is not above 0
 * @public
 */
export function slowHandSpeed(model: DamperModel, friction: number): number | undefined {
  requireShape({ model }, { model: madeWith('pistonFlow') });
  requirePositive(friction, 'friction', 'N');
  return frictionRulesBelow(model, slowShare * friction);
}

/** Slowest and fastest shaft speed searched, as logarithm of m/s. */
const searched = { slowest: Math.log(1e-9), fastest: Math.log(1e3) } as const;

/**
 * Shaft speed below which seal friction is larger than the damping force [m/s].
 *
 * @param model - from `damperModel`
 * @param friction - friction of the seals [N], 0 or more
 * @returns the speed; 0 without friction, `undefined` above 1000 m/s
 * @throws InputError for a negative friction
 * @public
 */
export function frictionRulesBelow(model: DamperModel, friction: number): number | undefined {
  requireShape({ model }, { model: madeWith('pistonFlow') });
  requireNotNegative(friction, 'friction', 'N');
  if (friction === 0) return 0;
  const excess = (logSpeed: number): number =>
    Math.abs(damperForce(model, { speed: -Math.exp(logSpeed), position: 0 }).dampingForce) / friction - 1;
  if (excess(searched.fastest) < 0) return undefined;
  if (excess(searched.slowest) >= 0) return 0;
  return Math.exp(bracketedRoot(excess, searched.slowest, searched.fastest, 'friction speed').root);
}

/**
 * Band of ride height within which the car can stop [m, at the wheel]: friction at the wheel, both ways, over the wheel rate.
 *
 * @param friction - breakaway friction of one shock [N], 0 or more
 * @param suspension - wheel rate [N/m], above 0; shaft travel per wheel travel, above 0
 * @throws InputError for a value outside its range
 * @see Gillespie, Fundamentals of Vehicle Dynamics (1992), on friction in suspensions: the hysteresis of a spring with dry friction (from memory)
 * @public
 */
export function rideHeightBand(
  friction: number,
  suspension: { readonly wheelRate: number; readonly motionRatio: number },
): number {
  requireShape({ suspension }, { suspension: { wheelRate: '', motionRatio: '' } });
  requireNotNegative(friction, 'friction', 'N');
  requirePositive(suspension.wheelRate, 'wheelRate', 'N/m');
  requirePositive(suspension.motionRatio, 'motionRatio', '');
  return (2 * friction * suspension.motionRatio) / suspension.wheelRate;
}
