import { describe, expect, test } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { forceAfterTravel } from '../../lib/damper/force-after-travel.js';
import { benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import { movingShock } from '../../lib/motion/shock/bind-moving-shock.js';
import { big, front, oil, rear, thicker } from './three-builds.js';

describe('force after a travel at 1 m/s from 8 mm in, against two independent programs (C with CVODE, Python with SciPy)', () => {
  test.each([
    ['front', front, oil, 1.4, 4, 23.9],
    ['front', front, oil, 1.0, 4, 19.9],
    ['front', front, oil, 1.4, 8, 50.9],
    ['front', front, oil, 1.0, 8, 39.1],
    // One program only.
    ['rear', rear, oil, 1.4, 8, 37],
    ['rear', rear, oil, 1.0, 8, 29],
    ['big front', big, thicker, 1.4, 8, 53],
    ['big front', big, thicker, 1.0, 8, 43],
  ] as const)('%s, exponent %d', (_, shock, fluid, exponent, millimetres, expected) => {
    const model = damperModel(shock(exponent), fluid);
    const { force } = forceAfterTravel(model, { speed: 1, position: 8e-3 }, millimetres * 1e-3);
    expect(Math.abs(force / expected - 1)).toBeLessThan(0.02);
  });
});

describe('a bump of 10 mm from 8 mm in, its travel a sin² of which the steepest is 1 m/s', () => {
  // One independent program (Python with SciPy), seals left out, exponent 1.4; printed to whole newtons.
  test.each([
    ['front', front, oil, 45],
    ['rear', rear, oil, 35],
    ['big front', big, thicker, 51],
  ] as const)('%s', (_, shock, fluid, expected) => {
    const damper = shock(1.4);
    const { bore, shaftDiameter, stroke } = damper;
    const moving = movingShock(damperModel(damper, fluid), {
      volume: (Math.PI / 4) * bore ** 2 * (stroke + 6e-3),
      farVolume: (Math.PI / 4) * (bore ** 2 - shaftDiameter ** 2) * 4e-3,
      bulkModulus: 3e9,
    });
    const [height, steps] = [10e-3, 200];
    const times = Array.from({ length: steps + 1 }, (_point, index) => (Math.PI * height * index) / steps);
    const travels = times.map((time) => 8e-3 + height * Math.sin(time / height) ** 2);
    const { largestForce } = benchStroke(moving, { kind: 'table', times, travels });
    expect(Math.abs(largestForce.value - expected)).toBeLessThan(0.5);
  });
});
