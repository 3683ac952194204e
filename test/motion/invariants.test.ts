import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import type { RepeatedStroke } from '../../lib/motion/bench/stroke.js';
import { strokeFigures } from '../../lib/motion/bench/stroke-figures.js';
import { contactAt } from '../../lib/motion/corner/contact.js';
import { cornerEquation } from '../../lib/motion/corner/corner-equation.js';
import { cornerEvents } from '../../lib/motion/corner/corner-events.js';
import { groundOf } from '../../lib/motion/corner/ground.js';
import { moveCorner } from '../../lib/motion/corner/move-corner.js';
import { bindChambers, emptyPressures } from '../../lib/motion/shock/chambers.js';
import type { MovingShock } from '../../lib/motion/shock/moving-shock.js';
import { oilExpansion, pressureAtExpansion } from '../../lib/motion/shock/oil-volume.js';
import { integrate } from '../../lib/numeric/integrator/integrate.js';
import { linearShock } from './linear-shock.js';
import { sampleCorner } from './sample-corner.js';
import { sampleModel, sampleShock } from './sample-shock.js';

const stroke: RepeatedStroke = { kind: 'sine', middle: 0.012, amplitude: 0.01, frequency: 10, cycles: 2 };
const lastOf = (shock: MovingShock, tolerance: number, each = stroke) =>
  benchStroke(shock, each, { tolerance, parts: 0 }).cycles[1] as ReturnType<
    typeof benchStroke
  >['cycles'][number];

