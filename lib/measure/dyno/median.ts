/** The middle of some values, the upper one of two; NaN of none. */
export function median(values: readonly number[]): number {
  return [...values].sort((first, second) => first - second)[Math.floor(values.length / 2)] ?? Number.NaN;
}
