import type { TolerancedBuild } from '../../lib/decisions/spread/toleranced-build.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { shockWith, silicone } from './demo.js';

export const uniform = (halfWidth: number) => ({ kind: 'uniform', halfWidth }) as const;

/** An invented build with an error of each kind. */
export const build: TolerancedBuild = {
  damper: shockWith(4, 1.2e-3),
  oil: createOil(silicone(350)),
  temperature: 298.15,
  position: 0.0125,
  // Rebound: in compression the oil tears at 0.1 m/s, and the gas decides.
  speeds: [-0.05, -0.3],
  tolerances: {
    holeDiameter: { kind: 'normal', standardDeviation: 0.02e-3 },
    holeTaper: uniform(0.02e-3),
    thickness: uniform(0.05e-3),
    bore: uniform(0.02e-3),
    gap: uniform(0.01e-3),
    viscosity: uniform(0.05),
    temperature: uniform(3),
    gasVolume: uniform(0.2e-6),
  },
};
