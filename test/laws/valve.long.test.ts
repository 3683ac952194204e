import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DiscValve } from '../../lib/flow/geometry/disc-valve.js';
import { holePressureDrop } from '../../lib/flow/hole/hole-flow.js';
import { discOpeningPressure } from '../../lib/flow/piston/disc-opening-pressure.js';
import { pistonFlow } from '../../lib/flow/piston/piston-flow.js';
import { discAtFlow } from '../../lib/flow/valve/disc-at-flow.js';
import { ringPlateCompliance } from '../../lib/flow/valve/ring-plate.js';
import { anyFluid } from './arbitraries.js';
import { anyDrop, anyThickness, bore, disc, open, piston, shut } from './valved-piston.js';

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
      { numRuns: 40 },
    ));

  test('holes and film under the disc share the pressure drop at one flow', () =>
    fc.assert(
      fc.property(anyFluid, anyDrop, (fluid, drop) => {
        const [valve] = pistonFlow(piston(), bore, fluid).valves;
        if (valve === undefined) throw new Error('no valve');
        fc.pre(drop > 1.001 * valve.openingPressure);
        const point = valve.openAt(drop);
        if (point === undefined) throw new Error('shut');
        // Two holes of each size take this share of the bore.
        const areaRatio = (2 * 1.2e-3 ** 2 + 2 * 1.5e-3 ** 2) / bore ** 2;
        const hole = { diameter: 1.5e-3, length: 0.0025, areaRatio };
        const before = holePressureDrop(hole, fluid, point.flow / 2);
        expect(Math.abs((before + point.pressureUnderDisc) / drop - 1)).toBeLessThan(1e-8);
        expect(valve.flow(drop) / point.flow).toBeCloseTo(1, 9);
        // Film and plate at that flow; inertia, which is not in them, only adds.
        const film = discAtFlow(
          disc,
          { count: 2, diameter: 1.5e-3, pitchDiameter: 0.0078 },
          point.flow,
          fluid.density * fluid.kinematicViscosity,
        );
        expect(film.lift / point.lift).toBeCloseTo(1, 6);
        expect(point.pressureUnderDisc / film.pressure).toBeGreaterThan(1 - 1e-6);
      }),
      { numRuns: 50 },
    ));

  test('has slopes that are those of its curve', () => {
    const [valve] = pistonFlow(piston(), bore, { density: 970, kinematicViscosity: 3.5e-4 }).valves;
    for (const opening of [3e-6, 7e-6, 4e-5, 3e-4, 2e-3]) {
      const step = 1e-5;
      const [low, high] = [valve?.evaluate(opening * (1 - step)), valve?.evaluate(opening * (1 + step))];
      const at = valve?.evaluate(opening);
      const drop = ((high?.drop ?? 0) - (low?.drop ?? 0)) / (2 * step);
      const flow = ((high?.flow ?? 0) - (low?.flow ?? 0)) / (2 * step);
      expect(drop / (at?.dropSlope ?? 0)).toBeCloseTo(1, 4);
      expect(flow / (at?.flowSlope ?? 0)).toBeCloseTo(1, 4);
    }
  });

  test('opens where the pressure on its holes has bent it by the preload there: a smaller force than that of a ring', () => {
    const [valve] = pistonFlow(piston(), bore, { density: 970, kinematicViscosity: 3.5e-4 }).valves;
    const plate = {
      innerRadius: 0.0025,
      outerRadius: 0.00525,
      thickness: 1e-4,
      elasticModulus: 2e11,
      poissonRatio: 0.3,
    };
    const ring = 2e-6 / ringPlateCompliance(plate, 0.0039);
    const force = (valve?.openingPressure ?? 0) * ((2 * Math.PI * 1.5e-3 ** 2) / 4);
    // Two holes bend the disc where they are, so that less force than that of an even ring lifts it there.
    expect(force / ring).toBeLessThan(1);
    expect(force / ring).toBeGreaterThan(0.2);
  });

  test('a stack of equal discs opens at as many times the pressure; twice the thickness at eight times, bent far less than it is thick', () => {
    const fluid = { density: 970, kinematicViscosity: 3.5e-4 };
    const opening = (change: Partial<DiscValve>) =>
      pistonFlow(piston(change), bore, fluid).valves[0]?.openingPressure ?? 0;
    expect(opening({ count: 3 }) / opening({})).toBeCloseTo(3, 12);
    expect(opening({ thickness: 2e-4 }) / opening({})).toBeCloseTo(8, 2);
  });

  test('a stop holds the disc', () => {
    const fluid = { density: 970, kinematicViscosity: 3.5e-4 };
    const [valve] = pistonFlow(piston({ largestLift: 5e-5 }), bore, fluid).valves;
    expect(valve?.openAt(1e9)?.lift).toBeCloseTo(5e-5, 15);
    const [free] = pistonFlow(piston(), bore, fluid).valves;
    expect(valve?.flow(1e9)).toBeLessThan(0.9 * (free?.flow(1e9) ?? 0));
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
    [
      { covers: [[0] as never] },
      'piston.valves[0].covers[0] must be a finite number, got a value of type object',
    ],
    [{ covers: [7] }, 'piston.valves[0].covers must be an index of a hole group, each once, 0 to 1, got 7'],
    [
      { covers: [1, 1] },
      'piston.valves[0].covers must be an index of a hole group, each once, 0 to 1, got 1',
    ],
    [{ covers: [0] }, 'piston.holes[0].pitchDiameter must be given and the same'],
    [{ thickness: 0 }, 'piston.valves[0].thickness must be greater than 0 m'],
    [{ preload: -1 }, 'piston.valves[0].preload must be 0 or more m'],
    [{ preload: 1.1e-4 }, 'piston.valves[0].preload must be 0 to 0.0001'],
    [{ count: 0 }, 'piston.valves[0].count must be a whole number of 1 or more'],
    [{ elasticModulus: 0 }, 'piston.valves[0].elasticModulus must be greater than 0 Pa'],
    [{ poissonRatio: 0.5 }, 'piston.valves[0].poissonRatio must be 0 to 0.49'],
    [{ largestLift: 0 }, 'piston.valves[0].largestLift must be greater than 0 m'],
  ])('%o is refused', (bad, message) => {
    expect(() => pistonFlow(piston(bad), bore, { density: 970, kinematicViscosity: 1e-4 })).toThrow(message);
  });

  test('over no holes is refused, whatever holes the piston has', () => {
    const { valves: [valve] = [], ...under } = piston();
    if (valve === undefined) throw new Error('no valve');
    const holes = [...under.holes].reverse();
    expect(discOpeningPressure({ ...valve, covers: [0] }, { ...under, holes })).toBeGreaterThanOrEqual(0);
    expect(() => discOpeningPressure({ ...valve, covers: [] }, { ...under, holes })).toThrow(
      'valve.covers must be at least one hole group',
    );
  });
});
