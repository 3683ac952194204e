import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cavitationLimit, gasPressureAgainstCavitation } from '../../lib/damper/cavitation-limit.js';
import type { Damper } from '../../lib/damper/damper.js';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import type { GasLayout } from '../../lib/damper/gas.js';
import { valveOpenings } from '../../lib/damper/valve-opening.js';
import { anyDamper, anyFluid, anySpeed } from '../laws/arbitraries.js';

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
  gas: { volume: 1e-6, pressure: 101_325, polytropicExponent: 1.4, ambientPressure: 101_325 },
  seal: { kineticForce: 0, breakawayForce: 0 },
};
const oil = { kinematicViscosity: 3.5e-4, density: 970 };
const withGas = (gas: Partial<Damper['gas']>): Damper => ({ ...damper, gas: { ...damper.gas, ...gas } });
const anyLayout = fc.constantFrom<GasLayout>('blind-side', 'shaft-side', 'emulsion');

describe('cavitation limit', () => {
  test('a bore of 12 mm with a shaft of 3 mm at 1 atm pushes back 10.7 N at most (statics: (A − A_s) p)', () => {
    const limit = cavitationLimit(damperModel(damper, oil), 'compression', 0);
    expect(limit?.force).toBeCloseTo(10.74, 2);
    expect(limit?.pressureDrop).toBe(101_325);
    expect(cavitationLimit(damperModel(damper, oil), 'rebound', 0)).toBeUndefined();
  });

  test('gas above the air outside adds its push on the shaft: (A − A_s) p + A_s (p − p_air)', () => {
    const limit = cavitationLimit(damperModel(withGas({ pressure: 200_000 }), oil), 'compression', 0);
    const [bore, shaft] = [0.012, 0.003].map((d) => (Math.PI / 4) * d ** 2) as [number, number];
    const expected = (bore - shaft) * 200_000 + shaft * (200_000 - 101_325);
    expect((limit?.force ?? 0) / expected).toBeCloseTo(1, 8);
  });

  test.each([
    ['blind-side', 0.4],
    ['shaft-side', -0.4],
    ['emulsion', 0.4],
    ['emulsion', -0.4],
  ] as const)('gas %s: the pressure against tearing at %d m/s is just enough', (layout, speed) => {
    const model = damperModel(withGas({ layout, airReleasePressure: 15_000 }), oil);
    const pressure = gasPressureAgainstCavitation(model, speed, 0.01);
    const at = (p: number) =>
      damperForce(damperModel(withGas({ layout, airReleasePressure: 15_000, pressure: p }), oil), {
        speed,
        position: 0.01,
      });
    expect(at(1.0001 * pressure).cavitating).toBe(false);
    expect(at(0.9999 * pressure).cavitating).toBe(true);
    expect(at(1.0001 * pressure).lowestPressure / 15_000).toBeCloseTo(1, 2);
  });

  test('no gas pressure is asked for where the oil cannot tear', () => {
    const model = damperModel(damper, oil);
    for (const speed of [-0.4, 0]) {
      expect(() => gasPressureAgainstCavitation(model, speed, 0)).toThrow(
        'speed must be in the direction in which the oil can tear',
      );
    }
  });

  test('air that comes out of the oil early lowers it: 0.2 bar by a fifth', () => {
    const limit = cavitationLimit(
      damperModel(withGas({ airReleasePressure: 20_000 }), oil),
      'compression',
      0,
    );
    expect((limit?.force ?? 0) / 10.743).toBeCloseTo(1 - 20_000 / 101_325, 3);
  });

  test('the curve is flat beyond the limit, marked, and names how fast the cavity grows', () => {
    const model = damperModel(damper, oil);
    const limit = cavitationLimit(model, 'compression', 0);
    const speed = limit?.speed ?? 0;
    // The rim of no height drags; a real one does not, so only the pressure part is compared.
    const at = (v: number) => damperForce(model, { speed: v, position: 0 });
    const before = at(0.999 * speed);
    const beyond = at(2 * speed);
    expect(before.cavitating).toBe(false);
    expect(before.cavityGrowth).toBe(0);
    expect(beyond.cavitating).toBe(true);
    expect(beyond.pressureDrop).toBe(101_325);
    expect(beyond.lowestPressure).toBe(0);
    expect(beyond.cavityGrowth / (model.dampingArea * speed)).toBeCloseTo(1, 9);
    expect(beyond.warnings.map(({ code }) => code)).toContain('cavitation');
    expect(at(3 * speed).jetRecoil).toBe(beyond.jetRecoil);
    // Δp / (ρ c), one bar with 970 kg/m³ and 1500 J/(kg K).
    expect(beyond.jetTemperatureRise).toBeCloseTo(101_325 / (970 * 1500), 12);
  });

  test('a thicker oil begins to tear at a lower speed and at the same force', () => {
    const thin = cavitationLimit(damperModel(damper, oil), 'compression', 0);
    const thick = cavitationLimit(
      damperModel(damper, { ...oil, kinematicViscosity: 1e-3 }),
      'compression',
      0,
    );
    expect(thick?.force).toBe(thin?.force);
    expect(thick?.speed).toBeLessThan(0.5 * (thin?.speed ?? 0));
  });

  test('under the gas pressure it asks for, the oil tears at that speed and not before', () =>
    fc.assert(
      fc.property(anyDamper, anyFluid, anySpeed, anyLayout, (any, fluid, size, layout) => {
        const base = { ...any, gas: { ...any.gas, layout } };
        const speed = layout === 'shaft-side' ? -size : size;
        const position = Math.min(base.stroke, (0.5 * base.gas.volume) / (4e-6 * Math.PI * 6.25));
        const pressure = gasPressureAgainstCavitation(damperModel(base, fluid), speed, position);
        const pressed = damperModel({ ...base, gas: { ...base.gas, pressure } }, fluid);
        const direction = speed > 0 ? 'compression' : 'rebound';
        const limit = cavitationLimit(pressed, direction, position);
        expect(Math.abs((limit?.speed ?? 0) / speed - 1)).toBeLessThan(1e-6);
      }),
    ));

  test.each(['shaft-side'] as const)(
    'with the gas on the %s no pressure is asked for in compression',
    (layout) => {
      const model = damperModel(withGas({ layout }), oil);
      expect(() => gasPressureAgainstCavitation(model, 1, 0)).toThrow(
        'speed must be in the direction in which the oil can tear m/s, got 1 m/s',
      );
    },
  );
});

