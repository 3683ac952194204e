import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { isLight, lightModel } from '../../lib/decisions/light-model.js';
import { anyDamper, anyFluid, anySpeed } from './arbitraries.js';

describe('light model', () => {
  it('has the forces of the full model to the last bit', () => {
    fc.assert(
      fc.property(anyDamper, anyFluid, anySpeed, (any, fluid, speed) => {
        const damper = { ...any, piston: { ...any.piston, holes: any.piston.holes.slice(0, 1) } };
        // Oil does not give way: a gas room that takes the shaft.
        const gas = { ...damper.gas, volume: damper.gas.volume + 1e-3 };
        const full = damperModel({ ...damper, gas }, fluid);
        expect(isLight(full.damper, fluid)).toBe(true);
        const light = lightModel(full.damper, fluid, full);
        for (const motion of [speed, -speed]) {
          const at = { speed: motion, position: full.damper.stroke / 2 };
          expect(damperForce(light, at)).toEqual(damperForce(full, at));
        }
      }),
    );
  });
});
