import { addScaled } from './vectors.js';

/** Inverse of a small full matrix by Gauss–Jordan with row exchange; infinite or no numbers where it is singular. */
export function inverseMatrix(matrix: Float64Array, size: number): Float64Array {
  const left = matrix.slice();
  const right = new Float64Array(size * size);
  for (let row = 0; row < size; row++) right[row * size + row] = 1;
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let row = column + 1; row < size; row++) {
      const larger = Math.abs(left[row * size + column]!) > Math.abs(left[pivot * size + column]!);
      if (larger) pivot = row;
    }
    for (const half of [left, right]) {
      if (pivot === column) break;
      const kept = half.slice(column * size, (column + 1) * size);
      half.copyWithin(column * size, pivot * size, (pivot + 1) * size);
      half.set(kept, pivot * size);
    }
    const scale = 1 / left[column * size + column]!;
    for (let index = column * size; index < (column + 1) * size; index++) {
      left[index] = left[index]! * scale;
      right[index] = right[index]! * scale;
    }
    for (let row = 0; row < size; row++) {
      const factor = left[row * size + column]!;
      if (row === column || factor === 0) continue;
      addScaled(left, row * size, left, column * size, size, -factor);
      addScaled(right, row * size, right, column * size, size, -factor);
    }
  }
  return right;
}
