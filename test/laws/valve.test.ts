import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DiscValve } from '../../lib/flow/geometry/disc-valve.js';
import type { Piston } from '../../lib/flow/geometry/piston.js';
import { holePressureDrop } from '../../lib/flow/hole/hole-flow.js';
import { pistonFlow } from '../../lib/flow/piston/piston-flow.js';
import { ringPlateCompliance } from '../../lib/flow/valve/ring-plate.js';
import { anyFluid } from './arbitraries.js';

const bore = 0.012;
const disc: DiscValve = {
  face: 'shaft-side',
  covers: [1],
  outerDiameter: 0.0105,
  clampDiameter: 0.005,
  thickness: 1e-4,
  count: 1,
  elasticModulus: 2e11,
  poissonRatio: 0.3,
  preload: 2e-6,
};
const piston = (valve: Partial<DiscValve> = {}): Piston => ({
  diameter: 0.01195,
  thickness: 0.0025,
  holes: [
    { count: 2, diameter: 1.2e-3 },
    { count: 2, diameter: 1.5e-3, pitchDiameter: 0.0078 },
  ],
  eccentricity: 0,
  valves: [{ ...disc, ...valve }],
});
const open: Piston = { ...piston(), valves: [] };
const shut: Piston = { ...open, holes: open.holes.slice(0, 1) };
const anyDrop = fc.double({ min: 2, max: 6.5, noNaN: true }).map((decades) => 10 ** decades);
const anyThickness = fc.double({ min: 5e-5, max: 3e-4, noNaN: true });

