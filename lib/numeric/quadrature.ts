/**
 * Integral of a smooth function by Simpson's rule.
 *
 * @param f - the integrand; any unit
 * @param low - lower end
 * @param high - upper end
 * @param intervals - even number of intervals, 2 or more
 * @see Abramowitz & Stegun, Handbook of Mathematical Functions, Eq. 25.4.6
 */
export function simpson(f: (x: number) => number, low: number, high: number, intervals: number): number {
  const step = (high - low) / intervals;
  let sum = f(low) + f(high);
  for (let i = 1; i < intervals; i++) sum += (i % 2 === 1 ? 4 : 2) * f(low + i * step);
  return (sum * step) / 3;
}