describe('a stroke on the bench', () => {
  test.each([
    ['torn oil', {}],
    ['air in the oil', { airFraction: 0.01 }],
    ['gas on the shaft side', { layout: 'shaft-side', farVolume: 2.8e-6 }],
    ['gas mixed in', { layout: 'emulsion', oilVolume: 4.1e-6 }],
  ] as const)('all work is accounted for: %s', (_name, change) => {
    const { work, lost } = lastOf(sampleShock(change), 1e-10, { ...stroke, frequency: 4 });
    const sum = lost.holes + lost.recoil + lost.rim + lost.seals;
    expect(Math.abs(sum / work - 1)).toBeLessThan(1e-6);
  });

  test('the balance closes to 5e-9 for the sample', () => {
    const { work, lost } = lastOf(sampleShock(), 1e-11);
    expect(Math.abs((lost.holes + lost.recoil + lost.rim + lost.seals) / work - 1)).toBeLessThan(5e-9);
  });

  test('the second cycle repeats the first', () => {
    const [first, second] = benchStroke(sampleShock(), stroke, { tolerance: 1e-11, parts: 0 }).cycles;
    expect(Math.abs((second?.work ?? 0) / (first?.work ?? 1) - 1)).toBeLessThan(1e-9);
  });

  test('a slow stroke draws the steady curve', () => {
    const slow = { ...stroke, frequency: 0.2, cycles: 1 };
    const { trace } = benchStroke(sampleShock(), slow, { tolerance: 1e-9, parts: 16 });
    for (const i of [2, 4, 6, 10, 12, 14]) {
      const motion = { speed: trace.speeds[i] as number, position: trace.travels[i] as number };
      const steady = damperForce(sampleModel(), motion).force;
      // The oil gives way a little to the gas, which the steady law leaves out.
      expect(Math.abs((trace.forces[i] as number) / steady - 1)).toBeLessThan(1e-3);
    }
  });

  test('constant speed tends to the steady force while the oil is whole', () => {
    const triangle = { ...stroke, kind: 'triangle', frequency: 2, cycles: 1 } as const;
    const { trace, tears } = benchStroke(sampleShock(), triangle, { tolerance: 1e-9, parts: 16 });
    expect(tears).toEqual([]);
    for (const i of [4, 6, 12, 14]) {
      const motion = { speed: trace.speeds[i] as number, position: trace.travels[i] as number };
      expect(trace.forces[i]).toBeCloseTo(damperForce(sampleModel(), motion).force, 3);
    }
  });

  test('a table of the same sine gives the same work', () => {
    const times = Array.from({ length: 401 }, (_, i) => i / 4000);
    const travels = times.map((time) => 0.012 - 0.01 * Math.cos(20 * Math.PI * time));
    const table = benchStroke(sampleShock(), { kind: 'table', times, travels }, { parts: 0 });
    const sine = benchStroke(sampleShock(), { ...stroke, cycles: 1 }, { parts: 0 });
    expect(Math.abs((table.cycles[0]?.work ?? 0) / (sine.cycles[0]?.work ?? 1) - 1)).toBeLessThan(1e-4);
  });

  test('more frequency, thicker oil and smaller holes all take more work; the cavity lags behind', () => {
    const work = (shock: MovingShock, frequency: number) =>
      lastOf(shock, 1e-6, { ...stroke, frequency }).work;
    expect(work(sampleShock(), 10)).toBeGreaterThan(work(sampleShock(), 5));
    expect(work(sampleShock({ kinematicViscosity: 5e-4 }), 5)).toBeGreaterThan(work(sampleShock(), 5));
    const figures = strokeFigures(benchStroke(sampleShock(), stroke), stroke);
    // The gas that a cavity squeezes pushes harder on the way in than before, and the mean is above creeping damping.
    expect(figures.compression.losing).toBeGreaterThan(figures.compression.gathering);
    expect(figures.forceFullyIn).toBeCloseTo(16.72, 1);
    expect(figures.equivalentDamping).toBeCloseTo(56, 0);
  });

  test('half as large in every length, same speeds and pressures: forces go with the square of the length', () => {
    // Creeping flow of an oil half as viscous scales so.
    const small = (length: number): MovingShock => {
      const shock = linearShock({ pistonArea: 1.1e-4 * length ** 2, shaftArea: 7e-6 * length ** 2 });
      return {
        ...shock,
        stroke: 0.024 * length,
        passage: (drop, passage) => {
          passage.flow = 3e-10 * length ** 2 * drop;
          passage.recoil = 0;
        },
        oil: { ...shock.oil, volume: 1e-5 * length ** 3 },
        farVolume: 4e-7 * length ** 3,
        gas: {
          pressure: (volume) => 101_325 * (9e-7 / (9e-7 - volume / length ** 3)) ** 1.4,
          capacity: 9e-7 * length ** 3,
        },
      };
    };
    const forces = (length: number) => {
      const each = { ...stroke, middle: 0.012 * length, amplitude: 0.01 * length, frequency: 5 / length };
      const { largestForce, smallestForce } = benchStroke(small(length), each, { tolerance: 1e-9, parts: 0 });
      // Pressures stay, areas go with the square.
      return [largestForce.value / length ** 2, smallestForce.value / length ** 2];
    };
    const [large, little] = [forces(1), forces(0.5)];
    large.forEach((force, i) => {
      expect(Math.abs((little[i] ?? 0) / force - 1)).toBeLessThan(1e-6);
    });
  });

  test('turned round, gas on the other side of a piston with a shaft through: forces change sign only', () => {
    // With no shaft area the two sides are mirror images: in on one is out on the other.
    const mirrored = (layout: MovingShock['layout']): MovingShock => ({
      ...linearShock({ shaftArea: 1e-15, layout }),
      passage: sampleShock().passage,
      oil: { ...linearShock().oil, volume: 8e-6 },
      farVolume: 4e-6,
      gas: { pressure: (volume) => 101_325 * (2e-6 / (2e-6 - volume)) ** 1.4, capacity: 2e-6 },
    });
    const times = Array.from({ length: 101 }, (_, i) => i / 1000);
    const inward = times.map((time) => 0.012 - 0.008 * Math.cos(20 * Math.PI * time));
    const run = (layout: MovingShock['layout'], travels: readonly number[]) =>
      benchStroke(mirrored(layout), { kind: 'table', times, travels }, { tolerance: 1e-9, parts: 20 });
    const blind = run('blind-side', inward);
    const shaft = run(
      'shaft-side',
      inward.map((travel) => 0.024 - travel),
    );
    // The far chamber of both is 4 ml at one end; compare where both far chambers hold the same.
    const scale = Math.max(...blind.trace.forces);
    const far = (layout: MovingShock['layout'], travel: number) =>
      mirrored(layout).farVolume + bindChambers(mirrored(layout)).farArea * travel;
    const offset = far('shaft-side', 0.012) - far('blind-side', 0.012);
    const matched = benchStroke(
      { ...mirrored('shaft-side'), farVolume: 4e-6 - offset },
      { kind: 'table', times, travels: inward.map((travel) => 0.024 - travel) },
      { tolerance: 1e-9, parts: 20 },
    );
    expect(shaft.trace.forces).toHaveLength(21);
    matched.trace.forces.forEach((force, i) => {
      expect(Math.abs(force + (blind.trace.forces[i] as number)) / scale).toBeLessThan(2e-3);
    });
  });

  test('equal runs give equal bytes', () => {
    expect(benchStroke(sampleShock(), stroke)).toEqual(benchStroke(sampleShock(), stroke));
  });
});

