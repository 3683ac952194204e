import type { Damper } from '../../lib/damper/damper.js';
import { sealedGas } from '../../lib/gas/gas.js';

export const noSeal = { kineticForce: 0, breakawayForce: 0 };
const thin = { bore: 12e-3, shaftDiameter: 3e-3, seal: noSeal };
/** Invented builds of our own, with the silicone at 20 °C: 350 and 450 mm²/s bottles by Barry's law. */
export const front = (polytropicExponent: number): Damper => ({
  ...thin,
  stroke: 24e-3,
  piston: { diameter: 11.94e-3, thickness: 2.5e-3, holes: [{ count: 2, diameter: 1.7e-3 }], eccentricity: 0 },
  gas: sealedGas({ volume: 0.9e-6, polytropicExponent }),
});
export const rear = (polytropicExponent: number): Damper => ({
  ...thin,
  stroke: 30e-3,
  piston: { diameter: 11.94e-3, thickness: 2e-3, holes: [{ count: 4, diameter: 1.3e-3 }], eccentricity: 0 },
  gas: sealedGas({ volume: 1.1e-6, polytropicExponent }),
});
export const big = (polytropicExponent: number): Damper => ({
  bore: 16e-3,
  shaftDiameter: 3.5e-3,
  seal: noSeal,
  stroke: 34e-3,
  piston: { diameter: 15.95e-3, thickness: 3e-3, holes: [{ count: 8, diameter: 1.4e-3 }], eccentricity: 0 },
  gas: sealedGas({ volume: 2.4e-6, polytropicExponent }),
});
/** 350 mm²/s at 25 °C by Barry: factor 1.1057 at 20 °C; Tait density. */
export const oil = { kinematicViscosity: 350e-6 * 1.10575, density: 974.2 };
/** Walther line through 594 and 408 mm²/s at 10 and 30 °C: 490 at 20 °C. */
export const thicker = { kinematicViscosity: 490e-6, density: 974.2 };
