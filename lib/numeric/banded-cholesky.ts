import { dot } from './vectors.js';

/**
 * Cholesky factor of a symmetric positive definite matrix of narrow band, in place. Row `i` holds its entries from column
 * `i − width + 1` to the diagonal, so that the diagonal stands last.
 *
 * @param matrix - `size` rows of `width` entries
 * @see Golub & Van Loan, Matrix Computations, sec. 4.3 (from memory)
 */
export function factorBand(matrix: Float64Array, size: number, width: number): void {
  for (let row = 0; row < size; row++) {
    const first = Math.max(0, row - width + 1);
    const rowStart = row * width + width - 1 - row;
    for (let column = first; column <= row; column++) {
      const columnStart = column * width + width - 1 - column;
      const from = Math.max(first, column - width + 1);
      const rest =
        matrix[rowStart + column]! - dot(matrix, rowStart + from, matrix, columnStart + from, column - from);
      matrix[rowStart + column] = column === row ? Math.sqrt(rest) : rest / matrix[columnStart + column]!;
    }
  }
}

/** Solves with the factor: first half of the way, `L y = b`, in place. */
export function solveLower(
  factor: Float64Array,
  size: number,
  width: number,
  x: Float64Array,
  from = 0,
): void {
  for (let row = 0; row < size; row++) {
    const first = Math.max(0, row - width + 1);
    const rowStart = row * width + width - 1 - row;
    const known = dot(factor, rowStart + first, x, from + first, row - first);
    x[from + row] = (x[from + row]! - known) / factor[rowStart + row]!;
  }
}

/** Solves `A x = b` with the factor of `A`, in place. */
export function solveBand(
  factor: Float64Array,
  size: number,
  width: number,
  x: Float64Array,
  from = 0,
): void {
  solveLower(factor, size, width, x, from);
  for (let row = size - 1; row >= 0; row--) {
    const rowStart = row * width + width - 1 - row;
    const value = x[from + row]! / factor[rowStart + row]!;
    x[from + row] = value;
    for (let column = Math.max(0, row - width + 1); column < row; column++) {
      x[from + column] = x[from + column]! - value * factor[rowStart + column]!;
    }
  }
}
