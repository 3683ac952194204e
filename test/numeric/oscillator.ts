import type { DifferentialEquation } from '../../lib/numeric/integrator/differential-equation.js';

/** Place and speed of a unit mass on a unit spring: period 2π. */
export const oscillator: DifferentialEquation = {
  size: 2,
  rates: (_time, [place, speed], rates) => {
    rates[0] = speed as number;
    rates[1] = -(place as number);
  },
};
