import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DiscValve } from '../../lib/flow/geometry/disc-valve.js';
import type { Piston } from '../../lib/flow/geometry/piston.js';
import { holePressureDrop } from '../../lib/flow/hole/hole-flow.js';
import { pistonFlow } from '../../lib/flow/piston/piston-flow.js';
import { discAtFlow } from '../../lib/flow/valve/disc-at-flow.js';
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
// Few, since each is tabled once.
const anyThickness = fc.constantFrom(5e-5, 8e-5, 1.1e-4, 1.7e-4, 3e-4);

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

  describe('preloaded by half its thickness', () => {
    const fluid = { density: 970, kinematicViscosity: 3.5e-4 };
    const ways: Piston = {
      ...open,
      holes: [
        { count: 1, diameter: 0.8e-3 },
        { count: 4, diameter: 1.3e-3, pitchDiameter: 7.5e-3 },
      ],
    };
    const preloaded = pistonFlow(
      { ...ways, valves: [{ ...disc, preload: 5e-5, elasticModulus: 3e9 }] },
      bore,
      fluid,
    );
    const shut = pistonFlow({ ...ways, holes: ways.holes.slice(0, 1) }, bore, fluid);
    const [valve] = preloaded.valves;
    const opening = valve?.openingPressure ?? 0;
    const shutFlow = preloaded.flow(opening);

    test('stays shut to its opening pressure, and open far below', () => {
      expect(valve?.leastOpenDrop).toBeLessThan(0.6 * opening);
      const between = 0.8 * opening;
      expect(valve?.flow(between)).toBe(0);
      expect(valve?.fallingFlow(between)).toBeGreaterThan(0);
      expect(valve?.fallingFlow(0.99 * (valve?.leastOpenDrop ?? 0))).toBe(0);
    });

    test('has two pressure drops at one flow, just below the one that opens it: risen to it, and fallen to it', () => {
      const flow = 0.95 * shutFlow;
      const [risen, fallen] = [preloaded.pressureDrop(flow), preloaded.fallingPressureDrop(flow)];
      expect(risen.pressureDrop / shut.pressureDrop(flow).pressureDrop).toBeCloseTo(1, 9);
      expect(fallen.pressureDrop).toBeLessThan(0.9 * risen.pressureDrop);
      for (const { residual } of [risen, fallen]) expect(Math.abs(residual)).toBeLessThan(1e-8 * flow);
    });

    test('falls back after opening, then rises again', () => {
      const before = preloaded.pressureDrop(0.999 * shutFlow).pressureDrop;
      const after = preloaded.pressureDrop(1.001 * shutFlow).pressureDrop;
      expect(after).toBeLessThan(0.9 * before);
      expect(preloaded.pressureDrop(3 * shutFlow).pressureDrop).toBeGreaterThan(after);
    });

    test('risen or fallen makes no difference far from its opening, nor the other way', () => {
      for (const flow of [0.2 * shutFlow, 2 * shutFlow, 20 * shutFlow, -shutFlow]) {
        const [risen, fallen] = [preloaded.pressureDrop(flow), preloaded.fallingPressureDrop(flow)];
        expect(risen.pressureDrop / fallen.pressureDrop).toBeCloseTo(1, 9);
      }
    });
  });

  describe('preloaded, with next to nothing open beside it', () => {
    const fluid = { density: 970, kinematicViscosity: 3.5e-4 };
    const alone = pistonFlow(
      {
        ...open,
        diameter: 0.01198,
        holes: [{ count: 4, diameter: 1.3e-3, pitchDiameter: 7.5e-3 }],
        valves: [{ ...disc, covers: [0], preload: 5e-5, elasticModulus: 3e9 }],
      },
      bore,
      fluid,
    );
    const [valve] = alone.valves;
    if (valve === undefined) throw new Error('no valve');
    const shutFlow = alone.flow(valve.openingPressure);
    /** Pressures at which valve and gap let a flow through on the valve's way from its seat, by going up that way in small steps. */
    const onTheWay = (flow: number): readonly number[] => {
      const steps = Array.from({ length: 4000 }, (_, index) => {
        const point = valve.evaluate((valve.leastOpenLift * (index + 1)) / 4000);
        return { drop: point.drop, flow: point.flow + alone.gapFlow(point.drop) };
      });
      return steps.flatMap((step, index) => {
        const before = steps[index - 1];
        return before !== undefined && before.flow <= flow && step.flow > flow
          ? [(before.drop + step.drop) / 2]
          : [];
      });
    };

    test('its pressure falls while more flows, until it stands open', () => {
      const drops = [1.05, 1.2, 1.4].map((part) => {
        const { pressureDrop, residual } = alone.pressureDrop(part * shutFlow);
        expect(pressureDrop / (onTheWay(part * shutFlow)[0] ?? 0)).toBeCloseTo(1, 3);
        expect(Math.abs(residual)).toBeLessThan(1e-8 * shutFlow);
        return pressureDrop;
      });
      expect(drops).toEqual(drops.toSorted((a, b) => b - a));
      expect(drops[0]).toBeLessThan(valve.openingPressure);
      expect(drops[2]).toBeGreaterThan(valve.leastOpenDrop);
      expect(alone.pressureDrop(20 * shutFlow).pressureDrop).toBeGreaterThan(drops[2] ?? 0);
    });

    test('a flow that has fallen below the one that opens it still goes through it', () => {
      const flow = 0.9 * shutFlow;
      const fallen = alone.fallingPressureDrop(flow).pressureDrop;
      expect(fallen / (onTheWay(flow)[0] ?? 0)).toBeCloseTo(1, 3);
      expect(fallen).toBeLessThan(0.9 * alone.pressureDrop(flow).pressureDrop);
    });

    test('stands open at its least pressure, and not below', () => {
      expect(valve.openAt(valve.leastOpenDrop)?.lift).toBeCloseTo(valve.leastOpenLift, 12);
      expect(valve.openAt(0.999 * valve.leastOpenDrop)).toBeUndefined();
      expect(valve.openAt(-1e5)).toBeUndefined();
    });
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

  test('however stiff and preloaded, an open disc needs no more pressure than opened it, or it is refused by its preload', () => {
    const refused: string[] = [];
    let met = 0;
    for (const kinematicViscosity of [5e-5, 3.5e-4, 5e-3])
      for (const thickness of [1e-5, 5e-5, 1e-4, 2e-4])
        for (const elasticModulus of [3e9, 2e11])
          for (const thicknesses of [0.01, 0.1, 0.5, 0.8, 1]) {
            const preload = thicknesses * thickness;
            const valved = piston({ thickness, elasticModulus, preload });
            try {
              const [valve] = pistonFlow(valved, bore, { density: 970, kinematicViscosity }).valves;
              expect(valve?.leastOpenDrop).toBeLessThanOrEqual(valve?.openingPressure ?? 0);
              met++;
            } catch (error) {
              refused.push((error as Error).message);
            }
          }
    // Only discs of hundreds of bar: no shock of this size ever has that.
    const bars = refused.map((message) => Number(/below (\d+) bar/u.exec(message)?.[1]));
    expect(Math.min(...bars)).toBeGreaterThan(300);
    expect(met).toBeGreaterThan(115);
  });

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
    [{ preload: 1.1e-4 }, 'piston.valves[0].preload must be 0 to 0.0001'],
    [{ count: 0 }, 'piston.valves[0].count must be a whole number of 1 or more'],
    [{ elasticModulus: 0 }, 'piston.valves[0].elasticModulus must be greater than 0 Pa'],
    [{ poissonRatio: 0.5 }, 'piston.valves[0].poissonRatio must be 0 to 0.49'],
    [{ largestLift: 0 }, 'piston.valves[0].largestLift must be greater than 0 m'],
  ])('%o is refused', (bad, message) => {
    expect(() => pistonFlow(piston(bad), bore, { density: 970, kinematicViscosity: 1e-4 })).toThrow(message);
  });
});
