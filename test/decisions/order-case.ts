import { damperModel } from '../../lib/damper/damper-model.js';
import type { Bottle } from '../../lib/decisions/day/fill-choice.js';
import { dampingOf } from '../../lib/decisions/match/damping-mismatch.js';
import { speedRange } from '../../lib/decisions/match/speed-weights.js';
import type { OrderProblem } from '../../lib/decisions/order/order-problem.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { fluid, shockWith, silicone } from './demo.js';

const weights = speedRange(0.05, 1, 3);

/** An invented shop list of plain silicones by label [mm²/s] and price. */
export function bottles(...labels: readonly (readonly [number, number])[]): readonly Bottle[] {
  return labels.map(([viscosity, price]) => ({
    name: `${viscosity}`,
    oil: createOil(silicone(viscosity)),
    volume: 60e-6,
    price,
  }));
}

/** An invented order for two shocks at four temperatures. */
export function problem(changes: Partial<OrderProblem>): OrderProblem {
  const damper = shockWith(4, 1.2e-3);
  return {
    bottles: bottles([150, 6], [200, 7], [300, 8], [350, 5], [450, 8], [600, 9], [900, 4]),
    builds: [
      {
        name: 'front',
        damper,
        wanted: dampingOf(damperModel(damper, fluid(350)), weights),
        fillVolume: 7e-6,
      },
      {
        name: 'rear',
        damper: shockWith(3, 1.2e-3),
        wanted: dampingOf(damperModel(shockWith(3, 1.2e-3), fluid(250)), weights),
        fillVolume: 8e-6,
      },
    ],
    temperatures: [278.15, 288.15, 298.15, 308.15],
    tolerance: 0.1,
    parts: 4,
    fills: 4,
    ...changes,
  };
}
