import { expect, test } from 'vitest';
import { finishedCorners } from './finished-corners.js';

// More are run by hand: npx tsx benchmarks/random-corners.ts 100000
test('three hundred random corners: each ends, with numbers or with a named refusal', () => {
  expect(finishedCorners(300)).toBeGreaterThan(240);
});
