import { Matrix } from 'ml-matrix';
import { refuse, requireCount, requireEach, requireNotNegative, requirePositive } from '../../base/checks.js';
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
 * @throws InputError unless there is an uncertainty, or a row as long, for each input, and where no inputs have such a covariance
 * @see law of propagation: JCGM 100:2008 (GUM), 5.1.2 and 5.2.2
 * @public
 */
export function propagate(
  calculation: (inputs: readonly number[]) => readonly number[],
  inputs: readonly number[],
  covariance: readonly number[] | readonly (readonly number[])[],
): Propagated {
  requireShape({ calculation, inputs }, { calculation: call, inputs: listOf('') });
  requireCount(inputs.length, 'inputs.length');
  const asMany = (list: { readonly length: number }, field: string): void => {
    if (list.length !== inputs.length)
      refuse(list.length, `${field}.length`, '', `${inputs.length}, as many as inputs`);
  };
  requireEach<unknown>(covariance, 'covariance', (row, field) => {
    if (typeof row === 'number') return requireNotNegative(row, field, '');
    requireShape(row, listOf(''), field);
    asMany(row as readonly number[], field);
  });
  asMany(covariance, 'covariance');
  const matrix = Matrix.zeros(inputs.length, inputs.length);
  for (const [index, row] of covariance.entries()) {
    if (typeof row === 'number') matrix.set(index, index, row * row);
    else for (const [column, value] of row.entries()) matrix.set(index, column, value);
    requireNotNegative(matrix.get(index, index), `covariance[${index}][${index}]`, '');
  }
  const values = calculation(inputs);
  requireShape(values, listOf(''), 'calculation(inputs)');
  const sizes = inputs.map((_, index) => Math.sqrt(matrix.get(index, index)));
  const columns = differenceJacobian(calculation, inputs, sizes, values);
  const slopes = new Matrix(Array.from(values, (_, row) => columns.map((column) => column[row]!)));
  const result = slopes.mmul(matrix).mmul(slopes.transpose());
  const uncertainties = result.diagonal().map((variance, row) => {
    const most = sizes.reduce((sum, size, column) => sum + Math.abs(slopes.get(row, column) * size), 0);
    // Inputs that cancel leave a nought with the rounding of what cancelled; more below it no inputs have.
    if (variance < -1e-9 * most * most) refuse(variance, 'variance that covariance gives', '', '0 or more');
    return Math.sqrt(Math.max(variance, 0));
  });
  return { values, uncertainties, covariance: result.to2DArray() };
}

/**
 * Degrees of freedom of a combined uncertainty.
 *
 * @param parts - standard uncertainty of each part, in the unit of the result, and its degrees of freedom
 * @throws InputError for an uncertainty below 0, degrees of freedom not above 0, and where no part has an uncertainty
 * @see Welch-Satterthwaite: JCGM 100:2008 (GUM), G.4.1
 * @public
 */
export function effectiveDegreesOfFreedom(
  parts: readonly { readonly uncertainty: number; readonly degreesOfFreedom: number }[],
): number {
  requireShape({ parts }, { parts: listOf({ uncertainty: '', degreesOfFreedom: '' }) });
  for (const [index, { uncertainty, degreesOfFreedom }] of parts.entries()) {
    requireNotNegative(uncertainty, `parts[${index}].uncertainty`, '');
    requirePositive(degreesOfFreedom, `parts[${index}].degreesOfFreedom`, '');
  }
  const largest = Math.max(0, ...parts.map(({ uncertainty }) => uncertainty));
  requirePositive(largest, 'largest uncertainty of parts', '');
  // In parts of the largest, whose fourth power then is a number.
  const shares = parts.map(({ uncertainty }) => uncertainty / largest);
  const square = shares.reduce((sum, share) => sum + share ** 2, 0);
  const fourth = shares.reduce((sum, share, index) => sum + share ** 4 / parts[index]!.degreesOfFreedom, 0);
  return square ** 2 / fourth;
}
