import { expect, test } from 'vitest';
import { readParts } from '../../lib/parts/index.js';
import { movingBuild } from '../../notebooks/base/moving-build.js';

const closed = (shaft: string, bleed: string) => {
  const file = {
    dashpot: 1,
    oils: [{ name: 'oil', base: 'silicone', viscosity: '400 cSt' }],
    pistons: [
      { name: 'piston', diameter: '11.9 mm', thickness: '2.5 mm', holes: [{ count: 4, diameter: '1.2 mm' }] },
    ],
    shocks: [
      {
        name: 'shock',
        bore: '12 mm',
        shaft: '3.5 mm',
        stroke: '25 mm',
        compensator: { kind: 'emulsion', 'gas-fraction': 0.2 },
        closing: { shaft, bleed },
        inside: { length: '40 mm', 'cap-volume': '0.5 ml', 'solid-volume': '0.3 ml' },
      },
    ],
    builds: [{ name: 'front', shock: 'shock', piston: 'piston', oil: 'oil' }],
  };
  const [build] = readParts(JSON.stringify(file)).builds;
  if (build === undefined) throw new Error('a build is in the file');
  return movingBuild(build, 293.15, 'likely').shock.oil;
};

// By hand: π/4 · 12² mm² · 40 mm is 4.5239 ml; 0.5 ml in the cap more and 0.3 ml of piston and nut less, that is what oil and gas fill at full extension, however the shock was closed. What is
// guessed beyond the piston, 4 mm of the annulus, comes to it.
test.each([
  ['fully out', 'once'],
  ['fully in', 'once'],
  ['10 mm', 'twice'],
])('an emulsion closed %s and bled %s fills the same body at full extension', (shaft, bleed) => {
  const beyond = (Math.PI / 4) * (12 ** 2 - 3.5 ** 2) * 1e-3;
  const { volume } = closed(shaft, bleed);
  const clearance = 1e6 * volume - (4.5239 + 0.5 - 0.3);
  expect(clearance / beyond).toBeCloseTo(4, 2);
});

test('the deeper it was closed, the more of it is gas', () => {
  expect(closed('fully in', 'once').airFraction).toBeGreaterThan(closed('fully out', 'once').airFraction);
});
