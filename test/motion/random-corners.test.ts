import { expect, test } from 'vitest';
import { randomNumbers } from '../laws/random-damper.js';
import { isNamed, notFinite, runRandomCorner } from './random-corner.js';

// More are run by hand: npx tsx benchmarks/random-corners.ts 100000
test('three hundred random corners: each ends, with numbers or with a named refusal', {
  timeout: 120_000,
}, () => {
  let finished = 0;
  for (let index = 0; index < 300; index++) {
    const next = randomNumbers(20_261_125 + 7919 * index);
    for (let i = 0; i < 8; i++) next();
    try {
      const outcome = runRandomCorner(next, 0.15);
      expect(notFinite(outcome), `corner ${index}`).toEqual([]);
      expect(outcome.steps).toBeLessThan(20_000);
      finished++;
    } catch (error) {
      if (!isNamed(error)) throw error;
    }
  }
  expect(finished).toBeGreaterThan(240);
});

// Found by a longer run: gas mixed through the oil that is almost all the room the shaft has. The search for its rest stopped before the root.
test('corner 8814 comes to rest before it moves', () => {
  const next = randomNumbers(20_261_125 + 7919 * 8814);
  for (let i = 0; i < 8; i++) next();
  const outcome = runRandomCorner(next, 0.05);
  expect(notFinite(outcome)).toEqual([]);
  expect(outcome.restTravel).toBeGreaterThan(0);
});
