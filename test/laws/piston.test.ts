import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { annularGapConductance, annularGapFlow } from '../../lib/flow/gap/annular-gap.js';
import { holeFlow } from '../../lib/flow/hole/hole-flow.js';
import { idelchikThickEdgeLaw } from '../../lib/flow/hole/idelchik-thick-edge.js';
import { lichtarowiczLaw } from '../../lib/flow/hole/lichtarowicz.js';
import { oneConstantHoleLaw } from '../../lib/flow/hole/one-constant-hole.js';
import { sharpHoleLaw } from '../../lib/flow/hole/sharp-hole.js';
import { totalHoleArea } from '../../lib/flow/piston/piston.js';
import { pistonFlow } from '../../lib/flow/piston/piston-flow.js';
import { anyBore, anyFluid, anyPiston } from './arbitraries.js';

const laws = [sharpHoleLaw, oneConstantHoleLaw, lichtarowiczLaw, idelchikThickEdgeLaw];

const pistonInBore = anyBore.chain((bore) => fc.tuple(fc.constant(bore), anyPiston(bore)));
const anyDrop = fc.double({ min: 1, max: 7.5, noNaN: true }).map((decades) => 10 ** decades);

describe('piston', () => {
  test.each(laws)('pressure drop and flow are inverse, $name law', (law) =>
    fc.assert(
      fc.property(pistonInBore, anyFluid, anyDrop, ([bore, piston], fluid, drop) => {
        fc.pre(piston.holes.every(({ diameter }) => piston.thickness / diameter < 10));
        const bound = pistonFlow(piston, bore, fluid, law);
        const solved = bound.pressureDrop(bound.flow(drop));
        expect(Math.abs(solved.pressureDrop / drop - 1)).toBeLessThan(1e-9);
        expect(Math.abs(solved.residual)).toBeLessThanOrEqual(1e-8 * bound.flow(drop));
        expect(bound.pressureDrop(-bound.flow(drop)).pressureDrop).toBe(-solved.pressureDrop);
      }),
    ),
  );

  test('settles in few steps', () =>
    fc.assert(
      fc.property(pistonInBore, anyFluid, anyDrop, ([bore, piston], fluid, drop) => {
        const bound = pistonFlow(piston, bore, fluid);
        expect(bound.pressureDrop(bound.flow(drop)).iterations).toBeLessThanOrEqual(16);
      }),
    ));

  test('holes and gap in parallel add', () =>
    fc.assert(
      fc.property(pistonInBore, anyFluid, anyDrop, ([bore, piston], fluid, drop) => {
        const areaRatio = totalHoleArea(piston) / ((Math.PI / 4) * bore * bore);
        // What a single hole is accepted with.
        fc.pre(areaRatio <= 0.99);
        const alone = piston.holes.map(
          ({ count, diameter }) =>
            count * holeFlow({ diameter, length: piston.thickness, areaRatio }, fluid, drop),
        );
        const gap = {
          bore,
          pistonDiameter: piston.diameter,
          length: piston.thickness,
          eccentricity: piston.eccentricity,
        };
        const leak = annularGapFlow(gap, fluid, drop, 0);
        const sum = alone.reduce((total, flow) => total + flow, leak);
        expect(Math.abs(pistonFlow(piston, bore, fluid).flow(drop) / sum - 1)).toBeLessThan(1e-12);
      }),
    ));

  test('splitting a group of holes changes nothing', () =>
    fc.assert(
      fc.property(pistonInBore, anyFluid, anyDrop, ([bore, piston], fluid, drop) => {
        const single = piston.holes.flatMap(({ count, diameter }) =>
          Array.from({ length: count }, () => ({ count: 1, diameter })),
        );
        const split = pistonFlow({ ...piston, holes: single }, bore, fluid);
        const flow = pistonFlow(piston, bore, fluid).flow(drop);
        expect(Math.abs(split.pressureDrop(flow).pressureDrop / drop - 1)).toBeLessThan(1e-9);
      }),
    ));

  test('a larger hole lets more oil through', () =>
    fc.assert(
      fc.property(pistonInBore, anyFluid, anyDrop, ([bore, piston], fluid, drop) => {
        const larger = piston.holes.map((group) => ({ ...group, diameter: 1.05 * group.diameter }));
        expect(pistonFlow({ ...piston, holes: larger }, bore, fluid).flow(drop)).toBeGreaterThan(
          pistonFlow(piston, bore, fluid).flow(drop),
        );
      }),
    ));
});

describe('gap', () => {
  const gap = { bore: 0.0121, pistonDiameter: 0.012, length: 0.002, eccentricity: 0 };
  const fluid = { density: 970, kinematicViscosity: 3.5e-4 };

  test('leaks with the cube of its height', () => {
    const wide = { ...gap, bore: 0.0122 };
    const circumferences = (0.0122 - 1e-4) / (0.0121 - 0.5e-4);
    const ratio = annularGapConductance(wide, fluid) / annularGapConductance(gap, fluid);
    expect(ratio / (8 * circumferences)).toBeCloseTo(1, 12);
  });

  test('a moving bore drags along half of its speed', () => {
    const dragged = annularGapFlow(gap, fluid, 0, 2);
    expect(dragged / (Math.PI * 0.01205 * 5e-5)).toBeCloseTo(1, 12);
    expect(annularGapFlow(gap, fluid, 1e5, -2)).toBeCloseTo(annularGapFlow(gap, fluid, 1e5, 0) - dragged, 18);
  });

  test('is refused where the piston does not fit', () => {
    expect(() => annularGapConductance({ ...gap, pistonDiameter: 0.0121 }, fluid)).toThrow(
      'pistonDiameter must be below the bore of 0.0121 m, got 0.0121 m',
    );
    expect(() => annularGapConductance({ ...gap, eccentricity: 1 }, fluid)).toThrow(
      'eccentricity must be 0 to 0.99, got 1',
    );
    expect(() => annularGapFlow(gap, fluid, Number.NaN, 0)).toThrow('pressureDrop must be a finite number');
  });
});

describe('bad pistons', () => {
  const fluid = { density: 970, kinematicViscosity: 3.5e-4 };
  const piston = {
    diameter: 0.0119,
    thickness: 0.0025,
    holes: [{ count: 4, diameter: 1.3e-3 }],
    eccentricity: 0,
  };

  test.each([
    [{ ...piston, diameter: 0 }, 'piston.diameter must be greater than 0 m, got 0 m'],
    [{ ...piston, thickness: -1 }, 'piston.thickness must be greater than 0 m, got -1 m'],
    [
      { ...piston, holes: [{ count: 1.5, diameter: 1e-3 }] },
      'piston.holes[0].count must be a whole number of 1 or more, got 1.5',
    ],
    [
      { ...piston, holes: [{ count: 1, diameter: -1e-3 }] },
      'piston.holes[0].diameter must be greater than 0 m, got -0.001 m',
    ],
    [{ ...piston, eccentricity: 2 }, 'piston.eccentricity must be 0 to 0.99, got 2'],
  ])('%o', (bad, message) => {
    expect(() => pistonFlow(bad, 0.012, fluid)).toThrow(message);
  });
});
