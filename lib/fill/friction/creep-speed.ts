import { refuse, requireFinite, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { madeWith, requireShape, type Shape } from '../../base/shape.js';
import { damperForce } from '../../damper/damper-force.js';
import type { DamperModel } from '../../damper/damper-model.js';
import { creepingDamping } from '../../damper/force-point.js';
import { simpson } from '../../numeric/quadrature.js';
import { rootAbove } from '../../numeric/root-finding.js';
import type { ClosedShock } from '../chamber/closed-shock.js';
import { conditionAtClosing, type FillCondition, fillConditionShape } from '../chamber/pressure-inside.js';
import { staticForce } from '../chamber/static-force.js';

/** Fastest shaft speed searched [m/s], far above any shock. */
const fastestSearched = 1e3;

/**
 * Steady speed of a shaft that a force pushes or pulls out against oil and seals [m/s, outward]; 0 where the moving friction holds it.
 *
 * The inertia of the shaft is left out: it settles within a millisecond.
 *
 * @param model - from `damperModel`; its seal gives the moving friction
 * @param force - force that drives the shaft out [N], either sign; the result has its sign
 * @throws InputError for a force that is not finite, or that drives the shaft faster than 1000 m/s
 * @public
 */
export function creepSpeed(model: DamperModel, force: number): number {
  requireShape({ model }, { model: madeWith('pistonFlow') });
  requireFinite(force, 'force', 'N');
  const net = Math.abs(force) - model.damper.seal.kineticForce;
  if (net <= 0) return 0;
  // Outward is rebound, negative speed.
  const outward = force > 0 ? -1 : 1;
  const excess = (speed: number): number =>
    Math.abs(damperForce(model, { speed: outward * speed, position: 0 }).dampingForce) - net;
  // The slowest it can be.
  const start = net / creepingDamping(model);
  if (excess(fastestSearched) < 0)
    refuse(force, 'force', 'N', `one that drives the shaft no faster than ${fastestSearched} m/s, in`);
  return -outward * rootAbove(excess, start, fastestSearched, 'creep speed').root;
}

/**
 * A shaft pulled out by a hung weight.
 *
 * @public
 */
export interface HungShaft {
  /** Force of the weight, shaft and rod end included [N], 0 or more. */
  readonly pull: number;
  /** Where it starts, pushed in [m], above `to`. */
  readonly from: number;
  /** Where the time is stopped [m], 0 or more. */
  readonly to: number;
}

/** Form of {@link HungShaft}. */
export const hungShaftShape: Shape = { pull: 'N', from: 'm', to: 'm' };

/** Even number of intervals of Simpson's rule; the speed changes little over the stroke. */
const intervals = 32;

/**
 * Time that a shaft takes to be pulled out [s] by a weight and its gas, against oil and seals.
 *
 * @param model - from `damperModel`; its seal gives the moving friction
 * @param shock - from {@link closeShock}
 * @param hung - pull [N], start and end [m]
 * @param condition - exponent, temperature [K], oil expansion; as closed where left out
 * @throws InputError for an input outside its range, or a shaft that stops on the way; it says where
 * @public
 */
export function pullOutTime(
  model: DamperModel,
  shock: ClosedShock,
  hung: HungShaft,
  condition: FillCondition = conditionAtClosing(shock),
): number {
  requireShape(
    { model, shock, hung, condition },
    {
      model: madeWith('pistonFlow'),
      shock: madeWith('chamber'),
      hung: hungShaftShape,
      condition: fillConditionShape,
    },
  );
  requireWithin(hung.from, 0, shock.chamber.stroke, 'from', 'm');
  requireWithin(hung.to, 0, hung.from, 'to', 'm');
  const slowness = (position: number): number => {
    const gas = staticForce(shock, position, condition);
    const speed = creepSpeed(model, hung.pull + gas);
    if (speed <= 0) {
      throw new InputError({
        field: 'pull',
        value: hung.pull,
        unit: 'N',
        accepted: `more than ${model.damper.seal.kineticForce - gas}, or the shaft stops at ${position} m`,
      });
    }
    return 1 / speed;
  };
  return simpson(slowness, hung.to, hung.from, intervals);
}
