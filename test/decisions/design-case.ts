import type { DesignProblem } from '../../lib/decisions/design/design-problem.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { shockWith, silicone } from './demo.js';

/** An invented search whose wanted forces differ by direction. */
export const design: DesignProblem = {
  damper: shockWith(4, 1.2e-3),
  counts: [2, 3, 4, 5, 6, 8],
  drills: [1.0, 1.1, 1.2, 1.3, 1.4].map((drill) => drill * 1e-3),
  tapers: [0, 0.1e-3],
  thicknesses: [2e-3, 2.5e-3],
  oils: [200, 350, 500].map((viscosity) => ({ name: `${viscosity}`, oil: createOil(silicone(viscosity)) })),
  temperature: 298.15,
  slow: { speed: 0.05, compression: 2, rebound: 2.5 },
  fast: { speed: 0.5, compression: 9, rebound: 30 },
  drillError: 0.02e-3,
  temperatureError: 5,
};
