/** Interval of 95 % of a part that was counted: Wilson, J. Am. Stat. Assoc. 22 (1927) 209. */
export function wilson(hits: number, number: number): readonly [number, number] {
  const squared = 1.959964 ** 2;
  const middle = (hits + squared / 2) / (number + squared);
  const half = Math.sqrt(squared * ((hits * (number - hits)) / number + squared / 4)) / (number + squared);
  return [middle - half, middle + half];
}
