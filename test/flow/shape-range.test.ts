import { describe, expect, test } from 'vitest';
import type { HoleShape } from '../../lib/flow/geometry/hole-shape.js';
import { holePath } from '../../lib/flow/hole/hole-path.js';
import { holePathWarnings } from '../../lib/flow/hole/shape-range.js';
import { sharpHoleLaw } from '../../lib/flow/hole/sharp-hole.js';

const fluid = { density: 970, kinematicViscosity: 3.5e-4 };

function codes(shape: HoleShape | undefined, lengthRatio: number, reynoldsNumber: number): readonly string[] {
  const path = holePath(
    { count: 1, diameter: 1, ...(shape && { shape }) },
    lengthRatio,
    fluid,
    sharpHoleLaw,
    0.04,
  );
  return holePathWarnings(path, sharpHoleLaw, reynoldsNumber).map(({ code }) => code);
}

const chamfer = (depth: number, degrees: number): HoleShape => ({
  kind: 'straight',
  shaftEdge: { kind: 'chamfered', depth, halfAngle: (degrees * Math.PI) / 180 },
});

describe('the warning of each shape says where it was checked', () => {
  test.each<[string, HoleShape | undefined, number, number, readonly string[]]>([
    ['sharp, all within', undefined, 0.3, 800, []],
    ['sharp, short', undefined, 0.29, 10, ['hole-length-ratio-low']],
    ['chamfers of 30 and 60°', chamfer(0.3, 60), 1, 800, []],
    ['a flat chamfer', chamfer(0.1, 70), 1, 10, ['hole-edge-angle-high']],
    ['a steep chamfer', chamfer(0.1, 20), 1, 10, ['hole-edge-angle-low']],
    ['a deep edge', chamfer(0.4, 45), 1, 10, ['hole-edge-depth-high']],
    [
      'an edge, long and fast',
      chamfer(0.1, 45),
      5,
      900,
      ['hole-length-ratio-high', 'hole-reynolds-number-high'],
    ],
    ['a taper', { kind: 'conical', shaftSideDiameter: 1.5 }, 2, 800, []],
    ['a wide taper', { kind: 'conical', shaftSideDiameter: 1.6 }, 2, 10, ['hole-taper-high']],
    ['a step', { kind: 'stepped', shaftSideDiameter: 1.7, shaftSideLength: 1 }, 2, 800, []],
    [
      'a small step',
      { kind: 'stepped', shaftSideDiameter: 1.1, shaftSideLength: 1 },
      2,
      10,
      ['hole-step-low'],
    ],
    ['a wide step', { kind: 'stepped', shaftSideDiameter: 2, shaftSideLength: 1 }, 2, 10, ['hole-step-high']],
    ['a slot', { kind: 'slot', travel: 1 }, 2, 20, []],
    ['a slot with inertia', { kind: 'slot', travel: 1 }, 2, 30, ['hole-reynolds-number-high']],
  ])('%s', (_, shape, lengthRatio, reynoldsNumber, expected) => {
    expect(codes(shape, lengthRatio, reynoldsNumber)).toEqual(expected);
  });

  test('and names the shape in words', () => {
    const path = holePath(
      { count: 1, diameter: 1, shape: { kind: 'conical', shaftSideDiameter: 1.6 } },
      2,
      fluid,
      sharpHoleLaw,
      0.04,
    );
    expect(holePathWarnings(path, sharpHoleLaw, 10)[0]?.message).toBe(
      'Ratio of the two diameters of a taper 1.6 is above 1.5, the end of the range of the tapered hole law',
    );
  });
});
