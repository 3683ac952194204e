import { type Drawing, drawnForces, spreadOf } from '../../lib/decisions/spread/force-spread.js';
import type { TolerancedBuild } from '../../lib/decisions/spread/toleranced-build.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { sealedGas } from '../../lib/gas/gas.js';

const uniform = (halfWidth: number) => ({ kind: 'uniform', halfWidth }) as const;

/** The build that benchmarks/monte-carlo/builds.py has too. */
export const build: TolerancedBuild = {
  damper: {
    bore: 12e-3,
    shaftDiameter: 3e-3,
    stroke: 25e-3,
    piston: {
      diameter: 11.9e-3,
      thickness: 2.5e-3,
      holes: [{ count: 4, diameter: 1.3e-3 }],
      eccentricity: 0,
    },
    gas: sealedGas({ volume: 1e-6, pressure: 101_325, polytropicExponent: 1.4, ambientPressure: 101_325 }),
    seal: { kineticForce: 0, breakawayForce: 0 },
  },
  oil: createOil({
    base: 'silicone',
    viscosity: { kind: 'silicone', point: { temperature: 298.15, kinematicViscosity: 350e-6 } },
  }),
  temperature: 298.15,
  position: 12.5e-3,
  speeds: [-0.05, -0.3, -1],
  tolerances: {
    holeDiameter: uniform(3e-5),
    thickness: uniform(5e-5),
    bore: uniform(2e-5),
    gap: uniform(1e-5),
    viscosity: uniform(0.05),
    temperature: uniform(3),
    gasVolume: uniform(1e-7),
  },
};

/** Seconds for a drawing, and the mean force at each speed [N]. */
export function timedSpread(drawing: Drawing): {
  readonly seconds: number;
  readonly means: readonly number[];
} {
  const start = performance.now();
  const forces = drawnForces(build, drawing, 0, drawing.count);
  const seconds = (performance.now() - start) / 1000;
  return { seconds, means: spreadOf(build.speeds, forces).map(({ mean }) => mean) };
}

export { finish } from '../../lib/decisions/search/search.js';
export { forceSpread, toleranceShares } from '../../lib/decisions/spread/force-spread.js';
export { startDecisionWorkers } from '../../lib/workers/index.js';
