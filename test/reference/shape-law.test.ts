import { describe, expect, test } from 'vitest';
import { typicalAreaRatio } from '../../lib/flow/geometry/hole.js';
import { sharpHoleLaw } from '../../lib/flow/hole/sharp-hole.js';
import { lawOf } from './shape-law.js';
import { fittedShapes, heldOutShapes, shapeFamilies } from './shape-reference.js';

/** 1 % to Re 30 and 2 % above; 5 % where the jet has left the wall of a widening hole. */
function bound(reynoldsNumber: number, jetInside: boolean): number {
  return jetInside ? 0.05 : reynoldsNumber <= 30 ? 0.01 : 0.02;
}

describe('the solutions', () => {
  test('are there for each family, fitted and held out', () => {
    for (const shapes of [fittedShapes, heldOutShapes]) {
      expect(new Set(shapes.map(({ family }) => family))).toEqual(new Set(shapeFamilies));
    }
    expect(heldOutShapes).toHaveLength(11);
    expect(heldOutShapes.flatMap(({ points }) => points)).toHaveLength(110);
  });

  test('reach L/d 0.3, 16 % of the bore and Re 800', () => {
    const all = [...fittedShapes, ...heldOutShapes];
    expect(Math.min(...all.map(({ lengthRatio }) => lengthRatio))).toBe(0.3);
    expect(Math.max(...all.map(({ lengthRatio }) => lengthRatio))).toBe(6);
    expect(Math.max(...all.map(({ areaRatio }) => areaRatio))).toBeCloseTo(0.16, 6);
    for (const { points } of all) expect(points.at(-1)?.reynoldsNumber).toBeGreaterThanOrEqual(500);
  });
});

describe.each([
  ['held out', heldOutShapes],
  ['fitted', fittedShapes],
] as const)('%s', (_, shapes) => {
  describe.each(shapes.map((hole) => ({ ...hole, hole })))('$name', ({ hole, points }) => {
    test.each(points)('pressure drop at Re $reynoldsNumber', ({ reynoldsNumber, euler, jetInside }) => {
      const error = lawOf(hole, reynoldsNumber).euler / euler - 1;
      expect(Math.abs(error)).toBeLessThan(bound(reynoldsNumber, jetInside));
    });

    test.each(points)('recoil at Re $reynoldsNumber', ({ reynoldsNumber, euler, force }) => {
      const error = (euler - lawOf(hole, reynoldsNumber).recoil) / force - 1;
      expect(Math.abs(error)).toBeLessThan(0.01);
    });
  });
});

test('where nothing is said, the holes take 4 % of the bore', () => {
  expect(typicalAreaRatio).toBe(0.04);
  const { pressureDrop } = sharpHoleLaw.resistance(
    { diameter: 1, length: 1 },
    { density: 2, kinematicViscosity: 0.01 },
  );
  const hole = {
    name: '',
    family: 'sharp',
    diameter: 1,
    lengthRatio: 1,
    areaRatio: 0.04,
    points: [],
  } as const;
  expect(pressureDrop(1)).toBe(lawOf(hole, 100).euler);
});
