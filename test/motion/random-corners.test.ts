import { expect, test } from 'vitest';
import { randomNumbers } from '../laws/random-damper.js';
import { isNamed, notFinite, runRandomCorner } from './random-corner.js';

// A hundred thousand run by hand: npx tsx benchmarks/random-corners.ts 100000
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