describe('gas layouts', () => {
  const area = (Math.PI / 4) * 0.012 ** 2;
  const shaft = (Math.PI / 4) * 0.003 ** 2;

  test.each([
    ['blind-side', area - shaft],
    ['shaft-side', area],
    ['emulsion', area - shaft / 2],
  ] as const)('%s works on its own area', (layout, expected) => {
    expect(damperModel(withGas({ layout }), oil).dampingArea / expected).toBeCloseTo(1, 9);
  });

  // Statics of the piston with both chamber pressures: F = p_blind A − p_shaft (A − A_s) − p_ambient A_s.
  test('force is that of the two chamber pressures on their faces', () =>
    fc.assert(
      fc.property(anyLayout, fc.double({ min: -2, max: 2, noNaN: true }), (layout, speed) => {
        const model = damperModel(withGas({ layout, pressure: 5e6 }), oil);
        const point = damperForce(model, { speed, position: 0 });
        const share = { 'blind-side': 1, 'shaft-side': 0, emulsion: 0.5 }[layout];
        const blind = 5e6 + (1 - share) * point.pressureDrop;
        const behind = 5e6 - share * point.pressureDrop;
        const statics = blind * area - behind * (area - shaft) - 101_325 * shaft;
        const recoil = Math.sign(speed) * point.jetRecoil;
        const force = point.force + recoil - model.rimDrag * speed;
        expect(force).toBeCloseTo(statics, 5);
        expect(point.lowestPressure).toBeCloseTo(Math.min(blind, behind), 3);
      }),
    ));

  test('gas behind the piston: rebound tears with the gas on the shaft side, both ways when mixed through', () => {
    const limits = (layout: GasLayout) =>
      (['compression', 'rebound'] as const).map(
        (direction) => cavitationLimit(damperModel(withGas({ layout }), oil), direction, 0)?.pressureDrop,
      );
    expect(limits('blind-side')).toEqual([101_325, undefined]);
    expect(limits('shaft-side')).toEqual([undefined, 101_325]);
    expect(limits('emulsion')).toEqual([202_650, 202_650]);
  });

  test.each([
    [{ airReleasePressure: 30_000 }, 'gas.airReleasePressure must be 0 to 20000 Pa, got 30000 Pa'],
    [
      { airReleasePressure: 10_000, pressure: 9_000 },
      'gas.airReleasePressure must be below the gas pressure of 9000 Pa',
    ],
  ])('%o is refused', (gas, message) => {
    expect(() => damperForce(damperModel(withGas(gas), oil), { speed: 0, position: 0 })).toThrow(message);
  });
});

