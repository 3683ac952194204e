/** Sum of products of two stretches of numbers. */
export function dot(a: Float64Array, from: number, b: Float64Array, bFrom: number, count: number): number {
  let sum = 0;
  for (let i = 0; i < count; i++) sum += (a[from + i] ?? 0) * (b[bFrom + i] ?? 0);
  return sum;
}

/** Adds a multiple of a stretch of numbers to another, in place. */
export function addScaled(
  target: Float64Array,
  from: number,
  source: Float64Array,
  sourceFrom: number,
  count: number,
  factor: number,
): void {
  for (let i = 0; i < count; i++) {
    target[from + i] = (target[from + i] ?? 0) + factor * (source[sourceFrom + i] ?? 0);
  }
}
