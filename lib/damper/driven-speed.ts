import { refuse, requireFinite, requirePositive, requireRecord, requireWithin } from '../base/checks.js';
import { standardGravity } from '../base/constants.js';
import { rootAbove } from '../numeric/root-finding.js';
import { requireModel, requirePosition } from './damper.js';
import { damperForce } from './damper-force.js';
import type { DamperModel } from './damper-model.js';
import { creepingDamping } from './force-point.js';

/** Fastest shaft speed searched [m/s], far above any shock. */
const fastestSearched = 1e3;

/**
 * Fastest speed at which a force can drive a shaft out [m/s], 0 or less: where damping and seals equal it, and nothing is left to accelerate. In rebound nothing but
 * spring, gas and weight drives a shock, so that no faster rebound happens however the ground looks.
 *
 * @param model - from `damperModel`; its gas helps, its seals hold back
 * @param driving - force of spring and hanging weight along the shaft, outward [N], either sign; position [m], 0 to the stroke
 * @returns the speed with its sign, negative; 0 where the shaft is not driven out at all
 * @throws InputError for a force that is not finite, one that drives the shaft faster than 1000 m/s, or a position outside the stroke
 * @example
 * ```ts
 * // model: of the example of damperModel
 * fastestRebound(model, { force: 5, position: 0.014 }); // -0.02813: 5 N and 0.1125 N of the gas over 181.7 N·s/m, by hand
 * ```
 * @public
 */
export function fastestRebound(
  model: DamperModel,
  driving: { readonly force: number; readonly position: number },
): number {
  requireModel(model);
  requireRecord(driving, 'driving');
  const { force, position } = driving;
  requireFinite(force, 'force', 'N');
  requirePosition(position, model.damper.stroke);
  // What holds the shaft back at a speed of that size, less what drives it.
  const excess = (size: number): number => -damperForce(model, { speed: -size, position }).force - force;
  const { gasForce } = damperForce(model, { speed: 0, position });
  const drive = force + gasForce;
  if (drive <= model.damper.seal.kineticForce) return 0;
  if (excess(fastestSearched) < 0)
    refuse(force, 'force', 'N', `one that drives the shaft no faster than ${fastestSearched} m/s, in`);
  const start = drive / creepingDamping(model);
  return -rootAbove(excess, start, fastestSearched, 'fastest rebound').root;
}

/**
 * Shaft speed at the touch of a landing [m/s]: `r √(2 g h)`, `r` the shaft travel for each wheel travel, the tyre taken as stiff and without bounce. A springy tyre that
 * throws the wheel up can make it faster: `moveCorner` of `dashpot/motion` follows that.
 *
 * @param height - drop height [m], 0 to 3
 * @param motionRatio - shaft travel for each wheel travel, above 0 to 2
 * @throws InputError outside these
 * @see free fall: any textbook of mechanics
 * @example
 * ```ts
 * landingShaftSpeed(0.5, 0.6); // 1.879: 0.6 √(2 · 9.80665 · 0.5), by hand
 * ```
 * @public
 */
export function landingShaftSpeed(height: number, motionRatio: number): number {
  requireWithin(height, 0, 3, 'height', 'm');
  requirePositive(motionRatio, 'motionRatio', '');
  requireWithin(motionRatio, 0, 2, 'motionRatio', '');
  return motionRatio * Math.sqrt(2 * standardGravity * height);
}
