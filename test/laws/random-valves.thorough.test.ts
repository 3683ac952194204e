import { describe, expect, test } from 'vitest';
import type { Damper } from '../../lib/damper/damper.js';
import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';
import type { FluidState } from '../../lib/fluid/oil/fluid-state.js';
import { randomDamper, randomNumbers } from './random-damper.js';

describe('2000 pistons with a valve', () => {
  test('none fails, risen or fallen; the flow is met, and the same each time', () => {
    const next = randomNumbers(20_261_125);
    let refused = 0;
    for (let index = 0; index < 2000; index++) {
      const { damper, fluid, speed } = randomDamper(next, 1);
      const model = modelOrRefused(damper, fluid);
      if (model === undefined) {
        refused++;
        continue;
      }
      const { pistonFlow, dampingArea } = model;
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
    expect(refused).toBeLessThan(40);
  });
});

/** The model, or nothing where a disc is held down with more than a hundred bars, so that its open state is not known. */
function modelOrRefused(damper: Damper, fluid: FluidState): DamperModel | undefined {
  try {
    return damperModel(damper, fluid);
  } catch (error) {
    const [, bars] =
      /^valve\.preload must be smaller, since only (\d+) bar/u.exec((error as Error).message) ?? [];
    if (Number(bars) > 100) return undefined;
    throw error;
  }
}
