import { Matrix } from 'ml-matrix';
import { refuse, requireFinite, requireList } from '../../base/checks.js';
import { call, listOf, requireShape } from '../../base/shape.js';
import { differenceJacobian } from '../../numeric/least-squares/difference-jacobian.js';

/**
 * Results computed from inputs that are not exact.
 *
 * @public
 */
export interface Propagated {
  readonly values: readonly number[];
  readonly uncertainties: readonly number[];
  /** Covariance of the results, one row a result. */
  readonly covariance: readonly (readonly number[])[];
}

/**
 * Carries uncertainties through a calculation, to first order.
 *
 * @param calculation - from inputs to results
 * @param inputs - best estimates
 * @param covariance - of the inputs, one row an input; or their standard uncertainties, where they are independent
 * @see law of propagation: JCGM 100:2008 (GUM), 5.1.2 and 5.2.2
 * @public
 */
export function propagate(
  calculation: (inputs: readonly number[]) => readonly number[],
  inputs: readonly number[],
  covariance: readonly number[] | readonly (readonly number[])[],
): Propagated {
  requireShape({ calculation, inputs }, { calculation: call, inputs: listOf('') });
  requireList(covariance, 'covariance');
  covariance.forEach((row, index) => {
    if (typeof row === 'number') {
      requireFinite(row, `covariance[${index}]`, '');
      return;
    }
    requireShape(row, listOf(''), `covariance[${index}]`);
    if (row.length !== inputs.length)
      refuse(row.length, `covariance[${index}].length`, '', `${inputs.length}, as many as inputs`);
  });
  const values = calculation(inputs);
  const matrix = Matrix.zeros(inputs.length, inputs.length);
  covariance.forEach((row, index) => {
    if (typeof row === 'number') matrix.set(index, index, row * row);
    else row.forEach((value, column) => void matrix.set(index, column, value));
  });
  const sizes = inputs.map((_, index) => Math.sqrt(matrix.get(index, index)));
  const columns = differenceJacobian(calculation, inputs, sizes, values);
  const slopes = new Matrix(values.map((_, row) => columns.map((column) => column[row]!)));
  const result = slopes.mmul(matrix).mmul(slopes.transpose());
  return { values, uncertainties: result.diagonal().map(Math.sqrt), covariance: result.to2DArray() };
}

/**
 * Degrees of freedom of a combined uncertainty.
 *
 * @param parts - standard uncertainty of each part, in the unit of the result, and its degrees of freedom
 * @see Welch-Satterthwaite: JCGM 100:2008 (GUM), G.4.1
 * @public
 */
export function effectiveDegreesOfFreedom(
  parts: readonly { readonly uncertainty: number; readonly degreesOfFreedom: number }[],
): number {
  requireShape({ parts }, { parts: listOf({ uncertainty: '', degreesOfFreedom: '' }) });
  const square = parts.reduce((sum, { uncertainty }) => sum + uncertainty ** 2, 0);
  const fourth = parts.reduce((sum, part) => sum + part.uncertainty ** 4 / part.degreesOfFreedom, 0);
  return square ** 2 / fourth;
}
