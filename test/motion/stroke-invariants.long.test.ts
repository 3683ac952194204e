import { describe, expect, test } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import type { RepeatedStroke } from '../../lib/motion/bench/stroke.js';
import { strokeFigures } from '../../lib/motion/bench/stroke-figures.js';
import { bindChambers } from '../../lib/motion/shock/chambers.js';
import type { MovingShock } from '../../lib/motion/shock/moving-shock.js';
import { linearShock } from './linear-shock.js';
import { sampleModel, sampleShock } from './sample-shock.js';

const stroke: RepeatedStroke = { kind: 'sine', middle: 0.012, amplitude: 0.01, frequency: 10, cycles: 2 };
const lastOf = (shock: MovingShock, tolerance: number, each = stroke) =>
  benchStroke(shock, each, { tolerance, parts: 0 }).cycles[1] as ReturnType<
    typeof benchStroke
  >['cycles'][number];
describe('a stroke on the bench', () => {
  test.each([
    ['with a cavity', {}],
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
    const { trace, cavities } = benchStroke(sampleShock(), triangle, { tolerance: 1e-9, parts: 16 });
    expect(cavities).toEqual([]);
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
