import { describe, expect, test } from 'vitest';
import type { HoleShape } from '../../lib/flow/geometry/hole-shape.js';
import type { HoleGroup } from '../../lib/flow/geometry/piston.js';
import { shapedHoleResistance } from '../../lib/flow/hole/shaped-hole.js';
import { sharpHoleLaw } from '../../lib/flow/hole/sharp-hole.js';
import { slotConductance } from '../../lib/flow/hole/slot.js';
import { pistonFlow } from '../../lib/flow/piston/piston-flow.js';
import rows from '../reference/shape-rows.json' with { type: 'json' };

/** Δp over the dynamic pressure of the narrowest section; a hole of throat 1, so that Re is 1/ν. */
function eulerNumber(diameter: number, length: number, shape: HoleShape, reynoldsNumber: number): number {
  const fluid = { density: 2, kinematicViscosity: 1 / Math.abs(reynoldsNumber) };
  return Math.abs(
    shapedHoleResistance(diameter, shape, length, fluid).pressureDrop(Math.sign(reynoldsNumber)),
  );
}

// How near each family comes to our own axisymmetric solutions (test/reference), Re 0.1 to 300; docs/hole-law.md has the table.
const bound: Readonly<Record<string, number>> = { straight: 0.02, conical: 0.04, stepped: 0.03 };

describe('shaped holes against the numerical reference', () => {
  test('there are rows of each family', () => {
    expect(new Set(rows.map(({ shape }) => shape.kind))).toEqual(new Set(['straight', 'conical', 'stepped']));
  });

  for (const { name, diameter, length, shape, points } of rows) {
    test.each(points)(`${name}, Re %d`, (reynoldsNumber = 0, expected = 0) => {
      const law = eulerNumber(diameter, length, shape as HoleShape, reynoldsNumber);
      expect(Math.abs(law / expected - 1)).toBeLessThan(bound[shape.kind] ?? 0);
    });
  }

  test('widened inlets are neither too hard nor too soft on the whole', () => {
    const errors = rows
      .filter(({ name }) => name.includes('at the inlet'))
      .flatMap(({ diameter, length, shape, points }) =>
        points
          .filter(([re = 0]) => re >= 30)
          .map(
            ([re = 0, expected = 0]) => eulerNumber(diameter, length, shape as HoleShape, re) / expected - 1,
          ),
      );
    expect(Math.abs(errors.reduce((sum, error) => sum + error, 0) / errors.length)).toBeLessThan(0.01);
  });
});

describe('slots', () => {
  // Poisson's equation over the cross-section, own finite elements on 120 edges each end; a circle is π/128.
  test.each([
    [0.5, 0.0606702],
    [1, 0.101116],
    [3, 0.267458],
  ])('travel %d of the width passes %d w⁴', (travel, expected) => {
    expect(Math.abs(slotConductance(1, travel) / expected - 1)).toBeLessThan(0.002);
  });

  // Own solution in three dimensions (test/reference/slot-3d.edp) on one coarse mesh, with the Reynolds number of the flow that came out.
  test.each([
    [0.0996, 1350.274],
    [9.965, 14.17573],
    [19.93, 7.948216],
  ])(
    'of travel 1 and length 2 in widths at Re %d has an Euler number of %d, within 1.5 %%',
    (reynoldsNumber, expected) => {
      const area = Math.PI / 4 + 1;
      const hydraulicDiameter = (4 * area) / (Math.PI + 2);
      const fluid = { density: 2, kinematicViscosity: hydraulicDiameter / reynoldsNumber };
      const law = shapedHoleResistance(1, { kind: 'slot', travel: 1 }, 2, fluid, 0.04).pressureDrop(1);
      expect(Math.abs(law / expected - 1)).toBeLessThan(0.015);
    },
  );

  test('without travel is a round hole, within the last constants', () => {
    const slot = eulerNumber(1, 2, { kind: 'slot', travel: 1e-9 }, 1e-6);
    const hole = sharpHoleLaw
      .resistance({ diameter: 1, length: 2 }, { density: 2, kinematicViscosity: 1e6 })
      .pressureDrop(1);
    expect(Math.abs(slot / hole - 1)).toBeLessThan(1e-6);
  });

  test('the ends of a long one tend to those of a plane slit, 32 μ Q′/(π w²) (Hasimoto 1958, from memory)', () => {
    // An ellipse of the same stretch: its middle carries 6/(π a b²) E with E → 1; averaged over its length that is 4/3 · … of the slit.
    const thin = { kind: 'slot', travel: 1e4 } as const;
    const fluid = { density: 1e-12, kinematicViscosity: 1e12 };
    const area = Math.PI / 4 + 1e4;
    const ends = shapedHoleResistance(1, thin, 1e-9, fluid).pressureDrop(1) / area;
    // b = sqrt(A/(π s)), a = b s with s the stretch: 6/(π a b²).
    const stretch = 1e4 + 1;
    const b = Math.sqrt(area / (Math.PI * stretch));
    expect(Math.abs(ends / ((0.991 * 6) / (Math.PI * b ** 3 * stretch)) - 1)).toBeLessThan(1e-3);
  });
});

