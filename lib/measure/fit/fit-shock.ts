import type { Matrix } from 'ml-matrix';
import { InputError } from '../../base/input-error.js';
import { optional, record, requireShape } from '../../base/shape.js';
import { FitError } from '../../numeric/least-squares/fit-error.js';
import { leastSquares } from '../../numeric/least-squares/least-squares.js';
import { parameterCovariance } from '../../numeric/least-squares/parameter-covariance.js';
import type { RobustLoss } from '../../numeric/least-squares/robust-loss.js';
import { robustLossShape } from '../../numeric/least-squares/robust-loss.js';
import type { MeasuredState } from '../model/shock-state.js';
import {
  type BoundProblem,
  bindProblem,
  type MeasuredShockProblem,
  measuredShockProblemShape,
} from './fit-problem.js';
import { requireReadings } from './require-readings.js';
import { requireUnknowns, type Unknown } from './unknown.js';

/**
 * One number that was read, against what the fitted shock would show.
 *
 * @public
 */
export interface Residual {
  /** Index of the reading, and of the number in it. */
  readonly reading: number;
  readonly repeat: number;
  /** Fitted less read, over the standard uncertainty. */
  readonly standardised: number;
}

/**
 * A shock as its readings say it is.
 *
 * @public
 */
export interface ShockFit {
  readonly problem: MeasuredShockProblem;
  /** One number an unknown, on its scale. */
  readonly parameters: readonly number[];
  /** Covariance of the parameters, linear about the fit; one row an unknown. */
  readonly covariance: readonly (readonly number[])[];
  readonly standardDeviations: readonly number[];
  readonly state: MeasuredState;
  readonly residuals: readonly Residual[];
  /** Squares of the readings' residuals. */
  readonly chiSquare: number;
  /** With the squares of the priors; the loss of the readings where that is not plain. */
  readonly cost: number;
  /** Readings and priors less unknowns. */
  readonly degreesOfFreedom: number;
}

/** Says a fault in the names of the quantities. */
function named(error: FitError, unknowns: readonly Unknown[]): FitError {
  const names = error.indices.map((index) => unknowns[index]!.quantity);
  if (names.length === 0) return error;
  const message =
    names.length === 1
      ? `the readings do not tell ${names[0]}`
      : `the readings cannot tell ${names.join(' from ')}`;
  return new FitError(error.fault, message, error.parameters, error.indices);
}

/**
 * Fits a shock to what was measured on it: the state that explains readings and priors best, and how sure that is.
 *
 * @param problem - readings with their uncertainties, unknowns with their priors
 * @param loss - of the readings; plain squares by default, `huberLoss` or `studentLoss` where some readings may be bad
 * @throws InputError for readings that cannot be; FitError where they do not tell the unknowns, or the search stalls
 * @see weighted least squares with priors as readings: Press et al., Numerical Recipes, sec. 15.4; JCGM 100:2008 (GUM)
 * @public
 */
export function fitShock(problem: MeasuredShockProblem, loss?: RobustLoss): ShockFit {
  requireShape({ problem, loss }, { problem: record, loss: optional(robustLossShape) });
  requireShape(problem, measuredShockProblemShape);
  if (problem.unknowns.length === 0)
    throw new InputError({ field: 'unknowns.length', value: 0, accepted: '1 or more' });
  requireUnknowns(problem.unknowns);
  requireReadings(problem);
  const bound = bindProblem(problem);
  try {
    const robust = loss === undefined ? {} : { loss, lossCount: bound.data.length };
    const fit = leastSquares({ ...bound, ...robust });
    return assembled(problem, bound, fit.parameters, fit.residuals, fit.cost, fit.jacobian);
  } catch (error) {
    throw error instanceof FitError ? named(error, problem.unknowns) : error;
  }
}

function assembled(
  problem: MeasuredShockProblem,
  bound: BoundProblem,
  parameters: readonly number[],
  residuals: ArrayLike<number>,
  cost: number,
  jacobian: Matrix,
): ShockFit {
  const covariance = parameterCovariance(jacobian, parameters);
  const standardised = bound.data.map(({ reading, repeat }, index) => ({
    reading,
    repeat,
    standardised: residuals[index]!,
  }));
  return {
    problem,
    parameters,
    covariance: covariance.to2DArray(),
    standardDeviations: covariance.diagonal().map(Math.sqrt),
    state: bound.stateOf(parameters),
    residuals: standardised,
    chiSquare: standardised.reduce((sum, residual) => sum + residual.standardised ** 2, 0),
    cost,
    degreesOfFreedom: residuals.length - parameters.length,
  };
}

/** Variance of a number whose slopes by the parameters are known: `gᵀ C g`. */
export function linearVariance(
  covariance: readonly (readonly number[])[],
  slopes: readonly number[],
): number {
  return covariance.reduce(
    (sum, row, index) =>
      sum + slopes[index]! * row.reduce((part, value, other) => part + value * slopes[other]!, 0),
    0,
  );
}
