import { requireFinite, requireRecord } from '../base/checks.js';
import { pressureOfGas } from '../gas/gas-state.js';
import { requireModel, requirePosition, type ShaftMotion } from './damper.js';
import { wholeForce } from './damper-force.js';
import type { DamperModel } from './damper-model.js';

/**
 * How steeply the force of a damper rises with its speed.
 *
 * @public
 */
export interface ForceSlope {
  /** `dF/dv` of the force on the shaft [N·s/m], towards more speed either way; from rest, towards compression. */
  readonly force: number;
  /** Part of it that the oil makes [N·s/m]: the local damping. */
  readonly dampingForce: number;
  /** Part that the seals make [N·s/m]; below 0 where they break away. */
  readonly sealForce: number;
  /**
   * Whether the slope towards less speed differs by more than 1 % of the larger: a valve lifts, falls or meets its stop within half a percent of this speed, or
   * at rest it has no preload. No straight line stands for the curve there.
   */
  readonly atKink: boolean;
  /** Whether the speed is beyond the onset of cavitation: the slope is then that of oil held whole by more gas. */
  readonly cavitating: boolean;
}

/** Step against the speed, and the smallest speed that it goes by [m/s]: a hundredth of that over which a seal reverses is far enough. */
const relativeStep = 1e-3;
const slowest = 1e-3;

/** Weights of a slope from a point and four steps to one side, right to the fourth power (forward differences; Fornberg, Math. Comp. 51 (1988) 699, Table 3). */
const oneSided = [-25 / 12, 4, -3, 4 / 3, -1 / 4] as const;

/** Beyond this two sides differ. */
const sameSlope = 0.01;

/**
 * Slope of the force over the speed at one position: what a linear model of the damper about this speed takes as its damping.
 *
 * @param model - from `damperModel`
 * @param motion - speed [m/s], either sign or 0; position [m], 0 to the stroke
 * @throws InputError for a value outside its range
 * @see one-sided differences of fourth order: Fornberg, Math. Comp. 51 (1988) 699, Table 3 (from memory)
 * @example
 * ```ts
 * // model: of the example of damperModel
 * forceSlope(model, { speed: 0.02, position: 0.014 }).dampingForce; // 181.7: a rim alone is linear, the coefficient of damperModel
 * ```
 * @public
 */
export function forceSlope(model: DamperModel, motion: ShaftMotion): ForceSlope {
  requireModel(model);
  requireRecord(motion, 'motion');
  const { speed, position } = motion;
  requireFinite(speed, 'speed', 'm/s');
  requirePosition(position, model.damper.stroke);
  const gas = pressureOfGas(model.gas, model.shaftArea * position);
  const outward = speed < 0 ? -1 : 1;
  const step = outward * relativeStep * Math.max(Math.abs(speed), slowest);
  const slopeBy = (by: number) => {
    let [dampingForce, sealForce] = [0, 0];
    for (const [index, weight] of oneSided.entries()) {
      const at = wholeForce(model, speed + index * by, gas);
      dampingForce += (weight * at.dampingForce) / by;
      sealForce += (weight * at.sealForce) / by;
    }
    return { dampingForce, sealForce, force: dampingForce + sealForce };
  };
  const [faster, slower] = [slopeBy(step), slopeBy(-step)];
  const larger = Math.max(Math.abs(faster.dampingForce), Math.abs(slower.dampingForce));
  return {
    ...faster,
    atKink: Math.abs(faster.dampingForce - slower.dampingForce) > sameSlope * larger,
    cavitating: wholeForce(model, speed, gas).cavitating,
  };
}