describe('direction', () => {
  const oil = { density: 970, kinematicViscosity: 1e-4 };
  const piston = (group: HoleGroup) => ({
    diameter: 0.01195,
    thickness: 0.0025,
    holes: [group],
    eccentricity: 0,
  });
  const cone = { count: 4, diameter: 1.5e-3, shape: { kind: 'conical', shaftSideDiameter: 1.2e-3 } } as const;

  test('a hole that narrows in compression resists it more than rebound, but not when creeping', () => {
    const bound = pistonFlow(piston(cone), 0.012, oil);
    expect(bound.pressureDrop(2e-4).pressureDrop).toBeGreaterThan(
      -1.1 * bound.pressureDrop(-2e-4).pressureDrop,
    );
    const slow = bound.pressureDrop(1e-9).pressureDrop / -bound.pressureDrop(-1e-9).pressureDrop;
    expect(Math.abs(slow - 1)).toBeLessThan(1e-4);
  });

  test('a piston turned round swaps its directions', () => {
    const turned = {
      ...cone,
      diameter: 1.2e-3,
      shape: { kind: 'conical', shaftSideDiameter: 1.5e-3 },
    } as const;
    const one = pistonFlow(piston(cone), 0.012, oil);
    const other = pistonFlow(piston(turned), 0.012, oil);
    expect(other.flow(-1e5) / one.flow(1e5)).toBeCloseTo(-1, 12);
  });

  test('a straight shape without edges is the sharp hole', () => {
    const plain = pistonFlow(piston({ count: 4, diameter: 1.3e-3 }), 0.012, oil);
    const shaped = pistonFlow(
      piston({ count: 4, diameter: 1.3e-3, shape: { kind: 'straight' } }),
      0.012,
      oil,
    );
    expect(shaped.flow(1e5) / plain.flow(1e5)).toBeCloseTo(1, 12);
  });
});

describe('bad shapes', () => {
  const oil = { density: 970, kinematicViscosity: 1e-4 };
  const chamfer = (depth: number, halfAngle = 0.8) => ({ kind: 'chamfered', depth, halfAngle }) as const;

  test.each<[Partial<HoleGroup>, string]>([
    [
      { shape: { kind: 'straight', blindEdge: chamfer(0.003) } },
      'piston.holes[0].shape.blindEdge.depth must be below the piston thickness of 0.0025',
    ],
    [
      { shape: { kind: 'straight', blindEdge: chamfer(0.0015), shaftEdge: chamfer(0.0015) } },
      'piston.holes[0].shape must be edges that leave some of the piston thickness of 0.0025',
    ],
    [
      { shape: { kind: 'straight', blindEdge: chamfer(0.001, 1.5) } },
      'blindEdge.halfAngle must be 0 to 1.4 rad',
    ],
    [
      { shape: { kind: 'straight', shaftEdge: { kind: 'rounded', radius: 0 } } },
      'shaftEdge.radius must be greater',
    ],
    [
      { shape: { kind: 'conical', shaftSideDiameter: -0.0002 } },
      'piston.holes[0].shape.shaftSideDiameter must be greater than 0 m, got -0.0002 m',
    ],
    [
      { shape: { kind: 'stepped', shaftSideDiameter: 1e-3, shaftSideLength: 0.003 } },
      'shaftSideLength must be below the piston thickness of 0.0025 m',
    ],
    [{ shape: { kind: 'slot', travel: 0 } }, 'piston.holes[0].shape.travel must be greater than 0 m'],
    [{ pitchDiameter: 0.0119 }, 'or the holes break through the rim'],
    [{ pitchDiameter: 0.002, count: 6 }, 'holes that overlap by'],
  ])('%j', (change, message) => {
    const piston = {
      diameter: 0.01195,
      thickness: 0.0025,
      holes: [{ count: 2, diameter: 1.5e-3, ...change }],
      eccentricity: 0,
    };
    expect(() => pistonFlow(piston, 0.012, oil)).toThrow(message);
  });
});
