import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { boundMismatch } from '../../lib/decisions/match/bound-mismatch.js';
import {
  dampingMismatch,
  dampingOf,
  logMismatch,
  scaledDamping,
} from '../../lib/decisions/match/damping-mismatch.js';
import { viscosityWindow } from '../../lib/decisions/match/match-viscosity.js';
import { speedRange } from '../../lib/decisions/match/speed-weights.js';
import { anyDamper, anyFluid } from '../laws/arbitraries.js';
import { fluid, shockWith } from './demo.js';

const range = speedRange(0.05, 1);
const density = 970;
const wanted = dampingOf(damperModel(shockWith(4, 1.2e-3), fluid(350)), range);

/** Typical mismatch at a viscosity, by the model of the whole damper. */
const typicalAt = (damper: Parameters<typeof damperModel>[0], kinematicViscosity: number): number =>
  dampingMismatch(damperModel(damper, { kinematicViscosity, density }), wanted).typical;

describe('a viscosity window', () => {
  const cases = {
    'the damper of the wanted damping': [shockWith(4, 1.2e-3), 0.08],
    'bigger holes': [shockWith(3, 1.5e-3), 0.3],
    'two sizes of holes, which take the general way': [
      {
        ...shockWith(4, 1.2e-3),
        piston: {
          ...shockWith(4, 1.2e-3).piston,
          holes: [
            { count: 2, diameter: 1.1e-3 },
            { count: 2, diameter: 1.3e-3 },
          ],
        },
      },
      0.08,
    ],
  } as const;
  for (const [name, [damper, tolerance]] of Object.entries(cases)) {
    it(`is what a fine grid of viscosities shows: ${name}`, () => {
      const window = viscosityWindow({ damper, density, wanted }, tolerance);
      if (window === undefined) throw new Error('no window');
      const { low, best, high } = window;
      const grid = Array.from({ length: 2001 }, (_, index) => 1e-6 * 1e4 ** (index / 2000));
      for (const viscosity of grid)
        expect(typicalAt(damper, viscosity) <= tolerance).toBe(viscosity >= low && viscosity <= high);
      // Bisection of the grid's own cells, with the model of the whole damper: no step of the library's solvers is in it.
      const first = grid.findIndex((viscosity) => viscosity >= low);
      const last = grid.findIndex((viscosity) => viscosity > high);
      for (const [edge, cell] of [
        [low, first],
        [high, last],
      ] as const) {
        let [thin, thick] = [grid[cell - 1] ?? 0, grid[cell] ?? 0];
        for (let step = 0; step < 60; step++) {
          const middle = (thin + thick) / 2;
          if (typicalAt(damper, middle) <= tolerance === (edge === low)) thick = middle;
          else thin = middle;
        }
        expect(Math.abs(edge / thin - 1)).toBeLessThan(1e-9);
      }
      const least = Math.min(...grid.map((viscosity) => typicalAt(damper, viscosity)));
      expect(typicalAt(damper, best)).toBeLessThanOrEqual(least);
    });
  }
});

describe('a mismatch bound once', () => {
  it('is that of the whole model for any oil', () => {
    let light = 0;
    fc.assert(
      fc.property(
        anyDamper,
        anyFluid,
        anyFluid,
        fc.constantFrom('blind-side', 'shaft-side', 'emulsion'),
        (any, one, other, layout) => {
          const damper = { ...any, gas: { ...any.gas, layout } };
          if (damper.piston.holes.length === 1) light++;
          const model = damperModel(damper, one);
          // Speeds that count unequally.
          const weights = speedRange(0.02, 3, 3).map(({ speed }, index) => ({ speed, weight: 1 + index }));
          const own = scaledDamping(dampingOf(model, weights), 1.3);
          // Nobody wants holes so wide that their law, far out of its range, gives a force along with the motion.
          fc.pre(own.forces.every((force, index) => force * (weights[index]?.speed ?? 0) > 0));
          const { kinematicViscosity } = other;
          const filled = damperModel(damper, { kinematicViscosity, density: other.density });
          const expected = logMismatch(filled, own);
          const bound = boundMismatch(damper, own, one);
          if (expected.rootMeanSquare === Number.POSITIVE_INFINITY) {
            expect(bound(kinematicViscosity, other.density)).toBe(expected.rootMeanSquare);
            return;
          }
          // Each ends within some 1e-12 of its pressure drop, and a logarithm turns that into as much without a unit.
          expect(Math.abs(bound(kinematicViscosity, other.density) - expected.rootMeanSquare)).toBeLessThan(
            1e-10,
          );
        },
      ),
    );
    expect(light).toBeGreaterThan(0);
  });
});
