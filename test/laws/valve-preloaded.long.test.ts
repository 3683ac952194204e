import { describe, expect, test } from 'vitest';
import type { Piston } from '../../lib/flow/geometry/piston.js';
import { pistonFlow } from '../../lib/flow/piston/piston-flow.js';
import { bore, disc, open, piston } from './valved-piston.js';

describe('a preloaded disc valve', () => {
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
    const bars = refused.map((message) =>
      Number(/^valve\.preload must be smaller, since only (\d+) bar/u.exec(message)?.[1]),
    );
    expect(Math.min(...bars)).toBeGreaterThan(300);
    expect(met).toBeGreaterThan(115);
  });
});