describe('oil and gas', () => {
  const oils = fc.record({
    volume: fc.constant(3e-6),
    referencePressure: fc.double({ min: 5e4, max: 5e5, noNaN: true }),
    bulkModulus: fc.double({ min: 5e8, max: 2e9, noNaN: true }),
    airFraction: fc.double({ min: 1e-6, max: 0.999, noNaN: true }),
    airExponent: fc.double({ min: 1, max: 1.4, noNaN: true }),
  });

  test('pressure and volume of oil with air are inverse', () => {
    fc.assert(
      fc.property(oils, fc.double({ min: 0, max: 14, noNaN: true }), (oil, log) => {
        const pressure = 10 * Math.exp(log);
        const found = pressureAtExpansion(oil, oilExpansion(oil, pressure) - 1);
        // The volume carries sixteen digits; how well that fixes the pressure depends on how stiff the oil is there.
        const slack = 1e-9 + (1e-15 * oilExpansion(oil, pressure) * oil.bulkModulus) / pressure;
        expect(Math.abs(found / pressure - 1)).toBeLessThan(slack);
      }),
    );
  });

  test('oil is neither made nor lost: the two chambers hold the volumes that their pressures say', () => {
    const travels = fc.double({ min: 0, max: 0.024, noNaN: true });
    const rooms = fc.double({ min: -1e-9, max: 5e-7, noNaN: true });
    const airs = fc.constantFrom(0, 0.01, 0.05);
    fc.assert(
      fc.property(travels, rooms, airs, (travel, room, airFraction) => {
        const shock = sampleShock({ airFraction });
        const chambers = bindChambers(shock);
        // What cannot be: gas without room, oil of less than no volume.
        if (chambers.gasRoomLeft(travel, room) < 1e-8 || chambers.oilLeft(travel, 0) < 2 * room) return;
        const pressures = emptyPressures();
        chambers.evaluate(travel, room, false, pressures);
        const far = (shock.farVolume + chambers.farArea * travel) / oilExpansion(shock.oil, pressures.far);
        // What the gas has given up at that pressure, by its own law.
        const given = 9e-7 * (1 - (101_325 / pressures.near) ** (1 / 1.4));
        const nearRoom = shock.oil.volume - shock.farVolume - shock.pistonArea * travel + given;
        const near = nearRoom / oilExpansion(shock.oil, pressures.near);
        expect(Math.abs((far + near) / shock.oil.volume - 1)).toBeLessThan(1e-10);
      }),
    );
  });

  test.each(['blind-side', 'shaft-side', 'emulsion'] as const)(
    'slopes of the pressures, gas: %s',
    (layout) => {
      const shock = sampleShock({
        layout,
        airFraction: 0.01,
        ...(layout === 'shaft-side' ? { farVolume: 2.8e-6 } : {}),
      });
      const chambers = bindChambers(shock);
      const at = (travel: number, room: number) => {
        const pressures = emptyPressures();
        chambers.evaluateWithSlopes(travel, room, false, pressures);
        return pressures;
      };
      const [travel, room] = [0.006, 1e-8];
      const here = at(travel, room);
      const [dx, ds] = [1e-8, 1e-13];
      const byTravel = (name: 'near' | 'far') =>
        (at(travel + dx, room)[name] - at(travel - dx, room)[name]) / (2 * dx);
      const byRoom = (name: 'near' | 'far') =>
        (at(travel, room + ds)[name] - at(travel, room - ds)[name]) / (2 * ds);
      for (const [given, found] of [
        [here.nearByTravel, byTravel('near')],
        [here.nearByRoom, byRoom('near')],
        [here.farByTravel, byTravel('far')],
        [here.farByRoom, byRoom('far')],
      ] as const) {
        expect(Math.abs(given - found)).toBeLessThan(
          1e-4 * Math.abs(found) + 1e-3 * Math.abs(here.farByTravel) * 1e-3,
        );
      }
    },
  );
});

