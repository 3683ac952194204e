import { refuse, smallest } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { listOf, madeWith, requireShape, type Shape } from '../../base/shape.js';
import type { DamperModel } from '../../damper/damper-model.js';
import { forceOfOil } from '../../damper/oil-force.js';
import { requireSpeedWeights, type SpeedWeights, weightedSpeedShape } from './speed-weights.js';

/**
 * Wanted damping: the force that whole oil shall make at each speed of the weights, so that no gas has a part in it.
 *
 * @public
 */
export interface WantedDamping {
  readonly weights: SpeedWeights;
  /** Damping force at each of the speeds [N], with the sign of the speed. */
  readonly forces: readonly number[];
}

/** Form of {@link WantedDamping}. */
export const wantedDampingShape: Shape = { weights: listOf(weightedSpeedShape), forces: listOf('N') };

/**
 * How far damping is from what is wanted. A ratio of 1.1 is 10 % too hard.
 *
 * @public
 */
export interface DampingMismatch {
  /** Typical deviation over the weighted speeds: 0.1 stands for 10 %, from the root mean square of the logarithm of the ratio. */
  readonly typical: number;
  /** Mean ratio of force to wanted force, 1 where it is neither harder nor softer on the whole. */
  readonly meanRatio: number;
  /** Ratio of force to wanted force at each speed. */
  readonly ratios: readonly number[];
}

/**
 * The damping of a shock as it is, to be wanted again from another.
 *
 * @param model - from `damperModel`
 * @param weights - speeds and how much each counts
 * @throws InputError for a speed of 0 or weights that add up to 0
 * @public
 */
export function dampingOf(model: DamperModel, weights: SpeedWeights): WantedDamping {
  requireShape({ model, weights }, { model: madeWith('pistonFlow'), weights: listOf(weightedSpeedShape) });
  requireSpeedWeights(weights);
  return { weights, forces: weights.map(({ speed }) => forceOfOil(model, speed)) };
}

/**
 * The same damping, harder or softer by a factor at every speed.
 *
 * @param wanted - from {@link dampingOf}
 * @param factor - above 0
 * @public
 */
export function scaledDamping(wanted: WantedDamping, factor: number): WantedDamping {
  requireShape({ wanted, factor }, { wanted: wantedDampingShape, factor: '' });
  return { weights: wanted.weights, forces: wanted.forces.map((force) => factor * force) };
}

/** Throws unless each speed has a force that opposes the motion. */
export function requireWantedDamping(wanted: WantedDamping): void {
  requireSpeedWeights(wanted.weights);
  wanted.weights.forEach(({ speed }, index) => {
    const force = wanted.forces[index];
    if (force === undefined || !(force * Math.sign(speed) >= smallest && Number.isFinite(force)))
      throw new InputError({
        field: `forces[${index}]`,
        value: force,
        unit: 'N',
        accepted: `a force with the sign of its speed, at least ${smallest}`,
      });
  });
}

/**
 * Logarithm of force to wanted force. A force that does not oppose the motion, as the laws give it for holes far beyond their range, is infinitely too soft: a search
 * takes any other oil instead.
 */
export function logRatio(force: number, wanted: number): number {
  return Math.log(Math.max(force / wanted, 0));
}

/** Weighted mean and root mean square of the logarithm of force to wanted force: the inner loop of every search. */
export function logMismatch(
  model: DamperModel,
  wanted: WantedDamping,
): { readonly mean: number; readonly rootMeanSquare: number } {
  let sum = 0;
  let mean = 0;
  let squares = 0;
  wanted.weights.forEach(({ speed, weight }, index) => {
    if (weight === 0) return;
    const off = logRatio(forceOfOil(model, speed), wanted.forces[index] ?? Number.NaN);
    sum += weight;
    mean += weight * off;
    squares += weight * off * off;
  });
  return { mean: mean / sum, rootMeanSquare: Math.sqrt(squares / sum) };
}

/**
 * Compares the damping of a shock with what is wanted.
 *
 * @param model - from `damperModel`
 * @param wanted - forces [N] at the weighted speeds
 * @throws InputError where a wanted force does not have the sign of its speed, or the damping of the model has not: holes far beyond the range of their law
 * @public
 */
export function dampingMismatch(model: DamperModel, wanted: WantedDamping): DampingMismatch {
  requireShape({ model, wanted }, { model: madeWith('pistonFlow'), wanted: wantedDampingShape });
  requireWantedDamping(wanted);
  const forces = wanted.weights.map(({ speed }) => forceOfOil(model, speed));
  forces.forEach((force, index) => {
    const speed = wanted.weights[index]?.speed ?? 0;
    if (!(force * speed > 0))
      refuse(`${force} N`, 'damping force of the model', '', `against the motion at ${speed} m/s`);
  });
  const { mean, rootMeanSquare } = logMismatch(model, wanted);
  return {
    typical: Math.expm1(rootMeanSquare),
    meanRatio: Math.exp(mean),
    ratios: forces.map((force, index) => force / (wanted.forces[index] ?? Number.NaN)),
  };
}
