import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cavitationOnset } from '../../lib/damper/cavitation-onset.js';
import { shaftArea } from '../../lib/damper/damper.js';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import type { GasLayout } from '../../lib/gas/gas.js';
import { area, damper, oil, shaft, withGas } from './pocket-damper.js';

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

test('closed on the whole shaft with nothing but oil, it goes all the way in and no further', () => {
  const { gas, shaftDiameter, stroke } = damper;
  const whole = shaftArea({ shaftDiameter }) * stroke;
  const closedAt = (displacedVolume: number) => ({
    ...damper,
    gas: {
      ...gas,
      rooms: [],
      closing: { ...gas.closing, displacedVolume },
    },
  });
  expect(() => damperModel(closedAt(whole), oil)).not.toThrow();
  expect(() => damperModel(closedAt(0.99 * whole), oil)).toThrow('it locks there');
});
