import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Hole, holeArea } from '../../lib/flow/geometry/hole.js';
import { holeFlow, holePressureDrop } from '../../lib/flow/hole/hole-flow.js';
import { idelchikThickEdgeLaw } from '../../lib/flow/hole/idelchik-thick-edge.js';
import { lichtarowiczLaw } from '../../lib/flow/hole/lichtarowicz.js';
import { oneConstantHoleLaw } from '../../lib/flow/hole/one-constant-hole.js';
import { sharpHoleLaw } from '../../lib/flow/hole/sharp-hole.js';
import type { FluidState } from '../../lib/fluid/oil/fluid-state.js';
import { anyFluid, anyHole } from './arbitraries.js';

const laws = [sharpHoleLaw, oneConstantHoleLaw, lichtarowiczLaw, idelchikThickEdgeLaw];
const anyReynoldsNumber = fc.double({ min: -4, max: 3.5, noNaN: true }).map((decades) => 10 ** decades);

const flowAt = (hole: Hole, fluid: FluidState, reynoldsNumber: number): number =>
  ((reynoldsNumber * fluid.kinematicViscosity) / hole.diameter) * holeArea(hole);

describe.each(laws)('$name law', (law) => {
  const property = (check: (hole: Hole, fluid: FluidState, flow: number) => void) =>
    fc.assert(
      fc.property(anyHole, anyFluid, anyReynoldsNumber, (hole, fluid, reynoldsNumber) =>
        check(hole, fluid, flowAt(hole, fluid, reynoldsNumber)),
      ),
    );

  test('is odd', () =>
    property((hole, fluid, flow) => {
      const drop = holePressureDrop(hole, fluid, flow, law);
      expect(holePressureDrop(hole, fluid, -flow, law)).toBe(-drop);
      expect(holeFlow(hole, fluid, -drop, law)).toBe(-holeFlow(hole, fluid, drop, law));
    }));

  test('rises with the flow', () =>
    property((hole, fluid, flow) => {
      expect(holePressureDrop(hole, fluid, 1.01 * flow, law)).toBeGreaterThan(
        holePressureDrop(hole, fluid, flow, law),
      );
    }));

  test('the inverse gives the flow back', () =>
    property((hole, fluid, flow) => {
      const drop = holePressureDrop(hole, fluid, flow, law);
      expect(Math.abs(holeFlow(hole, fluid, drop, law) / flow - 1)).toBeLessThan(1e-9);
    }));

  test('the slope is that of the pressure drop', () =>
    property((hole, fluid, flow) => {
      const { pressureDrop, slope } = law.resistance(hole, fluid);
      const speed = flow / holeArea(hole);
      const numerical = (pressureDrop(1.001 * speed) - pressureDrop(0.999 * speed)) / (0.002 * speed);
      expect(Math.abs(slope(speed) / numerical - 1)).toBeLessThan(1e-4);
    }));

  test('creeping flow is linear with the stated slope', () =>
    fc.assert(
      fc.property(anyHole, anyFluid, (hole, fluid) => {
        const flow = flowAt(hole, fluid, 1e-7);
        const { creepingSlope } = law.resistance(hole, fluid);
        const ratio = (holePressureDrop(hole, fluid, flow, law) * holeArea(hole)) / (flow * creepingSlope);
        expect(Math.abs(ratio - 1)).toBeLessThan(1e-4);
      }),
    ));

  test('scaling all lengths and the viscosity leaves the loss coefficient as it is', () =>
    fc.assert(
      fc.property(
        anyHole,
        anyFluid,
        anyReynoldsNumber,
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        (hole, fluid, re, scale) => {
          const loss = (h: Hole, f: FluidState) =>
            holePressureDrop(h, f, flowAt(h, f, re), law) /
            (f.density * (flowAt(h, f, re) / holeArea(h)) ** 2);
          const larger = { diameter: scale * hole.diameter, length: scale * hole.length };
          const thicker = {
            density: 2 * fluid.density,
            kinematicViscosity: 3 * scale * fluid.kinematicViscosity,
          };
          expect(Math.abs(loss(larger, thicker) / loss(hole, fluid) - 1)).toBeLessThan(1e-9);
        },
      ),
    ));

  test('nothing flows without a pressure drop, and the slope there is the creeping one', () =>
    fc.assert(
      fc.property(anyHole, anyFluid, (hole, fluid) => {
        expect(holeFlow(hole, fluid, 0, law)).toBe(0);
        expect(holePressureDrop(hole, fluid, 0, law)).toBe(0);
        const { slope, creepingSlope } = law.resistance(hole, fluid);
        expect(slope(0) / creepingSlope).toBeCloseTo(1, 12);
      }),
    ));

  test('a hole without a size is refused', () => {
    const fluid = { density: 970, kinematicViscosity: 1e-4 };
    expect(() => holePressureDrop({ diameter: 0, length: 1e-3 }, fluid, 1e-6, law)).toThrow(
      'hole.diameter must be greater than 0 m, got 0 m',
    );
    expect(() => holeFlow({ diameter: 1e-3, length: -1 }, fluid, 1e5, law)).toThrow(
      'hole.length must be greater than 0 m, got -1 m',
    );
    expect(() =>
      holeFlow({ diameter: 1e-3, length: 1e-3 }, { ...fluid, density: Number.NaN }, 1, law),
    ).toThrow('fluid.density must be 300 to 3000 kg/m³, got NaN kg/m³');
  });
});

describe('default law against the long-orifice law', () => {
  // Between Re_h 10 and Re 30 the long-orifice law falls up to 15 % below the numerical reference, with which the default law agrees
  // within 3 % (test/reference/hole-reference.test.ts); so the comparison starts at Re 30.
  test('stays within 10 % inside the range of Lichtarowicz from Re 30 on, L/d 2 to 5', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 5, noNaN: true }),
        fc.double({ min: 1.48, max: 2.9, noNaN: true }),
        anyFluid,
        (lengthRatio, decades, fluid) => {
          const hole = { diameter: 1e-3, length: lengthRatio * 1e-3 };
          const flow = flowAt(hole, fluid, 10 ** decades);
          const ratio =
            holePressureDrop(hole, fluid, flow) / holePressureDrop(hole, fluid, flow, lichtarowiczLaw);
          expect(Math.abs(ratio - 1)).toBeLessThan(0.1);
        },
      ),
    ));

  test('says where a law leaves its range', () => {
    const codes = (lengthRatio: number, reynoldsNumber: number) =>
      sharpHoleLaw.rangeWarnings(lengthRatio, reynoldsNumber).map(({ code }) => code);
    expect(codes(2, 100)).toEqual([]);
    expect(codes(0.25, 100)).toEqual(['hole-length-ratio-low']);
    expect(codes(6.5, 900)).toEqual(['hole-length-ratio-high', 'hole-reynolds-number-high']);
    expect(lichtarowiczLaw.rangeWarnings(2, 1)).toHaveLength(1);
    expect(idelchikThickEdgeLaw.rangeWarnings(2, 100)[0]?.message).toBe(
      'Hole Reynolds number 100 is below 1000, the end of the range of the Idelchik thick-edge law',
    );
  });
});
