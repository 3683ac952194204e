import { Matrix, SingularValueDecomposition } from 'ml-matrix';
import { differenceJacobian, type Residuals } from '../least-squares/difference-jacobian.js';
import type { Proposal } from './importance-sampling.js';

/** Steps of the differences, in standard deviations: wide, so that the bend over the whole posterior counts. */
const step = 1.5;

/** A bend below this, in standard deviations of a residual, is left to the weights of the draws. */
const smallestBend = 1e-3;

/**
 * A proposal that bends with the residuals: normal along the directions of the Jacobian, and each direction that is known sharply is moved with the
 * products of two and three of those known less, so that its residual stays what the linear model says. The map is triangular with ones on the diagonal,
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
    Array.from(centre, (_, row) => columns.map((column, index) => column[row]! * sizes[index]!)),
  );
  const decomposition = new SingularValueDecomposition(jacobian, { autoTranspose: true });
  const { diagonal, leftSingularVectors, rightSingularVectors } = decomposition;
  // From the least known direction to the best known.
  const order = diagonal
    .map((_, index) => index)
    .sort((first, second) => diagonal[first]! - diagonal[second]!);
  const axes = order.map((index) =>
    mode.map((_, row) => (sizes[row]! * rightSingularVectors.get(row, index)) / diagonal[index]!),
  );
  const moved = (steps: readonly (readonly [number, number])[]): ArrayLike<number> =>
    residuals(
      mode.map((value, row) => steps.reduce((sum, [axis, by]) => sum + by * axes[axis]![row]!, value)),
    );
  const seen = (direction: number, values: ArrayLike<number>): number => {
    let sum = 0;
    for (let row = 0; row < values.length; row++) {
      sum += leftSingularVectors.get(row, order[direction]!) * values[row]!;
    }
    return sum;
  };
  const singles = axes.map((_, axis) => ({ up: moved([[axis, step]]), down: moved([[axis, -step]]) }));
  /** How the residuals bend along some axes, seen in each direction that is better known than all of them: a factor on the product of the places. */
  const bends: { readonly direction: number; readonly along: readonly number[]; readonly bend: number }[] =
    [];
  const add = (along: readonly number[], difference: (direction: number) => number): void => {
    for (let direction = Math.max(...along) + 1; direction < count; direction++) {
      const bend = difference(direction) / step ** along.length;
      if (Math.abs(bend) > smallestBend && Number.isFinite(bend)) bends.push({ direction, along, bend });
    }
  };
  /** Half the sum or half the difference of two residuals in a direction: what is even or odd in the step. */
  const even = (direction: number, up: ArrayLike<number>, down: ArrayLike<number>): number =>
    (seen(direction, up) + seen(direction, down)) / 2;
  const odd = (direction: number, up: ArrayLike<number>, down: ArrayLike<number>): number =>
    (seen(direction, up) - seen(direction, down)) / 2;
  singles.forEach(({ up, down }, axis) => {
    add([axis, axis], (direction) => even(direction, up, down) - seen(direction, centre));
    // The slope itself is nothing in any other direction.
    add([axis, axis, axis], (direction) => odd(direction, up, down));
    singles.slice(0, axis).forEach((second, other) => {
      const corner = (one: number, two: number): ArrayLike<number> =>
        moved([
          [axis, one * step],
          [other, two * step],
        ]);
      const [both, neither, first, last] = [corner(1, 1), corner(-1, -1), corner(1, -1), corner(-1, 1)];
      add([axis, other], (direction) => (even(direction, both, neither) - even(direction, first, last)) / 2);
      add(
        [axis, other, other],
        (direction) =>
          (odd(direction, both, neither) + odd(direction, first, last)) / 2 - odd(direction, up, down),
      );
      add(
        [axis, axis, other],
        (direction) =>
          (odd(direction, both, neither) - odd(direction, first, last)) / 2 -
          odd(direction, second.up, second.down),
      );
    });
  });
  bends.sort((first, second) => first.direction - second.direction);
  return (normal) => {
    const places = Float64Array.from(normal);
    for (const { direction, along, bend } of bends) {
      let product = bend;
      for (const axis of along) product *= places[axis]!;
      places[direction] = places[direction]! - product;
    }
    return mode.map((value, row) => {
      let sum = value;
      for (let axis = 0; axis < count; axis++) sum += places[axis]! * axes[axis]![row]!;
      return sum;
    });
  };
}
