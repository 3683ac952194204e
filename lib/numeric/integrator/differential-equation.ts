/**
 * A system of ordinary differential equations, `dy/dt = f(t, y)`. The functions write into what they are given and keep nothing, so that
 * a step allocates nothing.
 */
export interface DifferentialEquation {
  /** How many unknowns. */
  readonly size: number;
  /** Writes the rates at a time and state. Outside its range it writes NaN: the step is then tried shorter. */
  readonly rates: (time: number, state: Float64Array, rates: Float64Array) => void;
  /**
   * Writes the slopes of the rates: over the state, row by row (rate i over unknown j at `i · size + j`), and over time. Found by
   * differences where absent, which costs `size + 1` calls of `rates`.
   */
  readonly slopes?: (
    time: number,
    state: Float64Array,
    overState: Float64Array,
    overTime: Float64Array,
    rates: Float64Array,
  ) => void;
  /** Size of each unknown below which its difference does not shrink; 1e-3 where absent. Of no use with `slopes`. */
  readonly scales?: ArrayLike<number>;
}

const differenceShare = 1e-8;

/** Slopes of the rates by one-sided differences. */
export function differenceSlopes(
  equation: DifferentialEquation,
  time: number,
  state: Float64Array,
  rates: Float64Array,
  overState: Float64Array,
  overTime: Float64Array,
  step: number,
  moved: Float64Array,
): void {
  const { size, scales } = equation;
  for (let j = 0; j < size; j++) {
    const at = state[j] as number;
    const wanted = at + differenceShare * Math.max(Math.abs(at), scales?.[j] ?? 1e-3);
    // The difference as the machine holds it.
    const increment = wanted - at;
    state[j] = wanted;
    equation.rates(time, state, moved);
    state[j] = at;
    for (let i = 0; i < size; i++) {
      overState[i * size + j] = ((moved[i] as number) - (rates[i] as number)) / increment;
    }
  }
  const later = time + Math.max(differenceShare * Math.abs(time), 1e-4 * step);
  equation.rates(later, state, moved);
  for (let i = 0; i < size; i++) {
    overTime[i] = ((moved[i] as number) - (rates[i] as number)) / (later - time);
  }
}
