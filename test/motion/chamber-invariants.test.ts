import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bindChambers, emptyPressures } from '../../lib/motion/shock/chambers.js';
import { oilExpansion, pressureAtExpansion } from '../../lib/motion/shock/oil-volume.js';
import { sampleShock } from './sample-shock.js';

describe('oil and gas', () => {
  const oils = fc.record({
    volume: fc.constant(3e-6),
    referencePressure: fc.double({ min: 5e4, max: 5e5, noNaN: true }),
    bulkModulus: fc.double({ min: 5e8, max: 2e9, noNaN: true }),
    airFraction: fc.double({ min: 1e-6, max: 0.999, noNaN: true }),
    airExponent: fc.double({ min: 1, max: 1.4, noNaN: true }),
  });

  test('pressure and volume of oil with air are inverse', () => {
    fc.assert(
      fc.property(oils, fc.double({ min: 0, max: 14, noNaN: true }), (oil, log) => {
        const pressure = 10 * Math.exp(log);
        const found = pressureAtExpansion(oil, oilExpansion(oil, pressure) - 1);
        // The volume carries sixteen digits; how well that fixes the pressure depends on how stiff the oil is there.
        const slack = 1e-9 + (1e-15 * oilExpansion(oil, pressure) * oil.bulkModulus) / pressure;
        expect(Math.abs(found / pressure - 1)).toBeLessThan(slack);
      }),
    );
  });

  test('oil is neither made nor lost: the two chambers hold the volumes that their pressures say', () => {
    const travels = fc.double({ min: 0, max: 0.024, noNaN: true });
    const rooms = fc.double({ min: -1e-9, max: 5e-7, noNaN: true });
    const airs = fc.constantFrom(0, 0.01, 0.05);
    fc.assert(
      fc.property(travels, rooms, airs, (travel, room, airFraction) => {
        const shock = sampleShock({ airFraction });
        const chambers = bindChambers(shock);
        // What cannot be: gas without room, oil of less than no volume.
        if (chambers.gasRoomLeft(travel, room) < 1e-8 || chambers.oilLeft(travel, 0) < 2 * room) return;
        const pressures = emptyPressures();
        chambers.evaluate(travel, room, false, pressures);
        // Nor oil pulled below vacuum: a cavity has opened before.
        if (pressures.far <= 0) return;
        const far = (shock.farVolume + chambers.farArea * travel) / oilExpansion(shock.oil, pressures.far);
        // What the gas has given up at that pressure, by its own law.
        const given = 9e-7 * (1 - (101_325 / pressures.near) ** (1 / 1.4));
        const nearRoom = shock.oil.volume - shock.farVolume - shock.pistonArea * travel + given;
        const near = nearRoom / oilExpansion(shock.oil, pressures.near);
        expect(Math.abs((far + near) / shock.oil.volume - 1)).toBeLessThan(1e-10);
      }),
    );
  });

  test.each(['blind-side', 'shaft-side', 'emulsion'] as const)(
    'slopes of the pressures, gas: %s',
    (layout) => {
      const shock = sampleShock({
        layout,
        airFraction: 0.01,
        ...(layout === 'shaft-side' ? { farVolume: 2.8e-6 } : {}),
      });
      const chambers = bindChambers(shock);
      const at = (travel: number, room: number) => {
        const pressures = emptyPressures();
        chambers.evaluateWithSlopes(travel, room, false, pressures);
        return pressures;
      };
      const [travel, room] = [0.006, 1e-8];
      const here = at(travel, room);
      const [dx, ds] = [1e-8, 1e-13];
      const byTravel = (name: 'near' | 'far') =>
        (at(travel + dx, room)[name] - at(travel - dx, room)[name]) / (2 * dx);
      const byRoom = (name: 'near' | 'far') =>
        (at(travel, room + ds)[name] - at(travel, room - ds)[name]) / (2 * ds);
      for (const [given, found] of [
        [here.nearByTravel, byTravel('near')],
        [here.nearByRoom, byRoom('near')],
        [here.farByTravel, byTravel('far')],
        [here.farByRoom, byRoom('far')],
      ] as const) {
        expect(Math.abs(given - found)).toBeLessThan(
          1e-4 * Math.abs(found) + 1e-3 * Math.abs(here.farByTravel) * 1e-3,
        );
      }
    },
  );
});
