import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cavitationOnset, gasPressureAgainstCavitation } from '../../lib/damper/cavitation-onset.js';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { sealedGas } from '../../lib/gas/gas.js';
import { anyDamper, anyFluid, anySpeed, atPressure } from '../laws/arbitraries.js';
import { area, damper, oil, pocket, shaft, withGas } from './pocket-damper.js';

const oneSided = ['blind-side', 'shaft-side'] as const;

describe('onset of cavitation', () => {
  const model = damperModel(damper, oil);
  const onset = cavitationOnset(model, 'compression', 0);

  test('a bore of 12 mm with a shaft of 3 mm at 1 atm: the oil holds (A − A_s) p = 10.74 N of pressure (statics)', () => {
    const { force = 0, speed = 0 } = onset ?? {};
    const { jetRecoil } = damperForce(model, { speed, position: 0 });
    expect(force + jetRecoil - model.rimDrag * speed).toBeCloseTo(10.74, 2);
    expect(onset?.pressureDrop).toBe(101_325);
    expect(cavitationOnset(model, 'rebound', 0)).toBeUndefined();
  });

  test('gas above the air outside adds its push on the shaft: (A − A_s) p + A_s (p − p_air)', () => {
    const pressed = damperModel(withGas({ pressure: 200_000 }), oil);
    const { force = 0, speed = 0 } = cavitationOnset(pressed, 'compression', 0) ?? {};
    const { jetRecoil } = damperForce(pressed, { speed, position: 0 });
    const expected = (area - shaft) * 200_000 + shaft * (200_000 - 101_325);
    expect((force + jetRecoil - model.rimDrag * speed) / expected).toBeCloseTo(1, 8);
  });

  test('air that comes out of the oil early moves it: 0.2 bar by a fifth of the pressure drop', () => {
    const early = cavitationOnset(
      damperModel(withGas({ airReleasePressure: 20_000 }), oil),
      'compression',
      0,
    );
    expect(early?.pressureDrop).toBe(101_325 - 20_000);
  });

  test('a thicker oil begins at a lower speed', () => {
    const thick = cavitationOnset(
      damperModel(damper, { ...oil, kinematicViscosity: 1e-3 }),
      'compression',
      0,
    );
    expect(thick?.speed).toBeLessThan(0.5 * (onset?.speed ?? 0));
    expect(thick?.pressureDrop).toBe(onset?.pressureDrop);
  });

  test('a shaft further in has more gas pressure and begins later', () => {
    // 1 ml less 0.198 ml of shaft, n = 1.4.
    const deep = cavitationOnset(model, 'compression', 0.028);
    expect((deep?.pressureDrop ?? 0) / (101_325 * (1 / (1 - shaft * 28e3)) ** 1.4)).toBeCloseTo(1, 9);
    expect(deep?.speed).toBeGreaterThan(onset?.speed ?? Number.NaN);
  });

  test('gas that stands no higher than the air release cavitates at any speed', () => {
    const gas = { ...sealedGas({ ...pocket, airReleasePressure: 20_000 }) };
    const closing = { ...gas.closing, displacedVolume: 1e-7, pressure: 20_001 };
    const low = damperModel({ ...damper, gas: { ...gas, closing } }, oil);
    expect(cavitationOnset(low, 'compression', 0)).toMatchObject({ pressureDrop: 0, speed: 0 });
  });

  test('the marks of a force change there, in compression alone', () => {
    const { speed = 0 } = onset ?? {};
    const at = (v: number) => damperForce(model, { speed: v, position: 0 });
    expect(at(0.999 * speed).cavitating).toBe(false);
    const beyond = at(2 * speed);
    expect(beyond.cavitating).toBe(true);
    expect(beyond.lowestPressure).toBe(0);
    expect(beyond.warnings.map(({ code }) => code)).toContain('cavitation');
    expect(at(-2 * speed).cavitating).toBe(false);
    // Δp / (ρ c) of whole oil, with 970 kg/m³ and 1500 J/(kg K).
    expect(beyond.jetTemperatureRise).toBeCloseTo(beyond.pressureDrop / (970 * 1500), 12);
  });
});

describe('gas pressure against cavitation', () => {
  test.each([
    ['blind-side', 0.4],
    ['shaft-side', -0.4],
  ] as const)('gas %s: it is just enough at %d m/s', (layout, speed) => {
    const model = damperModel(withGas({ layout, airReleasePressure: 15_000 }), oil);
    const pressure = gasPressureAgainstCavitation(model, speed);
    const at = (p: number) =>
      damperForce(damperModel(withGas({ layout, airReleasePressure: 15_000, pressure: p }), oil), {
        speed,
        position: 0,
      });
    expect(at(1.0001 * pressure).cavitating).toBe(false);
    expect(at(0.9999 * pressure).cavitating).toBe(true);
    expect(at(1.0001 * pressure).lowestPressure / 15_000).toBeCloseTo(1, 2);
  });

  test.each([
    ['blind-side', -0.4],
    ['blind-side', 0],
    ['shaft-side', 1],
    ['emulsion', 1],
  ] as const)('none is asked for with the gas %s at %d m/s', (layout, speed) => {
    const model = damperModel(withGas({ layout }), oil);
    expect(() => gasPressureAgainstCavitation(model, speed)).toThrow(
      'speed must be in the direction in which a cavity can open',
    );
  });

  test('under it, the cavity opens at that speed and not before', () =>
    fc.assert(
      fc.property(anyDamper, anyFluid, anySpeed, fc.constantFrom(...oneSided), (any, fluid, size, layout) => {
        const base = { ...any, gas: { ...any.gas, layout } };
        const speed = layout === 'shaft-side' ? -size : size;
        const pressure = gasPressureAgainstCavitation(damperModel(base, fluid), speed);
        const pressed = damperModel(atPressure(base, pressure), fluid);
        const onset = cavitationOnset(pressed, speed > 0 ? 'compression' : 'rebound', 0);
        expect(Math.abs((onset?.speed ?? 0) / speed - 1)).toBeLessThan(1e-6);
      }),
    ));
});
