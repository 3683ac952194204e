import fc from 'fast-check';
import { expect } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { randomDamper, randomNumbers } from './random-damper.js';

/** Solves so many pistons of any holes, shapes, valves and oils at any speed, both ways: the same as benchmarks/random-pistons.ts. */
export function requireSolvedPistons(numRuns: number): void {
  fc.assert(
    fc.property(fc.integer({ min: 1 }), (seed) => {
      const { damper, fluid, speed } = randomDamper(randomNumbers(seed));
      const model = damperModel(damper, fluid);
      for (const v of [speed, -speed]) {
        const point = damperForce(model, { speed: v, position: 0 });
        expect(point.dampingForce * v).toBeGreaterThan(0);
        expect(Math.abs(point.residual)).toBeLessThan(1e-8 * model.dampingArea * speed);
        const faster = damperForce(model, { speed: 1.02 * v, position: 0 });
        const crossed = model.pistonFlow.valves.some(
          ({ opens, openingPressure, leastOpenDrop }) =>
            opens * v > 0 &&
            leastOpenDrop < openingPressure &&
            Math.abs(point.pressureDrop) < openingPressure * (1 + 1e-9),
        );
        // A preloaded valve that opens in between may let the pressure fall back.
        if (!crossed && !faster.cavitating)
          expect(Math.abs(faster.pressureDrop)).toBeGreaterThan(Math.abs(point.pressureDrop));
      }
    }),
    { numRuns },
  );
}