describe('recoil of the jets', () => {
  test('is the momentum of the jets less that of the oil in the bore, ρ a V (1.2 V − U)', () => {
    const model = damperModel(withGas({ pressure: 1e8 }), oil);
    const { jetRecoil, holeReynoldsNumber } = damperForce(model, { speed: 1, position: 0 });
    const speed = (holeReynoldsNumber * 3.5e-4) / 1.3e-3;
    const holes = Math.PI * 1.3e-3 ** 2;
    const boreSpeed = model.dampingArea / ((Math.PI / 4) * 0.012 ** 2);
    expect(jetRecoil / (970 * holes * speed * (1.2 * speed - boreSpeed))).toBeCloseTo(1, 9);
  });

  test('is nothing against viscosity at rest', () => {
    const model = damperModel(withGas({ pressure: 1e8 }), oil);
    const slow = damperForce(model, { speed: 1e-4, position: 0 });
    expect(slow.jetRecoil / slow.dampingForce).toBeLessThan(1e-4);
  });
});

describe('disc valve in a damper', () => {
  const disc = {
    face: 'shaft-side',
    covers: [0],
    outerDiameter: 0.0105,
    clampDiameter: 0.005,
    thickness: 1e-4,
    count: 1,
    elasticModulus: 3e9,
    poissonRatio: 0.35,
    preload: 2e-5,
  } as const;
  const valved = (change = {}): Damper => ({
    ...damper,
    piston: {
      ...damper.piston,
      diameter: 0.01195,
      holes: [
        { count: 2, diameter: 1.5e-3, pitchDiameter: 0.0078 },
        { count: 2, diameter: 1.2e-3 },
      ],
      valves: [{ ...disc, ...change }],
    },
  });

  test('its opening shows: shut below that speed, softer above it', () => {
    const model = damperModel({ ...valved(), gas: { ...damper.gas, pressure: 2e6 } }, oil);
    const [opening] = valveOpenings(model);
    expect(opening?.direction).toBe('compression');
    const { speed = 0, pressureDrop = 0 } = opening ?? {};
    expect(damperForce(model, { speed, position: 0 }).pressureDrop / pressureDrop).toBeCloseTo(1, 8);
    const rebound = damperForce(model, { speed: -6 * speed, position: 0 });
    const compression = damperForce(model, { speed: 6 * speed, position: 0 });
    expect(compression.pressureDrop).toBeLessThan(-0.95 * rebound.pressureDrop);
    expect(compression.iterations).toBeGreaterThan(0);
    expect(Math.abs(compression.residual)).toBeLessThan(1e-8 * model.dampingArea * speed);
  });

  test('a preload that never opens is refused, with the two pressures', () => {
    expect(() => damperModel(valved({ elasticModulus: 2e11, thickness: 3e-4 }), oil)).toThrow(
      /piston\.valves\[0\]\.preload must be small enough to open: the disc lifts at \d+ Pa, but before the oil tears the gas holds \d+ Pa/u,
    );
    expect(() =>
      damperModel(valved({ face: 'blind-side', elasticModulus: 2e11, thickness: 3e-4 }), oil),
    ).not.toThrow();
  });
});
