import { describe, expect, it } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { movingShock } from '../../lib/motion/shock/bind-moving-shock.js';
import { sampleModel } from './sample-shock.js';

const shearThinning = { kind: 'cross', time: 1e-4, exponent: 0.3, floor: 0.05 } as const;

describe('a step that is only tried', () => {
  // An integrator looks at the rates of stages too far away, where a gas without room has a pressure that is no number; it must hear so and try a shorter step.
  it.each([undefined, shearThinning])(
    'has no flow and stops nothing where the pressures are no numbers',
    (law) => {
      const { damper, fluid } = sampleModel();
      const model = damperModel(damper, { ...fluid, ...(law && { shearThinning: law }) });
      const shock = movingShock(model, { volume: 3.2e-6, farVolume: 4e-7, bulkModulus: 9e8, airFraction: 0 });
      for (const pressureDrop of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
        const passage = { flow: 0, recoil: 0 };
        shock.passage(pressureDrop, passage);
        expect(passage).toEqual({ flow: Number.NaN, recoil: Number.NaN });
      }
      const passage = { flow: 0, recoil: 0 };
      shock.passage(1e5, passage);
      expect(passage.flow).toBeGreaterThan(0);
    },
  );
});
