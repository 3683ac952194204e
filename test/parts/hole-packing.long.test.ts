import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeHoles, thinnestWall } from '../../lib/parts/schema/hole-packing.js';

describe('placeHoles', () => {
  it('puts six equal holes around a shaft of their size and no seventh', () => {
    // The kissing number of circles in the plane is 6 (Conway & Sloane, Sphere Packings, Lattices and Groups, 3rd ed.
    // 1999, ch. 1). With half a wall around each, the circles have the size hole + wall.
    const shaft = 2e-3;
    const placedOfSeven = (hole: number): number =>
      placeHoles([{ count: 7, diameter: hole }], shaft + 2 * hole + 4 * thinnestWall, shaft).placed.length;
    // Six circles of one size touch exactly: a millionth on either side decides.
    expect(placedOfSeven(shaft * (1 - 1e-6))).toBe(6);
    expect(placedOfSeven(shaft * (1 + 1e-6))).toBe(5);
  });

  it('opens a second ring where the first is full', () => {
    const { placed, left } = placeHoles([{ count: 20, diameter: 1.7e-3 }], 11.95e-3, 1e-3);
    expect(left).toEqual([]);
    expect(new Set(placed.map(({ radius }) => radius.toFixed(9))).size).toBe(2);
  });

  it('places nothing where nothing is asked for', () => {
    expect(placeHoles([], 12e-3, 3e-3)).toEqual({ placed: [], left: [] });
  });

  const group = fc.record({
    count: fc.integer({ min: 1, max: 12 }),
    diameter: fc.double({ min: 0.1e-3, max: 4e-3, noNaN: true }),
  });
  const face = fc.double({ min: 6e-3, max: 30e-3, noNaN: true });
  const shaft = fc.double({ min: 1e-3, max: 4e-3, noNaN: true });

  it('keeps a wall between any two holes, rim and shaft', () => {
    fc.assert(
      fc.property(fc.array(group, { maxLength: 5 }), face, shaft, (holes, faceDiameter, shaftDiameter) => {
        const { placed, left } = placeHoles(holes, faceDiameter, shaftDiameter);
        expect(placed.length + left.length).toBe(holes.reduce((sum, { count }) => sum + count, 0));
        // A nanometre for rounding.
        const wall = thinnestWall - 1e-9;
        placed.forEach((hole, index) => {
          expect(hole.radius + hole.diameter / 2 + wall).toBeLessThanOrEqual(faceDiameter / 2);
          expect(hole.radius - hole.diameter / 2 - wall).toBeGreaterThanOrEqual(shaftDiameter / 2);
          for (const other of placed.slice(0, index)) {
            const distance = Math.hypot(
              hole.radius * Math.cos(hole.angle) - other.radius * Math.cos(other.angle),
              hole.radius * Math.sin(hole.angle) - other.radius * Math.sin(other.angle),
            );
            expect(distance).toBeGreaterThanOrEqual((hole.diameter + other.diameter) / 2 + wall);
          }
        });
      }),
    );
  });

  it('finds room for all where the area is ten times that of the holes', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), face, (count, faceDiameter) => {
        const diameter = Math.min(faceDiameter / Math.sqrt(10 * count) - 2 * thinnestWall, faceDiameter / 6);
        expect(placeHoles([{ count, diameter }], faceDiameter, 1e-3).left).toEqual([]);
      }),
    );
  });
});
