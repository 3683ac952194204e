import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { HoleEdge, HoleShape } from '../../lib/flow/geometry/hole-shape.js';
import { shapedHoleResistance } from '../../lib/flow/hole/shaped-hole.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyEdge: fc.Arbitrary<HoleEdge | undefined> = fc.oneof(
  fc.constant(undefined),
  between(0.005, 0.35).map((radius) => ({ kind: 'rounded', radius }) as const),
  fc
    .tuple(between(0.005, 0.35), between(0.3, 1.2))
    .map(([depth, halfAngle]) => ({ kind: 'chamfered', depth, halfAngle }) as const),
);

/** Diameter 1 at the blind side; wider and narrower than what was checked. */
const anyShape: fc.Arbitrary<HoleShape> = fc.oneof(
  fc.tuple(anyEdge, anyEdge).map(
    ([blindEdge, shaftEdge]): HoleShape => ({
      kind: 'straight',
      ...(blindEdge && { blindEdge }),
      ...(shaftEdge && { shaftEdge }),
    }),
  ),
  between(0.6, 1.7).map((shaftSideDiameter) => ({ kind: 'conical', shaftSideDiameter }) as const),
  fc
    .tuple(between(0.55, 1.8), between(0.1, 0.7))
    .map(
      ([shaftSideDiameter, shaftSideLength]) =>
        ({ kind: 'stepped', shaftSideDiameter, shaftSideLength }) as const,
    ),
  between(0.1, 5).map((travel) => ({ kind: 'slot', travel }) as const),
);

const anyCase = fc.record({ shape: anyShape, thickness: between(0.8, 6), areaRatio: between(0, 0.2) });
const anySpeed = between(-2, 4).map((decades) => 10 ** decades);
const anySign = fc.constantFrom(1, -1);

describe('the law of any shape, both ways', () => {
  test('is convex in the speed, so that every Newton iteration on it settles', () =>
    fc.assert(
      fc.property(anyCase, anySpeed, anySign, ({ shape, thickness, areaRatio }, speed, sign) => {
        const fluid = { density: 2, kinematicViscosity: 1 };
        const { slope } = shapedHoleResistance(1, shape, thickness, fluid, areaRatio);
        expect(slope(sign * speed)).toBeGreaterThan(0);
        expect(slope(1.02 * sign * speed)).toBeGreaterThan(slope(sign * speed));
      }),
      { numRuns: 3000 },
    ));

  test('has the slope that its pressure drop has', () =>
    fc.assert(
      fc.property(anyCase, anySpeed, anySign, ({ shape, thickness, areaRatio }, speed, sign) => {
        const fluid = { density: 2, kinematicViscosity: 1 };
        const law = shapedHoleResistance(1, shape, thickness, fluid, areaRatio);
        const [high, low] = [1.0001 * sign * speed, 0.9999 * sign * speed];
        const numerical = (law.pressureDrop(high) - law.pressureDrop(low)) / (high - low);
        expect(Math.abs(law.slope(sign * speed) / numerical - 1)).toBeLessThan(1e-5);
      }),
    ));

  test('gives the speed back from the pressure drop', () =>
    fc.assert(
      fc.property(anyCase, anySpeed, anySign, ({ shape, thickness, areaRatio }, speed, sign) => {
        const fluid = { density: 2, kinematicViscosity: 1 };
        const law = shapedHoleResistance(1, shape, thickness, fluid, areaRatio);
        const back = law.meanSpeed(law.pressureDrop(sign * speed));
        expect(Math.abs(back / (sign * speed) - 1)).toBeLessThan(1e-9);
      }),
      { numRuns: 1000 },
    ));

  test('does not know the direction of creeping oil', () =>
    fc.assert(
      fc.property(anyCase, ({ shape, thickness, areaRatio }) => {
        const fluid = { density: 2, kinematicViscosity: 1 };
        const { slope } = shapedHoleResistance(1, shape, thickness, fluid, areaRatio);
        expect(Math.abs(slope(1e-9) / slope(-1e-9) - 1)).toBeLessThan(1e-9);
      }),
    ));
});
