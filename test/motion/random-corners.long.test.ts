import { expect, test } from 'vitest';
import { randomNumbers } from '../laws/random-damper.js';
import { finishedCorners } from './finished-corners.js';
import { notFinite, runRandomCorner } from './random-corner.js';

test('sixty random corners: each ends, with numbers or with a named refusal', () => {
  expect(finishedCorners(60)).toBeGreaterThan(48);
});

// Found by a longer run: gas mixed through the oil that is almost all the room the shaft has. The search for its rest stopped before the root.
test('corner 8814 comes to rest before it moves', () => {
  const next = randomNumbers(20_261_125 + 7919 * 8814);
  for (let i = 0; i < 8; i++) next();
  const outcome = runRandomCorner(next, 0.05);
  expect(notFinite(outcome)).toEqual([]);
  expect(outcome.restTravel).toBeGreaterThan(0);
});
