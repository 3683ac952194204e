/** Halvings after which a difference stands to the last digit. */
const halvings = 60;

/** Part of all pairs of the sizes, in their order, of which the larger is at most so many times the smaller. */
function shareWithin(sizes: Float64Array, factor: number): number {
  let [pairs, first] = [0, 0];
  for (let second = 1; second < sizes.length; second++) {
    while (sizes[second]! > factor * sizes[first]!) first++;
    pairs += second - first;
  }
  return (2 * pairs) / (sizes.length * (sizes.length - 1));
}

/**
 * Difference of the larger over the smaller, as a part, below which a part of all pairs of forces lies: every force is paired with every other.
 *
 * @param forces - two or more [N], none of them 0
 * @param part - of the pairs, above 0 to 1
 */
export function pairsApart(forces: ArrayLike<number>, part: number): number {
  const sizes = Float64Array.from(forces, Math.abs).sort();
  let [low, high] = [0, sizes[sizes.length - 1]! / sizes[0]! - 1];
  for (let step = 0; step < halvings && low < high; step++) {
    const middle = (low + high) / 2;
    if (shareWithin(sizes, 1 + middle) >= part) high = middle;
    else low = middle;
  }
  return high;
}
