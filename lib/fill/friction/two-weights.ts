import { requirePositive } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';

/**
 * A weight hung on the shaft and the time it took over a stretch of stroke.
 *
 * @public
 */
export interface TimedPull {
  /** Force of the weight [N], above 0. */
  readonly pull: number;
  /** Time over the stretch [s], above 0. */
  readonly time: number;
}

/**
 * Friction and damping that two weights and a stopwatch give.
 *
 * @public
 */
export interface FrictionAndDamping {
  /** Moving friction less the push of the gas [N]. */
  readonly friction: number;
  /** Damping coefficient of slow movement [N·s/m]. */
  readonly dampingCoefficient: number;
}

/**
 * Friction and damping coefficient from two weights hung on the same shock, by `m g − F = c s/t` for both.
 *
 * Holds where damping grows in proportion to speed, below the pack speed, and where the gas force changes little over the stretch.
 *
 * @param lighter - pull [N] and time [s]; the slower
 * @param heavier - pull [N] and time [s]
 * @param stretch - stretch of stroke [m], above 0
 * @throws InputError unless the heavier weight was the quicker
 * @public
 */
export function frictionFromTwoWeights(
  lighter: TimedPull,
  heavier: TimedPull,
  stretch: number,
): FrictionAndDamping {
  requirePositive(lighter.pull, 'lighter.pull', 'N');
  requirePositive(lighter.time, 'lighter.time', 's');
  requirePositive(heavier.time, 'heavier.time', 's');
  requirePositive(stretch, 'stretch', 'm');
  if (!(heavier.pull > lighter.pull && heavier.time < lighter.time)) {
    throw new InputError({
      field: 'heavier.time',
      value: heavier.time,
      unit: 's',
      accepted: `below the ${lighter.time} of the lighter weight`,
    });
  }
  const friction =
    (lighter.pull * lighter.time - heavier.pull * heavier.time) / (lighter.time - heavier.time);
  const dampingCoefficient =
    (heavier.pull - lighter.pull) / (stretch / heavier.time - stretch / lighter.time);
  return { friction, dampingCoefficient };
}
