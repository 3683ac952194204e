import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cavitationOnset } from '../../lib/damper/cavitation-onset.js';
import { forceWithCavity } from '../../lib/damper/cavity-force.js';
import type { Damper } from '../../lib/damper/damper.js';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { forceAfterTravel, forcesAlongTravel } from '../../lib/damper/force-after-travel.js';
import { sealedGas } from '../../lib/gas/gas.js';
import { gasPressure } from '../../lib/gas/gas-state.js';
import { anyDamper, anyFluid } from '../laws/arbitraries.js';
import { damper as pocketDamper, oil as pocketOil, shaft as pocketShaft } from './pocket-damper.js';
import { front, noSeal, oil } from './three-builds.js';

describe('force after the onset', () => {
  const model = damperModel(front(1.4), oil);

  test('starts at the pressure drop of the onset and never falls', () => {
    const travels = Array.from({ length: 17 }, (_, index) => index * 1e-3);
    const forces = forcesAlongTravel(model, { speed: 1, position: 8e-3 }, travels);
    const onset = cavitationOnset(model, 'compression', 8e-3);
    expect((forces[0]?.pressureDrop ?? 0) / (onset?.pressureDrop ?? 1)).toBeCloseTo(1, 12);
    for (let i = 1; i < forces.length; i++)
      expect(forces[i]?.force).toBeGreaterThan(forces[i - 1]?.force ?? 0);
  });

  test('tends to the damping of whole oil, where the shaft itself squeezes the gas little', () => {
    // A shaft of 0.5 mm takes 0.005 ml of the 0.9 ml.
    const needle = damperModel({ ...front(1.4), shaftDiameter: 0.5e-3 }, oil);
    const whole = damperForce(needle, { speed: 1, position: 24e-3 }).dampingForce;
    const { dampingForce } = forceAfterTravel(needle, { speed: 1, position: 0 }, 24e-3);
    expect(dampingForce / whole).toBeGreaterThan(0.98);
    expect(dampingForce / whole).toBeLessThan(1.02);
  });

  test('squeezes the gas until it can hold the oil', () => {
    const { cavityVolume } = forceAfterTravel(model, { speed: 1, position: 0 }, 24e-3);
    // Whole oil would need the gas at its pressure drop: the cavity is what the gas has given for that, less the shaft.
    const gas = gasPressure(model.gas, model.shaftArea * 24e-3 + cavityVolume);
    expect(gas / damperForce(model, { speed: 1, position: 0 }).pressureDrop).toBeGreaterThan(0.9);
  });

  test('never passes the pressure drop of what the shaft sends through the piston: more than whole oil in compression, less in rebound', () => {
    let open = 0;
    let aboveWholeOil = 0;
    fc.assert(
      fc.property(
        anyDamper,
        anyFluid,
        fc.double({ min: 0.05, max: 3, noNaN: true }),
        fc.constantFrom('blind-side', 'shaft-side'),
        (damper, fluid, size, layout) => {
          const any = damperModel({ ...damper, gas: { ...damper.gas, layout }, seal: noSeal }, fluid);
          const inward = layout === 'blind-side';
          const speed = inward ? size : -size;
          const begin = inward ? 0 : damper.stroke;
          // Short of the end of the stroke, where rounding would leave it.
          const travels = Array.from({ length: 20 }, (_, index) => index * 0.05 * damper.stroke);
          // By hand: the gas rises with A_s x + V_c, whose rate is A |v| ± A_s |v| − Q, and so for as long only as Q is less.
          const annulus = (Math.PI / 4) * damper.shaftDiameter ** 2;
          const dropOf = (area: number) => Math.abs(any.pistonFlow.pressureDrop(area * speed).pressureDrop);
          const whole = dropOf(any.dampingArea);
          const limit = dropOf(any.dampingArea + (inward ? annulus : -annulus));
          for (const [index, { cavityVolume }] of forcesAlongTravel(
            any,
            { speed, position: begin },
            travels,
          ).entries()) {
            if (cavityVolume === 0) continue;
            const travel = travels[index] ?? 0;
            const position = inward ? travel : begin - travel;
            // The volume is solved to 1e-8 of itself a step; the gas may be squeezed to a thousandth of it.
            const { pressureDrop } = forceWithCavity(any, { speed, position }, cavityVolume * (1 - 1e-6));
            open++;
            expect(Math.abs(pressureDrop)).toBeLessThan((inward ? limit : whole) * (1 + 1e-9));
            if (Math.abs(pressureDrop) > 1.001 * whole) aboveWholeOil++;
          }
        },
      ),
      { numRuns: 150 },
    );
    // So that both sides of it have been seen.
    expect(open).toBeGreaterThan(300);
    expect(aboveWholeOil).toBeGreaterThan(10);
  });

  test('is that of whole oil below the onset, with no cavity', () => {
    const { speed = 0 } = cavitationOnset(model, 'compression', 0) ?? {};
    const slow = { speed: 0.9 * speed, position: 0 };
    const after = forceAfterTravel(model, slow, 10e-3);
    expect(after.force).toBe(damperForce(model, { ...slow, position: 10e-3 }).force);
    expect(after.cavityVolume).toBe(0);
  });

  test('a thicker oil pushes harder after a travel: the onset is no limit', () => {
    const pushAfter = (viscosity: number) =>
      forceAfterTravel(
        damperModel(front(1.4), { ...oil, kinematicViscosity: viscosity }),
        { speed: 1, position: 8e-3 },
        8e-3,
      ).force;
    expect(pushAfter(600e-6)).toBeGreaterThan(1.1 * pushAfter(300e-6));
  });

  test('oil, gas, cavity and shaft fill the room: the cavity holds what the piston swept and its holes did not pass', () =>
    fc.assert(
      fc.property(
        anyDamper,
        anyFluid,
        fc.double({ min: 0.5, max: 3, noNaN: true }),
        (damper, fluid, speed) => {
          const any = damperModel({ ...damper, seal: noSeal }, fluid);
          const steps = 400;
          const travel = damper.stroke / 2;
          const travels = Array.from({ length: steps + 1 }, (_, index) => (index * travel) / steps);
          const forces = forcesAlongTravel(any, { speed, position: 0 }, travels);
          // Trapezium rule over what passed, step by step.
          let volume = 0;
          for (let i = 1; i <= steps; i++) {
            const passed = (at: number) => any.pistonFlow.flow(forces[at]?.pressureDrop ?? 0) / speed;
            volume += (travel / steps) * (any.dampingArea - (passed(i) + passed(i - 1)) / 2);
          }
          const found = forces[steps]?.cavityVolume ?? 0;
          expect(Math.abs(found - volume)).toBeLessThan(2e-3 * any.dampingArea * travel);
          // And the gas has given shaft and cavity, to the last digits.
          const gas = forces[steps]?.gasPressure ?? 0;
          const { capacity, polytropicExponent, restDisplacement } = any.gas;
          const left =
            (damper.gas.closing.pressure / gas) ** (1 / polytropicExponent) * (capacity - restDisplacement);
          expect(Math.abs(capacity - left - any.shaftArea * travel - found)).toBeLessThan(1e-12 * capacity);
        },
      ),
      { numRuns: 50 },
    ));

  test('with the gas on the shaft side rebound cavitates, later as it comes out', () => {
    const mirrored = damperModel({ ...front(1.4), gas: { ...front(1.4).gas, layout: 'shaft-side' } }, oil);
    const start = cavitationOnset(mirrored, 'rebound', 20e-3)?.speed ?? 0;
    const end = cavitationOnset(mirrored, 'rebound', 0)?.speed ?? 0;
    expect(start).toBeLessThan(end);
    const speed = (start + end) / 2;
    const [early, late] = forcesAlongTravel(mirrored, { speed, position: 20e-3 }, [2e-3, 20e-3]);
    expect(early?.cavityVolume).toBe(0);
    expect(late?.cavityVolume).toBeGreaterThan(0);
    expect(late?.pressureDrop).toBeLessThan(0);
    expect(forceAfterTravel(mirrored, { speed: 1, position: 0 }, 10e-3).cavityVolume).toBe(0);
  });

  test('an emulsion has no cavity of its own', () => {
    const mixed = damperModel({ ...front(1), gas: { ...front(1).gas, layout: 'emulsion' } }, oil);
    expect(forceAfterTravel(mixed, { speed: 2, position: 0 }, 10e-3).cavityVolume).toBe(0);
  });

  test.each([
    [{ speed: 0, position: 0 }, [1e-3], 'size of speed must be greater than 0 m/s'],
    [{ speed: 1, position: 20e-3 }, [5e-3], 'travels[0] must be 0 to the 0.004'],
    [{ speed: -1, position: 5e-3 }, [6e-3], 'travels[0] must be 0 to the 0.005'],
    [{ speed: 1, position: 0 }, [2e-3, 1e-3], 'travels[1] must be 0.002 to the'],
    [{ speed: 1, position: 0 }, [-1e-3], 'travels[0] must be 0 or more m'],
  ])('%o over %o is refused', (start, travels, message) => {
    expect(() => forcesAlongTravel(model, start, travels)).toThrow(message);
  });

  test('a shaft and a cavity that leave the gas no room are refused', () => {
    expect(() => forceWithCavity(model, { speed: 1, position: 0 }, 1e-6)).toThrow('the shaft locks');
    expect(() => forceWithCavity(model, { speed: 1, position: 0 }, -1e-9)).toThrow(
      'cavityVolume must be 0 or more m³',
    );
  });
});

