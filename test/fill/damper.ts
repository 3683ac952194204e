import { damperModel } from '../../lib/damper/damper-model.js';
import { sealedGas } from '../../lib/gas/gas.js';
import { atmosphere, fluid } from './shock.js';

/** The shock with a piston of four 1.2 mm holes. */
export const model = damperModel(
  {
    bore: 12e-3,
    shaftDiameter: 3e-3,
    stroke: 28e-3,
    piston: {
      diameter: 11.9e-3,
      thickness: 2.5e-3,
      holes: [{ count: 4, diameter: 1.2e-3 }],
      eccentricity: 0,
    },
    gas: sealedGas({
      volume: 0.5e-6,
      pressure: atmosphere,
      polytropicExponent: 1,
      ambientPressure: atmosphere,
    }),
    seal: { kineticForce: 0.2, breakawayForce: 0.3 },
  },
  fluid,
);
