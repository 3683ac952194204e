import { Matrix } from 'ml-matrix';
import { requireCount } from '../../base/checks.js';
import { madeWith, requireShape } from '../../base/shape.js';
import { adaptiveMetropolis } from '../../numeric/sampling/adaptive-metropolis.js';
import { curvedProposal } from '../../numeric/sampling/curved-proposal.js';
import type { Draws } from '../../numeric/sampling/draws.js';
import { importanceSample } from '../../numeric/sampling/importance-sampling.js';
import { bindProblem } from '../fit/fit-problem.js';
import type { ShockFit } from '../fit/fit-shock.js';
import { stateAt } from '../fit/unknown.js';
import { type ForcePlace, forcePlaceShape, requireSpeeds } from './damping-answer.js';

/**
 * Draws of what the shock may be, after its readings: one number an unknown, on its scale.
 *
 * @public
 */
export interface Posterior extends Draws {
  /** How they were drawn: by importance about the fit, or by a walk where the fit is no guide. */
  readonly method: 'importance' | 'walk';
}

/** Importance sampling counts where its draws are worth at least this share of their number. */
const leastEffectiveShare = 0.05;
/** And where no draw stands for more than this. */
const largestShare = 0.01;

/**
 * Draws from the posterior of a fitted shock: normal errors, normal priors, no prior where none is stated, and nothing below the least values.
 *
 * Drawn by importance about the fit; by an adaptive random walk where fewer than 1 in 20 draws count or one stands for more than 1 in 100.
 *
 * @param fit - from `fitShock`
 * @param count - draws, 1 or more: 8192 give means to 0.05 and ends to 0.3 standard deviations, 32 768 ends to 0.1
 * @param seed - any whole number; the same seed gives the same draws
 * @throws InputError for a count that is not a whole number of 1 or more
 * @public
 */
export function posteriorOf(fit: ShockFit, count = 8192, seed = 1): Posterior {
  requireShape({ fit, seed }, { fit: madeWith('problem'), seed: '' });
  requireCount(count, 'count');
  const { residuals, least, sizes } = bindProblem(fit.problem);
  const logDensity = (parameters: readonly number[]): number => {
    if (parameters.some((value, index) => value < least[index]!)) return Number.NEGATIVE_INFINITY;
    const values = residuals(parameters);
    let square = 0;
    for (let row = 0; row < values.length; row++) square += values[row]! ** 2;
    return Number.isNaN(square) ? Number.NEGATIVE_INFINITY : -square / 2;
  };
  const covariance = new Matrix(fit.covariance.map((row) => [...row]));
  const target = { logDensity, mode: fit.parameters, covariance };
  const drawn = importanceSample(target, count, seed, curvedProposal(residuals, fit.parameters, sizes));
  if (drawn.effective > leastEffectiveShare * count && drawn.largestWeight < largestShare) {
    return { ...drawn, method: 'importance' };
  }
  return { ...adaptiveMetropolis(target, Math.max(count, 1000), seed), method: 'walk' };
}

/**
 * Size of the damping force at each draw [N].
 *
 * @param fit - from `fitShock`
 * @param draws - from {@link posteriorOf}
 * @param speed - shaft speed [m/s], not 0
 * @param place - position [m] and oil temperature [K]
 * @throws InputError for a speed of 0
 * @public
 */
export function drawnForces(fit: ShockFit, draws: Draws, speed: number, place: ForcePlace): Float64Array {
  requireShape(
    { fit, draws, speed, place },
    { fit: madeWith('problem'), draws: madeWith('values'), speed: 'm/s', place: forcePlaceShape },
  );
  requireSpeeds([speed]);
  const { law, known, unknowns } = fit.problem;
  const { dimensions, values } = draws;
  return Float64Array.from(draws.weights, (_, draw) => {
    const parameters = values.subarray(draw * dimensions, (draw + 1) * dimensions);
    const state = stateAt(known, unknowns, Array.from(parameters));
    return Math.abs(
      law(state)
        .at(place.temperature + state.thermometerError)
        .dampingForce(speed, place.position),
    );
  });
}
