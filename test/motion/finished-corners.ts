import { expect } from 'vitest';
import { randomNumbers } from '../laws/random-damper.js';
import { isNamed, notFinite, runRandomCorner } from './random-corner.js';

/** How many of so many random corners end with numbers; the others are refused by name. */
export function finishedCorners(count: number): number {
  let finished = 0;
  for (let index = 0; index < count; index++) {
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
  return finished;
}
