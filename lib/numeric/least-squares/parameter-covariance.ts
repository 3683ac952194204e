import { Matrix, SingularValueDecomposition } from 'ml-matrix';
import { FitError } from './fit-error.js';

/** Part of the largest singular value below which one counts as zero. */
const rankTolerance = 1e-12;

/** A column that holds less than this part of the null direction has nothing to do with it. */
const shareOfNullDirection = 0.1;

/**
 * Covariance of the parameters of a least-squares fit, `(JᵀJ)⁻¹`, by the singular values of the Jacobian with columns of length 1.
 *
 * @param jacobian - slopes of the residuals, one row a residual; residuals over their standard uncertainties
 * @param parameters - where, for the error
 * @returns the covariance; times the square of the residual standard deviation where the uncertainties are not known
 * @throws FitError where the rank is below the number of parameters, with the indices of those that cannot be told apart
 * @see Press et al., Numerical Recipes, sec. 15.4
 */
export function parameterCovariance(jacobian: Matrix, parameters: readonly number[]): Matrix {
  const count = jacobian.columns;
  const lengths = Array.from({ length: count }, (_, column) => jacobian.getColumnVector(column).norm());
  const silent = lengths.flatMap((length, column) => (length > 0 ? [] : [column]));
  if (silent.length > 0) throw rankError(parameters, silent);
  const scaled = Matrix.zeros(jacobian.rows, count);
  for (let row = 0; row < jacobian.rows; row++) {
    for (let column = 0; column < count; column++) {
      scaled.set(row, column, jacobian.get(row, column) / lengths[column]!);
    }
  }
  const decomposition = new SingularValueDecomposition(scaled, { autoTranspose: true });
  const values = decomposition.diagonal;
  const directions = decomposition.rightSingularVectors;
  const least = rankTolerance * Math.max(...values);
  const lost = values.findIndex((value) => !(value > least));
  if (lost >= 0 || values.length < count) {
    const direction = directions.getColumn(lost >= 0 ? lost : values.length - 1);
    throw rankError(
      parameters,
      direction.flatMap((share, column) => (Math.abs(share) > shareOfNullDirection ? [column] : [])),
    );
  }
  const covariance = Matrix.zeros(count, count);
  for (let first = 0; first < count; first++) {
    for (let second = 0; second < count; second++) {
      let sum = 0;
      for (let index = 0; index < count; index++) {
        sum += (directions.get(first, index) * directions.get(second, index)) / values[index]! ** 2;
      }
      covariance.set(first, second, sum / (lengths[first]! * lengths[second]!));
    }
  }
  return covariance;
}

function rankError(parameters: readonly number[], indices: readonly number[]): FitError {
  const message = `the readings cannot tell parameter ${indices.join(' from ')} (counted from 0)`;
  return new FitError('rank-deficient', message, parameters, indices);
}

/**
 * How much readings say beyond what was known: the singular values of the slopes of the residuals times the prior standard deviations. Each
 * value above 1 is one combination of parameters that the readings know better than the prior.
 *
 * @param slopes - slopes of the readings' residuals alone, columns times prior standard deviation
 */
export function informationBeyondPrior(slopes: Matrix): readonly number[] {
  return new SingularValueDecomposition(slopes, { autoTranspose: true }).diagonal;
}