describe('disc valve', () => {
  test('is shut towards its seat and below its opening pressure, open beyond it', () =>
    fc.assert(
      fc.property(anyFluid, anyDrop, anyThickness, (fluid, drop, thickness) => {
        const valved = pistonFlow(piston({ thickness }), bore, fluid);
        const [opening = 0] = valved.valves.map(({ openingPressure }) => openingPressure);
        const without = pistonFlow(shut, bore, fluid);
        expect(Math.abs(valved.flow(-drop) / without.flow(-drop) - 1)).toBeLessThan(1e-12);
        if (drop > opening * (1 + 1e-6)) {
          expect(valved.flow(drop)).toBeGreaterThan(without.flow(drop));
          expect(valved.flow(drop)).toBeLessThan(pistonFlow(open, bore, fluid).flow(drop));
        } else expect(Math.abs(valved.flow(drop) / without.flow(drop) - 1)).toBeLessThan(1e-12);
      }),
    ));

  test('holes and sheet under the disc share the pressure drop at one flow', () =>
    fc.assert(
      fc.property(anyFluid, anyDrop, (fluid, drop) => {
        const [valve] = pistonFlow(piston(), bore, fluid).valves;
        if (valve === undefined) throw new Error('no valve');
        fc.pre(drop > 1.001 * valve.openingPressure);
        const under = valve.pressureUnderDisc(drop);
        // Two holes of each size take this share of the bore.
        const areaRatio = (2 * 1.2e-3 ** 2 + 2 * 1.5e-3 ** 2) / bore ** 2;
        const hole = { diameter: 1.5e-3, length: 0.0025, areaRatio };
        // Sheet: 12 μ Q ℓ/(P w³) + ½ ρ (Q/(0.611 P w))², ℓ = (10.5 − 7.8 − 1.5)/2 mm, P the edges of two holes.
        const edge = 2 * Math.PI * 1.5e-3;
        const lift = valve.lift(under);
        const flow = valve.flow(drop);
        const sheet =
          (12 * fluid.density * fluid.kinematicViscosity * flow * 0.6e-3) / (edge * lift ** 3) +
          0.5 * fluid.density * (flow / (0.611 * edge * lift)) ** 2;
        expect(Math.abs((holePressureDrop(hole, fluid, flow / 2) + under) / drop - 1)).toBeLessThan(1e-8);
        expect(Math.abs(sheet / under - 1)).toBeLessThan(1e-6);
      }),
    ));

  test('lifts where the load on its holes has bent it by the preload', () => {
    const [valve] = pistonFlow(piston(), bore, { density: 970, kinematicViscosity: 3.5e-4 }).valves;
    const plate = {
      innerRadius: 0.0025,
      outerRadius: 0.00525,
      thickness: 1e-4,
      elasticModulus: 2e11,
      poissonRatio: 0.3,
    };
    const force = 2e-6 / ringPlateCompliance(plate, 0.0039);
    const area = (2 * Math.PI * 1.5e-3 ** 2) / 4;
    expect(Math.abs((valve?.openingPressure ?? 0) / (force / area) - 1)).toBeLessThan(1e-12);
    expect(valve?.lift(2 * (valve?.openingPressure ?? 0))).toBeCloseTo(2e-6, 15);
  });

  test('a stack of equal discs opens at as many times the pressure; twice the thickness at eight times', () => {
    const fluid = { density: 970, kinematicViscosity: 3.5e-4 };
    const opening = (change: Partial<DiscValve>) =>
      pistonFlow(piston(change), bore, fluid).valves[0]?.openingPressure ?? 0;
    expect(opening({ count: 3 }) / opening({})).toBeCloseTo(3, 12);
    expect(opening({ thickness: 2e-4 }) / opening({})).toBeCloseTo(8, 10);
  });

  test('a stop holds the disc', () => {
    const fluid = { density: 970, kinematicViscosity: 3.5e-4 };
    const [valve] = pistonFlow(piston({ largestLift: 5e-5 }), bore, fluid).valves;
    expect(valve?.lift(1e9)).toBe(5e-5);
  });

  test('on the blind side it is the same valve turned round', () =>
    fc.assert(
      fc.property(anyFluid, anyDrop, (fluid, drop) => {
        const one = pistonFlow(piston(), bore, fluid);
        const other = pistonFlow(piston({ face: 'blind-side' }), bore, fluid);
        expect(other.flow(-drop)).toBeCloseTo(-one.flow(drop), 15);
      }),
    ));

  test('pressure drop and flow are inverse', () =>
    fc.assert(
      fc.property(anyFluid, anyDrop, fc.boolean(), anyThickness, (fluid, size, back, thickness) => {
        const drop = back ? -size : size;
        const bound = pistonFlow(piston({ thickness }), bore, fluid);
        expect(Math.abs(bound.pressureDrop(bound.flow(drop)).pressureDrop / drop - 1)).toBeLessThan(1e-8);
      }),
    ));

  test.each([
    [
      { outerDiameter: 0.013 },
      'piston.valves[0].outerDiameter must be at most the bore of 0.012 m, got 0.013 m',
    ],
    [{ outerDiameter: 0.009 }, 'piston.valves[0].outerDiameter must be above'],
    [{ clampDiameter: 0.007 }, 'piston.valves[0].clampDiameter must be below'],
    [{ covers: [] }, 'piston.valves[0].covers must be at least one hole group'],
    [{ covers: [7] }, 'piston.valves[0].covers must be an index of a hole group, 0 to 1, got 7'],
    [{ covers: [0] }, 'piston.holes[0].pitchDiameter must be given and the same'],
    [{ thickness: 0 }, 'piston.valves[0].thickness must be greater than 0 m'],
    [{ preload: -1 }, 'piston.valves[0].preload must be 0 or more m'],
    [{ count: 0 }, 'piston.valves[0].count must be a whole number of 1 or more'],
    [{ elasticModulus: 0 }, 'piston.valves[0].elasticModulus must be greater than 0 Pa'],
    [{ poissonRatio: 0.5 }, 'piston.valves[0].poissonRatio must be 0 to 0.49'],
    [{ largestLift: 0 }, 'piston.valves[0].largestLift must be greater than 0 m'],
  ])('%o is refused', (bad, message) => {
    expect(() => pistonFlow(piston(bad), bore, { density: 970, kinematicViscosity: 1e-4 })).toThrow(message);
  });
});
