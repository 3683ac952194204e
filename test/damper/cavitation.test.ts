import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cavitationOnset, gasPressureAgainstCavitation } from '../../lib/damper/cavitation-onset.js';
import { forceWithCavity } from '../../lib/damper/cavity-force.js';
import type { Damper } from '../../lib/damper/damper.js';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { type GasLayout, sealedGas } from '../../lib/gas/gas.js';
import { anyDamper, anyFluid, anySpeed, atPressure } from '../laws/arbitraries.js';

const pocket = { volume: 1e-6, pressure: 101_325, polytropicExponent: 1.4, ambientPressure: 101_325 };
const damper: Damper = {
  bore: 0.012,
  shaftDiameter: 0.003,
  stroke: 0.028,
  // A rim gap of no height, so that the damping area is that of the bore.
  piston: {
    diameter: 0.012 - 2e-12,
    thickness: 0.0025,
    holes: [{ count: 4, diameter: 1.3e-3 }],
    eccentricity: 0,
  },
  gas: sealedGas(pocket),
  seal: { kineticForce: 0, breakawayForce: 0 },
};
const oil = { kinematicViscosity: 3.5e-4, density: 970 };
const withGas = (gas: Partial<Parameters<typeof sealedGas>[0]>): Damper => ({
  ...damper,
  gas: sealedGas({ ...pocket, ...gas }),
});
const oneSided = ['blind-side', 'shaft-side'] as const;
const area = (Math.PI / 4) * 0.012 ** 2;
const shaft = (Math.PI / 4) * 0.003 ** 2;

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

describe('gas layouts', () => {
  test.each([
    ['blind-side', area - shaft],
    ['shaft-side', area],
    ['emulsion', area - shaft / 2],
  ] as const)('%s displaces with its own area', (layout, expected) => {
    expect(damperModel(withGas({ layout }), oil).dampingArea / expected).toBeCloseTo(1, 9);
  });

  // Statics of the piston with both chamber pressures: F = p_blind A − p_shaft (A − A_s) − p_ambient A_s.
  test('force is that of the two chamber pressures on their faces', () =>
    fc.assert(
      fc.property(
        fc.constantFrom<GasLayout>('blind-side', 'shaft-side', 'emulsion'),
        fc.double({ min: -2, max: 2, noNaN: true }),
        (layout, speed) => {
          const model = damperModel(withGas({ layout, pressure: 5e6 }), oil);
          const point = damperForce(model, { speed, position: 0 });
          const drop = point.pressureDrop;
          const onShaftSide = drop > 0 ? point.lowestPressure : point.lowestPressure - drop;
          const statics = (onShaftSide + drop) * area - onShaftSide * (area - shaft) - 101_325 * shaft;
          expect(point.force + point.jetRecoil - model.rimDrag * speed).toBeCloseTo(statics, 5);
        },
      ),
    ));

  test('with the gas on one side, that side stands at the gas pressure', () => {
    const lowest = (layout: GasLayout, speed: number) =>
      damperForce(damperModel(withGas({ layout, pressure: 5e6 }), oil), { speed, position: 0 });
    for (const [layout, behind] of [
      ['blind-side', 0.3],
      ['shaft-side', -0.3],
    ] as const) {
      const drawn = lowest(layout, behind);
      expect(drawn.lowestPressure).toBeCloseTo(5e6 - Math.abs(drawn.pressureDrop), 3);
      expect(lowest(layout, -behind).lowestPressure).toBe(5e6);
    }
  });

  test('mixed through, the low side tends to half the gas pressure in slow movement and to 1/2^1.4 in fast, never to vacuum', () => {
    for (const [polytropicExponent, share] of [
      [1, 0.5],
      [1.4, 2 ** -1.4],
    ] as const) {
      const model = damperModel(withGas({ layout: 'emulsion', polytropicExponent }), oil);
      for (const speed of [2, -2]) {
        const { lowestPressure, cavitating } = damperForce(model, { speed, position: 0 });
        expect(lowestPressure / 101_325).toBeGreaterThan(share);
        expect(lowestPressure / 101_325).toBeLessThan(1.15 * share);
        expect(cavitating).toBe(false);
      }
      expect(cavitationOnset(model, 'compression', 0)).toBeUndefined();
    }
  });

  test('mixed through, both sides keep their gas: 1/p_high + 1/p_low = 2/p (Boyle)', () => {
    const model = damperModel(withGas({ layout: 'emulsion', polytropicExponent: 1 }), oil);
    const { lowestPressure: low, pressureDrop } = damperForce(model, { speed: -0.2, position: 0 });
    expect(101_325 * (1 / low + 1 / (low - pressureDrop))).toBeCloseTo(2, 12);
  });

  test.each([
    [{ airReleasePressure: 30_000 }, 'gas.airReleasePressure must be 0 to 20000 Pa, got 30000 Pa'],
    [
      { airReleasePressure: 10_000, pressure: 9_000 },
      'gas.airReleasePressure must be below the pressure of 9000 at closing Pa, got 10000 Pa',
    ],
    [{ pressure: -1 }, 'gas.closing.pressure must be greater than 0 Pa, got -1 Pa'],
    [{ polytropicExponent: 2 }, 'gas.polytropicExponent must be 1 to 1.4, got 2'],
    [{ ambientPressure: 0 }, 'gas.ambientPressure must be greater than 0 Pa, got 0 Pa'],
  ])('%o is refused', (gas, message) => {
    expect(() => damperModel(withGas(gas), oil)).toThrow(message);
  });
});

