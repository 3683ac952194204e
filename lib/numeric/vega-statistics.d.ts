// The package has no types of its own.
declare module 'vega-statistics' {
  /** Probability that a normal variable is below a value. */
  export function cumulativeNormal(value: number, mean?: number, standardDeviation?: number): number;
  /** Value below which a normal variable lies with a probability. */
  export function quantileNormal(probability: number, mean?: number, standardDeviation?: number): number;
}
