/** The middle of 1 or more values, the upper one of two. */
export function median(values: readonly number[]): number {
  return [...values].sort((first, second) => first - second)[Math.floor(values.length / 2)]!;
}
