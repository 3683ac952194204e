import type { Damper } from '../../lib/damper/damper.js';
import type { OilDefinition } from '../../lib/fluid/oil/oil-definition.js';
import { sealedGas } from '../../lib/gas/gas.js';

/** An invented small shock: 12 mm bore, 3 mm shaft, sizes as a caliper gives them. */
export function shockWith(count: number, diameter: number, thickness = 2.5e-3): Damper {
  return {
    bore: 12e-3,
    shaftDiameter: 3e-3,
    stroke: 25e-3,
    piston: { diameter: 11.9e-3, thickness, holes: [{ count, diameter }], eccentricity: 0 },
    gas: sealedGas({ volume: 1e-6, pressure: 101_325, polytropicExponent: 1.4, ambientPressure: 101_325 }),
    seal: { kineticForce: 0, breakawayForce: 0 },
  };
}

/** A plain silicone by its viscosity at 25 °C [mm²/s]. */
export function silicone(viscosityAt25Celsius: number): OilDefinition {
  const point = { temperature: 298.15, kinematicViscosity: viscosityAt25Celsius * 1e-6 };
  return { base: 'silicone', viscosity: { kind: 'silicone', point } };
}

/** A fluid state [mm²/s]. */
export function fluid(squareMillimetres: number, density = 970) {
  return { kinematicViscosity: squareMillimetres * 1e-6, density };
}
