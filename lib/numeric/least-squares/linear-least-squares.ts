import { Matrix, QrDecomposition } from 'ml-matrix';
import { refuse, requireCount } from '../../base/checks.js';
import { listOf, requireShape } from '../../base/shape.js';
import { parameterCovariance } from './parameter-covariance.js';

/**
 * A linear fit.
 *
 * @public
 */
export interface LinearFit {
  readonly coefficients: readonly number[];
  readonly standardDeviations: readonly number[];
  /** Covariance of the coefficients, one row a coefficient. */
  readonly covariance: readonly (readonly number[])[];
  readonly residualSumOfSquares: number;
  readonly residualStandardDeviation: number;
  readonly degreesOfFreedom: number;
}

/**
 * Linear least squares by QR, with the scatter taken from the residuals.
 *
 * @param rows - one row of terms a reading, as many terms as coefficients
 * @param values - the readings
 * @throws InputError unless there are more readings than coefficients, and as many terms in each row; FitError where the terms are not independent
 * @public
 */
export function linearLeastSquares(
  rows: readonly (readonly number[])[],
  values: readonly number[],
): LinearFit {
  requireShape({ rows, values }, { rows: listOf(listOf('')), values: listOf('') });
  const [{ length: terms } = []] = rows;
  requireCount(terms, 'rows[0].length');
  for (const [index, { length }] of rows.entries())
    if (length !== terms)
      refuse(length, `rows[${index}].length`, '', `${terms}, as many as in the first row`);
  const design = new Matrix(rows.map((row) => [...row]));
  const degreesOfFreedom = values.length - design.columns;
  if (degreesOfFreedom < 1 || rows.length !== values.length) {
    refuse(values.length, 'values', '', `more than ${design.columns}`);
  }
  // Before the solution, since QR alone does not tell a rank that is only nearly full.
  const covariance = parameterCovariance(design, []);
  const target = Matrix.columnVector([...values]);
  const solution = new QrDecomposition(design).solve(target);
  const residualSumOfSquares = Matrix.sub(target, design.mmul(solution)).norm() ** 2;
  const residualStandardDeviation = Math.sqrt(residualSumOfSquares / degreesOfFreedom);
  covariance.mul(residualStandardDeviation ** 2);
  return {
    coefficients: solution.getColumn(0),
    standardDeviations: covariance.diagonal().map(Math.sqrt),
    covariance: covariance.to2DArray(),
    residualSumOfSquares,
    residualStandardDeviation,
    degreesOfFreedom,
  };
}
