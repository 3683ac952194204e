import { requireFinite, requireNotNegative, requirePositive } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { requireShape, type Shape } from '../../base/shape.js';

/**
 * A weight hung on the shaft and the time it took over a stretch of stroke.
 *
 * @public
 */
export interface TimedPull {
  /** Force of the weight, shaft and rod end included [N], above 0. */
  readonly pull: number;
  /** Time over the stretch [s], above 0. */
  readonly time: number;
}

/** Form of {@link TimedPull}. */
export const timedPullShape: Shape = { pull: 'N', time: 's' };

/**
 * What both weights share.
 *
 * @public
 */
export interface TimedStretch {
  /** Length of the stretch [m], above 0. */
  readonly length: number;
  /** Push of the gas half way along it [N], outward; negative where it sucks. */
  readonly gasForce: number;
  /** Standard error of one time by hand [s], 0 or more. */
  readonly timeError: number;
}

/** Form of {@link TimedStretch}. */
export const timedStretchShape: Shape = { length: 'm', gasForce: 'N', timeError: 's' };

/**
 * Friction and damping that two weights and a stopwatch give.
 *
 * @public
 */
export interface FrictionAndDamping {
  /** Moving friction [N]; a little below 0 where it is smaller than its error. */
  readonly friction: number;
  /** Its standard error, from the errors of both times [N]. */
  readonly frictionError: number;
  /** Damping coefficient of slow movement [N·s/m]. */
  readonly dampingCoefficient: number;
  /** Its standard error [N·s/m]. */
  readonly dampingError: number;
}

/** Times that differ by less than this many of their standard errors may as well be the same. */
const tellingErrors = 3;

/**
 * Friction and damping coefficient from two weights hung on the same shock, by `m g + F_gas − F = c s/t` for both.
 *
 * Holds where damping grows in proportion to speed, below the pack speed, and where the gas force changes little over the stretch. Errors of the times are carried to first
 * order (GUM, JCGM 100:2008, eq. 10).
 *
 * @param lighter - pull [N] and time [s]; the slower
 * @param heavier - pull [N] and time [s]
 * @param stretch - length [m], push of the gas [N], error of a time [s]
 * @throws InputError unless the heavier weight was the quicker, by more than three times what the errors of both times explain
 * @public
 */
export function frictionFromTwoWeights(
  lighter: TimedPull,
  heavier: TimedPull,
  stretch: TimedStretch,
): FrictionAndDamping {
  requireShape(
    { lighter, heavier, stretch },
    { lighter: timedPullShape, heavier: timedPullShape, stretch: timedStretchShape },
  );
  const { length, gasForce, timeError } = stretch;
  requirePositive(lighter.pull, 'lighter.pull', 'N');
  requirePositive(heavier.pull, 'heavier.pull', 'N');
  requirePositive(lighter.time, 'lighter.time', 's');
  requirePositive(heavier.time, 'heavier.time', 's');
  requirePositive(length, 'stretch.length', 'm');
  requireFinite(gasForce, 'stretch.gasForce', 'N');
  requireNotNegative(timeError, 'stretch.timeError', 's');
  if (!(heavier.pull > lighter.pull)) {
    throw new InputError({
      field: 'heavier.pull',
      value: heavier.pull,
      unit: 'N',
      accepted: `above the ${lighter.pull} of the lighter weight`,
    });
  }
  const sooner = lighter.time - heavier.time;
  const least = tellingErrors * Math.SQRT2 * timeError;
  if (!(sooner > least)) {
    throw new InputError({
      field: 'heavier.time',
      value: heavier.time,
      unit: 's',
      accepted: `below ${lighter.time - least}: nearer to the ${lighter.time} of the lighter weight the hand's error of ${timeError} hides the difference. Hang a heavier weight, or time a longer stretch. Times in`,
    });
  }
  const more = heavier.pull - lighter.pull;
  const friction = (lighter.pull * lighter.time - heavier.pull * heavier.time) / sooner + gasForce;
  const dampingCoefficient = (more * lighter.time * heavier.time) / (length * sooner);
  // Slopes of both over both times, by hand from the two lines above.
  const perSquare = more / (sooner * sooner);
  const frictionError = perSquare * Math.hypot(lighter.time, heavier.time) * timeError;
  const dampingError = (perSquare / length) * Math.hypot(lighter.time ** 2, heavier.time ** 2) * timeError;
  return { friction, frictionError, dampingCoefficient, dampingError };
}
