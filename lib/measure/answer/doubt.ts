import { CholeskyDecomposition, LuDecomposition, Matrix } from 'ml-matrix';
import { FitError } from '../../numeric/least-squares/fit-error.js';

/**
 * Doubt of parameters as a square root `S` of their covariance `S Sᵀ`: rounding leaves no variance below 0, and what is known very surely does not drown the rest.
 */
export type Doubt = Matrix;

function notFinite(): FitError {
  return new FitError('not-finite', 'the law has no value, or no slope, at the parameters to judge at', []);
}

/** Doubt after what is known, from its information matrix; the rows are scaled to a diagonal of ones first. */
export function doubtOf(information: Matrix): Doubt {
  if (information.to1DArray().some((value) => !Number.isFinite(value))) throw notFinite();
  const sizes = information.diagonal().map((value) => 1 / Math.sqrt(value));
  const open = new FitError('rank-deficient', 'readings and priors leave a parameter open', []);
  if (!sizes.every(Number.isFinite)) throw open;
  const column = Matrix.columnVector(sizes);
  const decomposition = new CholeskyDecomposition(Matrix.mul(information, column.mmul(column.transpose())));
  if (!decomposition.isPositiveDefinite()) throw open;
  const inverse = new LuDecomposition(decomposition.lowerTriangularMatrix).solve(Matrix.eye(sizes.length));
  return inverse.transpose().mulColumnVector(sizes);
}

/**
 * Doubt after further readings, one row of slopes over its uncertainty after the other: `S − S φ φᵀ b/(1 + √b)` with `φ = Sᵀ h` and `b = 1/(1 + φᵀ φ)`.
 *
 * @see Potter's square-root form of the update: Bierman, Factorization Methods for Discrete Sequential Estimation (1977), ch. II (from memory)
 */
export function afterReadings(doubt: Doubt, rows: Matrix): Doubt {
  let left = doubt;
  for (let row = 0; row < rows.rows; row++) {
    const along = left.transpose().mmul(rows.getRowVector(row).transpose());
    const share = 1 / (1 + along.transpose().mmul(along).get(0, 0));
    const taken = left
      .mmul(along)
      .mmul(along.transpose())
      .mul(share / (1 + Math.sqrt(share)));
    left = Matrix.sub(left, taken);
  }
  return left;
}

/** Square of the relative standard deviation of the force, mean over the speeds. */
export function forceVariance(doubt: Doubt, gradients: Matrix): number {
  const variance = gradients.mmul(doubt).norm('frobenius') ** 2 / gradients.rows;
  if (!Number.isFinite(variance)) throw notFinite();
  return variance;
}
