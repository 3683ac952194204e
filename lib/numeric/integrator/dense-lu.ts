/**
 * Splits a small matrix into triangles in place, with row pivots: Golub & Van Loan, Matrix Computations, sec. 3.4 (from memory).
 * Written for up to a dozen unknowns, where a general library spends its time elsewhere.
 *
 * @param matrix - row by row; holds the triangles afterwards
 * @param pivots - filled with the row taken at each step
 * @returns whether the matrix has an inverse
 */
export function factorise(matrix: Float64Array, pivots: Int32Array, size: number): boolean {
  for (let k = 0; k < size; k++) {
    let best = k;
    for (let i = k + 1; i < size; i++) {
      if (Math.abs(matrix[i * size + k] as number) > Math.abs(matrix[best * size + k] as number)) best = i;
    }
    pivots[k] = best;
    const pivot = matrix[best * size + k] as number;
    // Written so that a pivot that is not a number counts too.
    if (!(Math.abs(pivot) > 0 && Math.abs(pivot) < Number.POSITIVE_INFINITY)) return false;
    if (best !== k) {
      for (let j = 0; j < size; j++) {
        const kept = matrix[k * size + j] as number;
        matrix[k * size + j] = matrix[best * size + j] as number;
        matrix[best * size + j] = kept;
      }
    }
    for (let i = k + 1; i < size; i++) {
      const factor = (matrix[i * size + k] as number) / pivot;
      matrix[i * size + k] = factor;
      if (factor === 0) continue;
      for (let j = k + 1; j < size; j++) {
        matrix[i * size + j] = (matrix[i * size + j] as number) - factor * (matrix[k * size + j] as number);
      }
    }
  }
  return true;
}

/** Solves with the triangles of {@link factorise}; the right-hand side from `offset` on becomes the solution. */
export function solveFactorised(
  matrix: Float64Array,
  pivots: Int32Array,
  size: number,
  side: Float64Array,
  offset = 0,
): void {
  for (let k = 0; k < size; k++) {
    const row = offset + (pivots[k] as number);
    const value = side[row] as number;
    side[row] = side[offset + k] as number;
    side[offset + k] = value;
  }
  for (let i = 1; i < size; i++) {
    let sum = side[offset + i] as number;
    for (let j = 0; j < i; j++) sum -= (matrix[i * size + j] as number) * (side[offset + j] as number);
    side[offset + i] = sum;
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = side[offset + i] as number;
    for (let j = i + 1; j < size; j++) {
      sum -= (matrix[i * size + j] as number) * (side[offset + j] as number);
    }
    side[offset + i] = sum / (matrix[i * size + i] as number);
  }
}