describe('a cavity that has taken all the room of the gas', () => {
  test.each([0.01, 0.3, 3])(
    'at %d m/s all that the whole piston sweeps has to pass it, so that the shaft can go on',
    (speed) => {
      // The gas has no room left to give, so the cavity gives up what the shaft takes: Q = (A_damping + A_shaft) v, worked out by hand.
      const damper: Damper = { ...front(1.2), gas: sealedGas({ volume: 0.2e-6, polytropicExponent: 1.2 }) };
      const tight = {
        ...damper,
        piston: { ...damper.piston, diameter: 11.99e-3, holes: [{ count: 1, diameter: 0.3e-3 }] },
      };
      const model = damperModel(tight, { kinematicViscosity: 1e-3, density: 970 });
      const [half, end] = forcesAlongTravel(model, { speed, position: 0 }, [5e-3, 10e-3]);
      const expected = model.pistonFlow.pressureDrop(
        (model.dampingArea + model.shaftArea) * speed,
      ).pressureDrop;
      expect(half?.cavitating).toBe(true);
      expect(Math.abs((half?.pressureDrop ?? 0) / expected - 1)).toBeLessThan(2e-3);
      expect(Math.abs((end?.pressureDrop ?? 0) / expected - 1)).toBeLessThan(2e-3);
    },
  );
});

// By hand: half a millilitre of 1 ml of air is taken by the shaft and a cavity, p = 101325 Pa · 2^1.4, and the oil of the other side stands at 20 kPa.
test.each([
  ['blind-side', 1, 1],
  ['shaft-side', -1, -1],
] as const)('a cavity stands at the air-release pressure, gas on the %s', (layout, direction, sign) => {
  const gas = { ...pocketDamper.gas, layout, airReleasePressure: 20e3 };
  const model = damperModel({ ...pocketDamper, gas }, pocketOil);
  const position = 0.014;
  const cavityVolume = 0.5e-6 - pocketShaft * position;
  const motion = { speed: 0.5 * direction, position };
  const { pressureDrop, gasPressure: pressure } = forceWithCavity(model, motion, cavityVolume);
  expect(pressure / (101_325 * 2 ** 1.4)).toBeCloseTo(1, 9);
  expect(pressureDrop / (sign * (101_325 * 2 ** 1.4 - 20e3))).toBeCloseTo(1, 9);
});
