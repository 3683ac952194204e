import fc from 'fast-check';
import { expect, test } from 'vitest';
import { roomPressure } from '../../lib/gas/gas-room.js';
import { pressureOfTwo } from '../../lib/gas/two-rooms.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const room = (volume: number, stiffness: number, wallPressure: number) => ({
  volume,
  logGasPressure: Math.log(101_325),
  gasPressure: 101_325,
  wallPressure,
  stiffness,
  vented: false,
});

// By hand: bubbles of V at rest have V (p₀/p)^(1/n) at a pressure p, and what both have given up is what was taken.
test('bubbles beside a bladder: a pressure at which both have given up what was taken, in either order', () => {
  fc.assert(
    fc.property(
      within(1e-7, 2e-6),
      fc.oneof(fc.constant(0), within(1e8, 1e11), within(1e11, 1e14)),
      within(-2e3, 2e3),
      within(1e-8, 2e-6),
      within(-0.5, 0.97),
      within(1, 1.4),
      (volume, stiffness, walls, bubbles, share, exponent) => {
        const wallPressure = stiffness === 0 ? 0 : walls;
        const [held, free] = [room(volume, stiffness, wallPressure), room(bubbles, 0, 0)] as const;
        const taken = share * (volume + bubbles);
        const pressure = pressureOfTwo([held, free], taken, exponent);
        const turned = pressureOfTwo([free, held], taken, exponent);
        if (pressure === undefined || turned === undefined) throw new Error('no pressure of two rooms');
        expect(pressure / turned).toBeCloseTo(1, 9);
        const left = bubbles * (101_325 / pressure) ** (1 / exponent);
        expect(roomPressure(held, taken - (bubbles - left), exponent) / pressure).toBeCloseTo(1, 6);
      },
    ),
    { numRuns: 400 },
  );
});

// By hand: a vented room of 1 ml behind soft walls has given up all of it at p₀ + k V, 1.02 bar; half of the 0.2 ml beside it is left, at 2^1.4 times its pressure (Poisson).
test('a vented room that is full gives up no more', () => {
  const vented = { ...room(1e-6, 1e9, 0), vented: true };
  const pressure = pressureOfTwo([vented, room(2e-7, 0, 0)], 1.1e-6, 1.4) ?? Number.NaN;
  expect(pressure / (101_325 * 2 ** 1.4)).toBeCloseTo(1, 12);
});

test('is silent where both have walls, so that the search for any rooms is asked', () => {
  expect(pressureOfTwo([room(1e-6, 1e10, 0), room(1e-6, 1e10, 0)], 1e-7, 1.4)).toBeUndefined();
});
