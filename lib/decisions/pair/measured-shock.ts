import { requireNotNegative, requirePositive } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { listOf, record, requireShape, type Shape, someText } from '../../base/shape.js';
import type { Damper } from '../../damper/damper.js';
import { requireDamper } from '../../damper/damper.js';
import { damperModel } from '../../damper/damper-model.js';
import { forceOfOil } from '../../damper/oil-force.js';
import type { FluidState } from '../../fluid/oil/fluid-state.js';

/**
 * A shock as measured: its damping on any scale, since only ratios matter.
 *
 * @public
 */
export interface MeasuredShock {
  readonly name: string;
  /** Damping in any unit, the same for all; above 0. A time over the stroke under a fixed weight will do. */
  readonly damping: number;
  /** Standard uncertainty of the damping over the damping, 0 or more. */
  readonly relativeUncertainty: number;
}

/** Form of {@link MeasuredShock}. */
export const measuredShockShape: Shape = { name: someText, damping: '', relativeUncertainty: '' };

/**
 * A shock timed with a stopwatch: how long the shaft takes over a fixed travel under a fixed weight. In the slow flow of that test
 * the time is in proportion to the damping.
 *
 * @param name - of the shock
 * @param times - repeated times [s], each above 0, 1 or more
 * @param timingUncertainty - standard uncertainty of one time [s], above 0: hand and eye, 0.1 s to 0.2 s (common practice, no source)
 * @throws InputError for an input outside its range
 * @see Type B evaluation of the timing and mean of n: JCGM 100:2008 (GUM), 4.2.3 and 4.3
 * @public
 */
export function timedShock(name: string, times: readonly number[], timingUncertainty: number): MeasuredShock {
  requireShape({ name, times }, { name: someText, times: listOf('s') });
  requirePositive(timingUncertainty, 'timingUncertainty', 's');
  if (times.length === 0) throw new InputError({ field: 'times', value: 0, accepted: '1 or more' });
  times.forEach((time, index) => {
    requirePositive(time, `times[${index}]`, 's');
  });
  const mean = times.reduce((sum, time) => sum + time, 0) / times.length;
  const scatter =
    times.length < 2
      ? 0
      : Math.sqrt(times.reduce((sum, time) => sum + (time - mean) ** 2, 0) / (times.length - 1));
  // With two or three repeats the scatter may be small by luck, so the hand's own uncertainty is the least.
  const uncertainty = Math.max(scatter, timingUncertainty) / Math.sqrt(times.length);
  return { name, damping: mean, relativeUncertainty: uncertainty / mean };
}

/**
 * A shock whose holes were measured: its damping by the model, with the uncertainty of the diameter carried over by the slope.
 *
 * @param name - of the shock
 * @param damper - with the measured holes
 * @param fluid - oil, the same for all shocks
 * @param speed - shaft speed [m/s], not 0
 * @param diameterUncertainty - standard uncertainty of the hole diameter [m], 0 or more
 * @throws InputError for an input outside its range
 * @see law of propagation: JCGM 100:2008 (GUM), 5.1.2
 * @public
 */
export function drilledShock(
  name: string,
  damper: Damper,
  fluid: FluidState,
  speed: number,
  diameterUncertainty: number,
): MeasuredShock {
  requireShape(
    { name, damper, fluid, speed },
    { name: someText, damper: record, fluid: record, speed: 'm/s' },
  );
  requireDamper(damper);
  requireNotNegative(diameterUncertainty, 'diameterUncertainty', 'm');
  requirePositive(Math.abs(speed), 'size of speed', 'm/s');
  const force = (off: number): number => {
    const holes = damper.piston.holes.map((group) => ({ ...group, diameter: group.diameter + off }));
    const model = damperModel({ ...damper, piston: { ...damper.piston, holes } }, fluid);
    return Math.abs(forceOfOil(model, speed));
  };
  const damping = force(0);
  const change = (force(diameterUncertainty) - force(-diameterUncertainty)) / 2;
  return { name, damping, relativeUncertainty: Math.abs(change) / damping };
}

/** Throws unless damping is above 0 and its uncertainty is not negative. */
export function requireMeasuredShock({ damping, relativeUncertainty }: MeasuredShock): void {
  requirePositive(damping, 'damping', '');
  requireNotNegative(relativeUncertainty, 'relativeUncertainty', '');
}
