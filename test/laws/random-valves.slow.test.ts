import { describe, expect, test } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { randomDamper, randomNumbers } from './random-damper.js';

describe('2000 pistons with a valve', () => {
  test('none fails, risen or fallen; the flow is met, and the same each time', () => {
    const next = randomNumbers(20_261_125);
    for (let index = 0; index < 2000; index++) {
      const { damper, fluid, speed } = randomDamper(next, 1);
      const { pistonFlow, dampingArea } = damperModel(damper, fluid);
      const [valve] = pistonFlow.valves;
      const flow = (valve?.opens ?? 1) * dampingArea * speed;
      for (const solve of [pistonFlow.pressureDrop, pistonFlow.fallingPressureDrop]) {
        const { pressureDrop, residual } = solve(flow);
        expect(pressureDrop * flow).toBeGreaterThan(0);
        expect(Math.abs(residual)).toBeLessThan(1e-7 * Math.abs(flow));
        expect(solve(flow).pressureDrop).toBe(pressureDrop);
      }
      const risen = pistonFlow.pressureDrop(flow).pressureDrop;
      // Where the pressure falls while the disc leaves its seat, the pressure alone does not say how far it has.
      if (Math.abs(risen) > (valve?.openingPressure ?? 0)) {
        expect(Math.abs(pistonFlow.flow(risen) / flow - 1)).toBeLessThan(1e-6);
      }
    }
  });
});
