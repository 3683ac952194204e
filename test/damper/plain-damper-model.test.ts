import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { plainDamperModel } from '../../lib/damper/plain-damper-model.js';
import { anyDamper, anyFluid, anySpeed } from '../laws/arbitraries.js';

const fluid = { kinematicViscosity: 3.5e-4, density: 970 };
const [damper] = fc.sample(anyDamper, 1);

describe('the damper model of the core entry', () => {
  test('is that of dashpot/piston for straight sharp holes', () =>
    fc.assert(
      fc.property(anyDamper, anyFluid, anySpeed, (any, oil, speed) => {
        const plain = damperForce(plainDamperModel(any, oil), { speed, position: 0 });
        const full = damperForce(damperModel(any, oil), { speed, position: 0 });
        expect(Math.abs(plain.force - full.force)).toBeLessThanOrEqual(1e-8 * Math.abs(full.force));
        expect(plain.cavitating).toBe(full.cavitating);
      }),
    ));

  test('refuses what only dashpot/piston computes, and says so', () => {
    if (damper === undefined) throw new Error('no damper');
    const { piston } = damper;
    const rounded = piston.holes.map((group) => ({
      ...group,
      shape: { kind: 'slot', travel: 3e-3 } as const,
    }));
    const refusal = 'must be left out, or computed with dashpot/piston';
    expect(() => plainDamperModel({ ...damper, piston: { ...piston, holes: rounded } }, fluid)).toThrow(
      `hole shapes, valves and shear thinning ${refusal}, got slot`,
    );
    const valve = { innerDiameter: 4e-3 } as never;
    expect(() => plainDamperModel({ ...damper, piston: { ...piston, valves: [valve] } }, fluid)).toThrow(
      `${refusal}, got a valve`,
    );
    const shearThinning = { kind: 'cross', time: 1e-5, exponent: 0.7, floor: 0 } as const;
    expect(() => plainDamperModel(damper, { ...fluid, shearThinning })).toThrow(`${refusal}, got cross`);
  });

  test('checks sizes as the full one does', () => {
    if (damper === undefined) throw new Error('no damper');
    const { piston } = damper;
    expect(() => plainDamperModel({ ...damper, piston: { ...piston, thickness: 0 } }, fluid)).toThrow(
      'piston.thickness must be greater than 0 m, got 0 m',
    );
    expect(() => plainDamperModel({ ...damper, bore: piston.diameter }, fluid)).toThrow(
      'pistonDiameter must be',
    );
  });
});
