import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';
import { type GasLayout, sealedGas } from '../../lib/gas/gas.js';
import { movingShock } from '../../lib/motion/shock/bind-moving-shock.js';
import type { MovingShock } from '../../lib/motion/shock/moving-shock.js';

/** What differs from case to case. */
export interface SampleChange {
  readonly airFraction?: number;
  readonly releasePressure?: number;
  readonly layout?: GasLayout;
  readonly farVolume?: number;
  readonly oilVolume?: number;
  readonly seal?: { readonly kineticForce: number; readonly breakawayForce: number };
  readonly kinematicViscosity?: number;
}

/** The damper of the reference trajectories: two sharp holes of 1.7 mm, oil of 380 mm²/s, 0.9 ml of air behind the piston. Invented. */
export function sampleModel(change: SampleChange = {}): DamperModel {
  const { releasePressure = 0, layout = 'blind-side', seal, kinematicViscosity = 3.8e-4 } = change;
  const damper = {
    bore: 0.012,
    shaftDiameter: 0.003,
    stroke: 0.024,
    piston: {
      diameter: 0.01194,
      thickness: 0.0025,
      holes: [{ count: 2, diameter: 0.0017 }],
      eccentricity: 0,
    },
    gas: sealedGas({
      volume: 9e-7,
      pressure: 101_325,
      polytropicExponent: 1.4,
      ambientPressure: 101_325,
      airReleasePressure: releasePressure,
      layout,
    }),
    seal: seal ?? { kineticForce: 0.18, breakawayForce: 0.27 },
  };
  return damperModel(damper, { density: 970, kinematicViscosity });
}

/** The same shock as motion moves it. */
export function sampleShock(change: SampleChange = {}): MovingShock {
  const { airFraction = 0, farVolume = 4e-7, oilVolume = 3.2e-6 } = change;
  return movingShock(sampleModel(change), { volume: oilVolume, farVolume, bulkModulus: 9e8, airFraction });
}
