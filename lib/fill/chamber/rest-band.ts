import { requireNotNegative } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { madeWith, requireShape } from '../../base/shape.js';
import type { ClosedShock } from './closed-shock.js';
import {
  conditionAtClosing,
  type FillCondition,
  fillConditionShape,
  lockPosition,
} from './pressure-inside.js';
import { positionAtForce } from './static-force.js';

/**
 * The stretch of stroke over which a friction force holds the shaft against the gas.
 *
 * @public
 */
export interface RestBand {
  /** Where a shaft that comes from full extension, sucked in, stops [m]. */
  readonly fromExtension: number;
  /** Where a shaft that comes from compression, pushed out, stops [m]; at least `fromExtension`. */
  readonly fromCompression: number;
}

/**
 * Where the unloaded shaft comes to rest, in both directions of approach: the positions at which the gas force is smaller than the
 * friction. With the breakaway friction instead of the moving one it is the band in which a shaft that was left alone stays.
 *
 * @param shock - from {@link closeShock}, with some gas in it
 * @param friction - friction of the seals [N], 0 or more
 * @param condition - exponent, temperature [K], oil expansion; as closed where left out
 * @returns the band, cut to the stroke: both ends at 0 where the gas pushes the shaft out everywhere, both at the
 * stroke where it sucks it in everywhere
 * @throws InputError for a negative friction, or a shock in which nothing makes room
 * @public
 */
export function restBand(
  shock: ClosedShock,
  friction: number,
  condition: FillCondition = conditionAtClosing(shock),
): RestBand {
  requireShape({ shock, condition }, { shock: madeWith('chamber'), condition: fillConditionShape });
  requireNotNegative(friction, 'friction', 'N');
  if (shock.gasVolume === 0) {
    throw new InputError({
      field: 'compensator.kind',
      value: shock.compensator.kind,
      accepted: 'one that makes room, or leave some air in the oil',
    });
  }
  const { stroke } = shock.chamber;
  const inStroke = (position: number): number => Math.min(Math.max(position, 0), stroke);
  // No suction beats the friction: the shaft rests wherever it is pulled to. No push does: up to the lock.
  const low = positionAtForce(shock, -friction, condition) ?? 0;
  const high = positionAtForce(shock, friction, condition) ?? lockPosition(shock, condition);
  return { fromExtension: inStroke(low), fromCompression: inStroke(high) };
}
