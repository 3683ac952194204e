import { expect, test } from 'vitest';
import { assembleShock, readParts } from '../../lib/parts/index.js';
import { movingBuild } from '../../notebooks/base/moving-build.js';
import { bodyGuess } from '../../notebooks/warm-up/body.js';

const file = (more: string) => `dashpot: 1
oils: [{ name: oil, base: silicone, viscosity: 350 cSt, at: 25 °C }]
pistons: [{ name: p, diameter: 11.94 mm, thickness: 2.5 mm, holes: [{ count: 2, diameter: 1.7 mm }] }]
shocks: [{ name: s, bore: 12 mm, shaft: 3 mm, stroke: 24 mm, ${more} }]
builds: [{ name: b, shock: s, piston: p, oil: oil }]
`;
function buildOf(more: string) {
  const [build] = readParts(file(more)).builds;
  if (build === undefined) throw new Error('no build');
  return build;
}

const circle = (diameter: number) => (Math.PI / 4) * diameter ** 2;
const face = (circle(12e-3) + circle(11.94e-3)) / 2;
const annulus = circle(12e-3) - circle(3e-3);

// By hand: 4 mm of clearance behind the piston, a guess, is full of oil beside what the file says; half of what the stroke leaves over stays on either side at least.
test('oil in all and behind the piston, as the file says it', () => {
  const { oil, farVolume } = movingBuild(
    buildOf('oil-volume: 3.2 ml, compensator: { kind: air-pocket, volume: 0.9 ml }'),
    293.15,
  ).shock;
  const clearance = annulus * 4e-3;
  expect(oil.volume).toBeCloseTo(3.2e-6 + clearance, 15);
  const swept = (face - circle(3e-3)) * 24e-3;
  expect(farVolume).toBeCloseTo(Math.min(clearance, (3.2e-6 + clearance - swept) / 2), 15);
});

// The face that presses is the mean of piston and bore: pressure falls evenly along the gap.
test('with its gas on the side of the shaft the piston sweeps its whole face, and a body that is a guess is as long as it needs', () => {
  const { oil, farVolume } = movingBuild(
    buildOf('compensator: { kind: air-pocket, volume: 0.9 ml, side: shaft-side }'),
    293.15,
  ).shock;
  const clearance = annulus * 4e-3;
  expect(oil.volume).toBeCloseTo(face * 24e-3 + 2 * clearance, 12);
  expect(farVolume).toBeCloseTo(oil.volume - clearance, 12);
});

// By hand, with the guesses that the page names: wall 1.5 mm, caps 10 mm, aluminium 2.43, steel 3.7 MJ/(m³·K), oil 1500 J/(kg·K).
test('the body of a shock that warms: a tube with caps, a shaft and its oil', () => {
  const assembled = assembleShock(
    buildOf('oil-volume: 3.2 ml, compensator: { kind: air-pocket, volume: 0.9 ml }'),
  );
  const { body, heatCapacity, windShare } = bodyGuess(assembled, 970, 'likely');
  const length = assembled.closed.chamber.length + 10e-3;
  expect(body).toEqual({
    diameter: expect.closeTo(15e-3, 12),
    length: expect.closeTo(length, 12),
    emissivity: 0.5,
  });
  const tube = (circle(15e-3) - circle(12e-3)) * length;
  const caps = circle(12e-3) * 10e-3;
  const shaft = circle(3e-3) * 34e-3;
  expect(heatCapacity).toBeCloseTo(1500 * 970 * 3.2e-6 + 2.43e6 * (tube + caps) + 3.7e6 * shaft, 9);
  expect(windShare).toBe(1);
  const [cool, warm] = (['cool', 'warm'] as const).map((guessed) => bodyGuess(assembled, 970, guessed));
  expect(cool?.heatCapacity).toBeGreaterThan(heatCapacity);
  expect(warm?.heatCapacity).toBeLessThan(heatCapacity);
  expect([cool?.windShare, warm?.windShare]).toEqual([1.7, 0.4]);
});
