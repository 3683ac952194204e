import { Matrix, SingularValueDecomposition } from 'ml-matrix';
import { differenceJacobian, type Residuals } from '../least-squares/difference-jacobian.js';
import type { Proposal } from './importance-sampling.js';

/** Steps of the second differences, in standard deviations: wide, so that the bend over the whole posterior counts. */
const step = 1.5;

/**
 * A proposal that bends with the residuals: normal along the directions of the Jacobian, and each direction that is known sharply is moved with the
 * squares and products of those known less, so that its residual stays what the linear model says. The map is triangular with ones on the diagonal,
 * so that its determinant is constant.
 *
 * Where only a product of two numbers is known sharply, most draws of a plain normal proposal miss the thin bent sheet on which the posterior lies.
 *
 * @param residuals - over their standard uncertainties, with the priors' among them
 * @param mode - parameters where their squares are least
 * @param sizes - usual change of each parameter, above 0
 */
export function curvedProposal(
  residuals: Residuals,
  mode: readonly number[],
  sizes: readonly number[],
): Proposal {
  const count = mode.length;
  const centre = residuals(mode);
  const columns = differenceJacobian(residuals, mode, sizes, centre);
  const jacobian = new Matrix(
    Array.from(centre, (_, row) => columns.map((column, index) => (column[row] ?? 0) * (sizes[index] ?? 1))),
  );
  const decomposition = new SingularValueDecomposition(jacobian, { autoTranspose: true });
  const { diagonal, leftSingularVectors, rightSingularVectors } = decomposition;
  // From the least known direction to the best known.
  const order = diagonal
    .map((_, index) => index)
    .sort((first, second) => (diagonal[first] ?? 0) - (diagonal[second] ?? 0));
  const axes = order.map((index) =>
    mode.map((_, row) => ((sizes[row] ?? 1) * rightSingularVectors.get(row, index)) / (diagonal[index] ?? 1)),
  );
  const moved = (steps: readonly (readonly [number, number])[]): ArrayLike<number> =>
    residuals(
      mode.map((value, row) => steps.reduce((sum, [axis, by]) => sum + by * (axes[axis]?.[row] ?? 0), value)),
    );
  const along = (direction: number, values: ArrayLike<number>): number => {
    let sum = 0;
    for (let row = 0; row < values.length; row++) {
      sum += leftSingularVectors.get(row, order[direction] ?? 0) * (values[row] ?? 0);
    }
    return sum;
  };
  const singles = axes.map((_, axis) => ({ up: moved([[axis, step]]), down: moved([[axis, -step]]) }));
  /** Second derivative of the residuals along two axes, seen in each direction that is better known than both. */
  const bends: {
    readonly direction: number;
    readonly first: number;
    readonly second: number;
    readonly bend: number;
  }[] = [];
  const add = (first: number, second: number, difference: (direction: number) => number): void => {
    for (let direction = Math.max(first, second) + 1; direction < count; direction++) {
      const bend = difference(direction) / step ** 2;
      if (Number.isFinite(bend)) bends.push({ direction, first, second, bend });
    }
  };
  singles.forEach(({ up, down }, axis) => {
    add(
      axis,
      axis,
      (direction) => (along(direction, up) + along(direction, down) - 2 * along(direction, centre)) / 2,
    );
    for (let other = 0; other < axis; other++) {
      const both = moved([
        [axis, step],
        [other, step],
      ]);
      const alone = singles[other]?.up ?? centre;
      add(
        axis,
        other,
        (direction) =>
          along(direction, both) - along(direction, up) - along(direction, alone) + along(direction, centre),
      );
    }
  });
  bends.sort((first, second) => first.direction - second.direction);
  return (normal) => {
    const places = Float64Array.from(normal);
    for (const { direction, first, second, bend } of bends) {
      places[direction] = (places[direction] ?? 0) - bend * (places[first] ?? 0) * (places[second] ?? 0);
    }
    return mode.map((value, row) => {
      let sum = value;
      for (let axis = 0; axis < count; axis++) sum += (places[axis] ?? 0) * (axes[axis]?.[row] ?? 0);
      return sum;
    });
  };
}