describe('recoil of the jets', () => {
  test('is the momentum of the jets less half of that of the oil in the bore, ρ a (m V² + 5.5 ν V/d − ½ V U)', () => {
    const model = damperModel(withGas({ pressure: 1e8 }), oil);
    const { jetRecoil, holeReynoldsNumber } = damperForce(model, { speed: 1, position: 0 });
    const speed = (holeReynoldsNumber * 3.5e-4) / 1.3e-3;
    const holes = Math.PI * 1.3e-3 ** 2;
    const boreSpeed = model.dampingArea / area;
    // m from 0.644 in slow oil to 1.2 with the onset of inertia, F of docs/hole-law.md.
    const x = holeReynoldsNumber / 35.6;
    const onset = x * Math.sqrt((1 + 1.486 * x ** 2) / (1 - 1.24 * x + 3.21 * x ** 2 + 1.486 * x ** 4));
    const momentum = (0.644 + 0.556 * onset) * speed ** 2 + (5.5 * 3.5e-4 * speed) / 1.3e-3;
    expect(jetRecoil / (970 * holes * (momentum - 0.5 * speed * boreSpeed))).toBeCloseTo(1, 9);
    expect(damperForce(model, { speed: -1, position: 0 }).jetRecoil).toBe(-jetRecoil);
  });

  test('takes no more from slow oil than the lower pressure on the face behind, 5.5 μ V/d of each hole', () => {
    const model = damperModel(withGas({ pressure: 1e8 }), oil);
    const slow = damperForce(model, { speed: 1e-4, position: 0 });
    const speed = (slow.holeReynoldsNumber * 3.5e-4) / 1.3e-3;
    const viscous = (970 * Math.PI * 1.3e-3 ** 2 * 5.5 * 3.5e-4 * speed) / 1.3e-3;
    expect(Math.abs(slow.jetRecoil / viscous - 1)).toBeLessThan(1e-3);
    expect(slow.jetRecoil / slow.dampingForce).toBeLessThan(0.01);
  });

  test('goes with the flow, not with the shaft: a cavity that fills on the way back pushes outward all the same', () => {
    const model = damperModel(damper, oil);
    const [out, still, back] = [0.3, 0, -0.3].map((speed) =>
      forceWithCavity(model, { speed, position: 0.01 }, 2e-7),
    );
    expect(back?.jetRecoil).toBe(out?.jetRecoil);
    expect(back?.jetRecoil).toBeGreaterThan(0);
    expect(still?.force).toBeGreaterThan(10);
    expect(back?.pressureDrop).toBe(out?.pressureDrop);
  });
});
