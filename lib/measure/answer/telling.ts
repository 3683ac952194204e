import { Matrix } from 'ml-matrix';
import { listOf, requireShape } from '../../base/shape.js';
import { differenceJacobian } from '../../numeric/least-squares/difference-jacobian.js';
import { informationBeyondPrior } from '../../numeric/least-squares/parameter-covariance.js';
import { bindProblem, type MeasuredShockProblem, measuredShockProblemShape } from '../fit/fit-problem.js';
import type { ShockFit } from '../fit/fit-shock.js';
import type { Quantity } from '../model/shock-state.js';

/**
 * What readings tell of a shock beyond what was stated.
 *
 * @public
 */
export interface Telling {
  /**
   * Singular values of the readings' slopes times the priors' standard deviations, largest first. Each above 1 is one combination of unknowns that the
   * readings know better than the prior.
   */
  readonly singularValues: readonly number[];
  /** How many are above 1. */
  readonly combinations: number;
  /** Standard deviation after the readings over that before, for each unknown: 1 where they tell nothing. */
  readonly shrinkage: readonly { readonly quantity: Quantity; readonly ratio: number }[];
}

/**
 * Slopes of the readings over their uncertainties, times the size of each unknown; one row a number read.
 *
 * @internal
 */
export function readingSlopes(problem: MeasuredShockProblem, parameters: readonly number[]): Matrix {
  const { data, predicted, sizes } = bindProblem(problem);
  const columns = differenceJacobian(predicted, parameters, sizes, predicted(parameters));
  return new Matrix(
    data.map(({ reading, uncertainty }) =>
      columns.map((column, index) => (column[reading]! * sizes[index]!) / uncertainty),
    ),
  );
}

/**
 * Information of readings and priors on the unknowns, each in units of its size.
 *
 * @internal
 */
export function informationOf(problem: MeasuredShockProblem, slopes: Matrix): Matrix {
  const count = problem.unknowns.length;
  const information = slopes.rows === 0 ? Matrix.zeros(count, count) : slopes.transpose().mmul(slopes);
  problem.unknowns.forEach(({ prior }, index) => {
    if (prior !== undefined) information.set(index, index, information.get(index, index) + 1);
  });
  return information;
}

/**
 * What the readings of a fit tell beyond the priors. Unknowns without a prior count in tenths of their value.
 *
 * @param fit - from `fitShock`
 * @public
 */
export function tellingOf(fit: Pick<ShockFit, 'problem' | 'parameters' | 'standardDeviations'>): Telling {
  requireShape(
    { fit },
    { fit: { problem: measuredShockProblemShape, parameters: listOf(''), standardDeviations: listOf('') } },
  );
  const { problem, parameters, standardDeviations } = fit;
  const singularValues = informationBeyondPrior(readingSlopes(problem, parameters));
  return {
    singularValues,
    combinations: singularValues.filter((value) => value > 1).length,
    shrinkage: problem.unknowns.map(({ quantity, prior }, index) => ({
      quantity,
      ratio: prior === undefined ? 0 : standardDeviations[index]! / prior.standardDeviation,
    })),
  };
}
