import { expect, test } from 'vitest';
import { dropTime } from '../../lib/measure/model/drop-time.js';

const gravity = 9.80665;
const shockOf = (dampingForce: (speed: number) => number) => ({
  friction: 0,
  at: () => ({ gasForce: () => 0, dampingForce, kinematicViscosity: 3e-4, density: 970 }),
});
const drop = { mass: 0.05, temperature: 293.15, from: 0.02, to: 0.005 };

// By hand: the weight falls at the speed v of F(v) = m g, over 15 mm.
test.each([
  ['a shock that a weight hardly moves', (v: number) => 1e7 * v, (0.05 * gravity) / 1e7],
  ['one that it moves quickly', (v: number) => 0.01 * v, (0.05 * gravity) / 0.01],
  [
    'oil that thins, so that force goes as the 0.3rd power',
    (v: number) => 0.6 * Math.sign(v) * Math.abs(v) ** 0.3,
    ((0.05 * gravity) / 0.6) ** (1 / 0.3),
  ],
  ['an orifice', (v: number) => 50 * v * Math.abs(v), Math.sqrt((0.05 * gravity) / 50)],
])('the time of a drop: %s', (_, dampingForce, speed) => {
  expect(dropTime(shockOf(dampingForce), drop) / (0.015 / speed)).toBeCloseTo(1, 5);
});

test('is refused by the weight where no speed holds it', () => {
  expect(() =>
    dropTime(
      shockOf((v) => Math.sign(v) * 0.1 * Math.tanh(Math.abs(v))),
      drop,
    ),
  ).toThrow(
    /^mass must be light enough to sink at a steady speed, before a cavity opens, in kg, got 0\.05 kg$/u,
  );
});
