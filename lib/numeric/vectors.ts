/** Sum of products of two stretches of numbers. */
export function dot(a: Float64Array, from: number, b: Float64Array, bFrom: number, count: number): number {
  let sum = 0;
  for (let i = 0; i < count; i++) sum += a[from + i]! * b[bFrom + i]!;
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
    target[from + i] = target[from + i]! + factor * source[sourceFrom + i]!;
  }
}
