/**
 * One step taken, with the polynomial through it. The arrays are used again for the next step: copy what is to be kept.
 *
 * @public
 */
export interface Step {
  /** Time at which the step begins [s]. */
  readonly time: number;
  /** How long it is [s], before an event cuts it. */
  readonly length: number;
  /** Part of it that holds, 0 to 1: less than 1 where an event ended it. */
  readonly covered: number;
  /** Whether an event ended it. */
  readonly cut: boolean;
  readonly start: Float64Array;
  readonly end: Float64Array;
  /** Coefficients of the second to fourth power, row by row. */
  readonly dense: Float64Array;
}

/**
 * State inside a step, at a share of its length: `(1 − s) y₀ + s (y₁ + (1 − s)(D₂ + s (D₃ + s D₄)))`.
 *
 * @param step - from the integrator
 * @param share - 0 to 1
 * @param state - filled with the state
 * @see Steinebach, BIT Numer. Math. 63 (2023) 27, dense output of order 4
 * @public
 */
export function stateWithin(step: Step, share: number, state: Float64Array): void {
  const { start, end, dense } = step;
  const size = start.length;
  const left = 1 - share;
  for (let k = 0; k < size; k++) {
    const bend =
      (dense[k] as number) + share * ((dense[size + k] as number) + share * (dense[2 * size + k] as number));
    state[k] = left * (start[k] as number) + share * ((end[k] as number) + left * bend);
  }
}