describe('a corner', () => {
  const undamped = {
    ...sampleCorner,
    tyre: { stiffness: 4000, damping: 0 },
    bumpStop: { from: 0.021, stiffness: 60_000, damping: 0 },
    droopStop: { stiffness: 60_000, damping: 0 },
  };

  test('without damping its energy stays, over landing, stops and lift-off', () => {
    const shock = linearShock();
    const chambers = bindChambers(shock);
    const ground = groundOf({ kind: 'landing', dropHeight: 0.1 });
    const start = Float64Array.of(0, 0, -1.4, 0, -1.4);
    const modes = {
      oil: { torn: false, tears: [] },
      tyre: contactAt(undamped.tyre, 0, 1.4),
      bump: contactAt(undamped.bumpStop, -0.021, 0),
      droop: contactAt(undamped.droopStop, 0, 0),
    };
    const bound = { shock, chambers, corner: undamped, ground, modes };
    const history = { tyreUnloads: [], liftOffs: [], touchDowns: [], bottomings: [], slaps: [] };
    const energy = (state: Float64Array): number => {
      const [, body, bodySpeed, wheel, wheelSpeed] = state as unknown as [
        number,
        number,
        number,
        number,
        number,
      ];
      const travel = 0.72 * (wheel - body);
      const stops = 30_000 * (Math.max(0, travel - 0.021) ** 2 + Math.max(0, -travel) ** 2);
      const springs = 300 * (travel + 0.003) ** 2 + 2000 * Math.max(0, -wheel) ** 2 + stops;
      return (
        0.17 * bodySpeed ** 2 + 0.045 * wheelSpeed ** 2 + 9.80665 * (0.34 * body + 0.09 * wheel) + springs
      );
    };
    const { equation } = cornerEquation(bound);
    const { state } = integrate(equation, {
      from: 0,
      to: 1,
      state: start,
      relative: 1e-10,
      absolute: [1e-20, 1e-12, 1e-10, 1e-12, 1e-10],
      firstStep: 1e-7,
      events: cornerEvents(bound, history),
    });
    expect(history.liftOffs.length).toBeGreaterThan(1);
    expect(Math.abs(energy(state) / energy(start) - 1)).toBeLessThan(1e-6);
  });

  test('all of the drop is lost in the end, most of it in the shock', () => {
    const r = moveCorner(sampleShock(), sampleCorner, { kind: 'landing', dropHeight: 0.15 }, { duration: 2 });
    const { holes, recoil, rim, seals } = r.lost;
    expect(holes + recoil + rim + seals).toBeGreaterThan(0.5 * 0.43 * 9.80665 * 0.15);
    expect(holes + recoil + rim + seals).toBeLessThan(1.1 * 0.43 * 9.80665 * 0.15 + 0.05);
    expect(r.settlingTime).toBeGreaterThan(0.1);
    expect(r.meanTyreForce).toBeCloseTo(0.43 * 9.80665, 0);
  });

  test('a higher drop lands harder, bottoms sooner and slaps a low chassis', () => {
    const low = moveCorner(sampleShock(), sampleCorner, { kind: 'landing', dropHeight: 0.15 });
    const corner = { ...sampleCorner, clearance: 0.03 };
    const high = moveCorner(sampleShock(), corner, { kind: 'landing', dropHeight: 0.4 });
    expect(low.bottomings).toEqual([]);
    expect(high.bottomings[0]?.speed).toBeGreaterThan(0);
    expect(high.largestBumpStopForce.value).toBeGreaterThan(0);
    expect(high.slaps[0]?.speed).toBeGreaterThan(0.5);
    expect(high.largestShockForce.value).toBeGreaterThan(low.largestShockForce.value);
    expect(high.airTime).toBeGreaterThan(low.airTime);
  });

  test('the tyre ceases to push before the wheel leaves the ground', () => {
    const r = moveCorner(sampleShock(), sampleCorner, { kind: 'washboard', height: 0.006, frequency: 12 });
    expect(r.liftOffs.length).toBeGreaterThan(10);
    r.liftOffs.forEach((time, i) => {
      expect(time - (r.tyreUnloads[i] as number)).toBeGreaterThan(1e-4);
      expect(time - (r.tyreUnloads[i] as number)).toBeLessThan(2e-3);
    });
  });

  test('a bump is not jumped over, however long the wait before it', () => {
    const times = [0, 0.5, 0.505, 0.51, 1];
    const r = moveCorner(sampleShock(), sampleCorner, { kind: 'table', times, heights: [0, 0, 0.01, 0, 0] });
    expect(r.largestTyreForce.value).toBeGreaterThan(15);
    expect(r.largestTyreForce.time).toBeGreaterThan(0.5);
  });

  test('friction that sticks holds the shaft where the smooth law creeps', () => {
    const bristles = {
      kineticForce: 0.6,
      breakawayForce: 0.9,
      stribeckSpeed: 0.01,
      stiffness: 2e4,
      damping: 0.5,
      viscous: 0,
    };
    const seal = { kineticForce: 0.6, breakawayForce: 0.9 };
    const landing = { kind: 'landing', dropHeight: 0.1 } as const;
    const drift = (r: ReturnType<typeof moveCorner>) =>
      Math.abs((r.trace.travels.at(-1) as number) - (r.trace.travels.at(-101) as number));
    const sticks = moveCorner(sampleShock({ seal }), sampleCorner, landing, { duration: 2, bristles });
    const creeps = moveCorner(sampleShock({ seal }), sampleCorner, landing, { duration: 2 });
    expect(drift(sticks)).toBeLessThan(0.2 * drift(creeps));
  });
});
