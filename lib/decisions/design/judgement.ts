import type { DamperModel } from '../../damper/damper-model.js';
import { forceOfOil } from '../../damper/oil-force.js';
import type { Design, DesignProblem, MadeForce, WantedForce } from './design-problem.js';

/** Difference as a part: twice as hard is as far off as half as hard. */
function partsApart(a: number, b: number): number {
  return Math.expm1(Math.abs(Math.log(a / b)));
}

/** Largest difference in either direction, as a part. */
export function largestApart(made: MadeForce, wanted: MadeForce): number {
  return Math.max(partsApart(made.compression, wanted.compression), partsApart(made.rebound, wanted.rebound));
}

/** Forces at the slow and the fast speed, and how far off they are. */
export type Judgement = Pick<Design, 'slow' | 'fast' | 'slowError' | 'fastError'>;

/** What a damper makes of the wanted forces. */
export function judge(model: DamperModel, wanted: Pick<DesignProblem, 'slow' | 'fast'>): Judgement {
  const at = ({ speed }: WantedForce) => ({
    compression: forceOfOil(model, speed),
    rebound: -forceOfOil(model, -speed),
  });
  const [slow, fast] = [at(wanted.slow), at(wanted.fast)];
  return {
    slow,
    fast,
    slowError: largestApart(slow, wanted.slow),
    fastError: largestApart(fast, wanted.fast),
  };
}
