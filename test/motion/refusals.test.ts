import { describe, expect, test } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import { benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import type { BenchStroke } from '../../lib/motion/bench/stroke.js';
import type { Corner } from '../../lib/motion/corner/corner.js';
import type { CornerEvent } from '../../lib/motion/corner/ground.js';
import { type CornerOptions, moveCorner } from '../../lib/motion/corner/move-corner.js';
import { heatToAir } from '../../lib/motion/heat/cylinder-cooling.js';
import type { MovingShock } from '../../lib/motion/shock/moving-shock.js';
import { wordsAccept } from '../edges/verdict.js';
import { linearShock } from './linear-shock.js';
import { sampleCorner } from './sample-corner.js';
import { sampleShock } from './sample-shock.js';

const sine = { kind: 'sine', middle: 0.012, amplitude: 0.01, frequency: 10, cycles: 1 } as const;
const landing = { kind: 'landing', dropHeight: 0.15 } as const;

/** The field that is refused, or undefined. */
function refused(run: () => unknown): string | undefined {
  try {
    run();
    return undefined;
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    // A refusal says what would do, and what was given.
    expect((error as InputError).message).toMatch(/must be .+, got /u);
    // A speed between two rows is a bound in another unit.
    if (!/m\/s/u.test((error as InputError).accepted)) expect(wordsAccept(error as InputError)).toBe(false);
    return (error as InputError).field;
  }
}

const shock = sampleShock();
const shockWith = (change: Partial<MovingShock>): MovingShock => ({ ...shock, ...change });
const oilWith = (change: Partial<MovingShock['oil']>): MovingShock => ({
  ...shock,
  oil: { ...shock.oil, ...change },
});

describe('a shock that cannot move', () => {
  test.each([
    ['oil.bulkModulus', oilWith({ bulkModulus: 0 })],
    ['oil.bulkModulus', oilWith({ bulkModulus: Number.NaN })],
    ['oil.airFraction', oilWith({ airFraction: 1 })],
    ['oil.airFraction', oilWith({ airFraction: -0.01 })],
    ['oil.airExponent', oilWith({ airExponent: 1.5 })],
    ['oil.volume', oilWith({ volume: 2e-6 })],
    ['releasePressure', shockWith({ releasePressure: 101_325 })],
    ['releasePressure', shockWith({ releasePressure: -1 })],
    ['farVolume', shockWith({ farVolume: 0 })],
    ['pistonArea', shockWith({ pistonArea: 1e-6 })],
    ['gas.capacity', shockWith({ gas: { ...shock.gas, capacity: 1e-7 } })],
  ])('%s', (field, each) => {
    expect(refused(() => benchStroke(each, sine))).toBe(field);
    expect(refused(() => moveCorner(each, sampleCorner, landing))).toBe(field);
  });
});

test('rows of ground that are too near say how far the next is to be after the one before', () => {
  const ground: CornerEvent = { kind: 'table', times: [0, 1, 1 + 1e-9], heights: [0, 0, 0] };
  expect(() => moveCorner(shock, sampleCorner, ground)).toThrow(
    /event\.times\[2\] must be \S+ s or more after 1, in/u,
  );
});

describe('a stroke that a bench cannot do', () => {
  const table = (times: readonly number[], travels: readonly number[]): BenchStroke => ({
    kind: 'table',
    times,
    travels,
  });
  const cases: readonly (readonly [string, BenchStroke])[] = [
    ['stroke.frequency', { ...sine, frequency: 0 }],
    ['stroke.frequency', { ...sine, frequency: 201, amplitude: 1e-4 }],
    ['stroke.amplitude', { ...sine, amplitude: -0.01 }],
    ['stroke.middle', { ...sine, middle: 0.005 }],
    ['stroke.middle', { ...sine, middle: 0.02 }],
    ['stroke.cycles', { ...sine, cycles: 0.5 }],
    ['stroke.cycles over stroke.frequency', { ...sine, cycles: 601 }],
    ['speed of the stroke', { ...sine, frequency: 170 }],
    ['stroke.times', table([0], [0])],
    ['stroke.times', table([0, 1], [0])],
    ['stroke.times[1]', table([0, 0], [0, 0.01])],
    ['stroke.travels[1]', table([0, 1], [0, 0.025])],
    ['stroke.travels[1]', table([0, 1], [0, Number.NaN])],
    ['stroke.travels[1]', table([0, 1e-4], [0, 0.01])],
    ['time of the stroke', table([0, 61], [0, 0.01])],
  ];
  test.each(cases)('%s', (field, stroke) => {
    expect(refused(() => benchStroke(shock, stroke))).toBe(field);
  });

  test('tolerance and parts', () => {
    expect(refused(() => benchStroke(shock, sine, { tolerance: 0.1 }))).toBe('tolerance');
    expect(refused(() => benchStroke(shock, sine, { parts: -1 }))).toBe('parts');
  });
});

describe('a corner that cannot be', () => {
  const corners: readonly (readonly [string, Partial<Corner>])[] = [
    ['sprungMass', { sprungMass: 0 }],
    ['wheelMass', { wheelMass: -1 }],
    ['motionRatio', { motionRatio: 0 }],
    ['motionRatio', { motionRatio: 3 }],
    ['springRate', { springRate: Number.NaN }],
    ['springRate', { springRate: 1, bumpStop: { from: 0.024, stiffness: 1, damping: 0 } }],
    ['springPreload', { springPreload: -0.001 }],
    ['tyre.stiffness', { tyre: { stiffness: 0, damping: 0 } }],
    ['tyre.damping', { tyre: { stiffness: 4000, damping: -1 } }],
    ['bumpStop.damping', { bumpStop: { from: 0.02, stiffness: 6e4, damping: -5 } }],
    ['bumpStop.from', { bumpStop: { from: 0.025, stiffness: 6e4, damping: 5 } }],
    ['droopStop.damping', { droopStop: { stiffness: 6e4, damping: -5 } }],
    ['clearance', { clearance: 0 }],
  ];
  test.each(corners)('%s', (field, change) => {
    expect(refused(() => moveCorner(shock, { ...sampleCorner, ...change }, landing))).toBe(field);
  });

  const events: readonly (readonly [string, CornerEvent])[] = [
    ['event.dropHeight', { kind: 'landing', dropHeight: -0.1 }],
    ['event.dropHeight', { kind: 'landing', dropHeight: 3.1 }],
    ['event.height', { kind: 'step', height: Number.NaN }],
    ['event.length', { kind: 'bump', height: 0.01, length: 0, speed: 5 }],
    ['event.speed', { kind: 'bump', height: 0.01, length: 0.1, speed: 0 }],
    ['event.frequency', { kind: 'washboard', height: 0.01, frequency: 0 }],
    ['event.frequency', { kind: 'washboard', height: 0.01, frequency: 300 }],
    ['event.times[2]', { kind: 'table', times: [0, 1, 1], heights: [0, 0, 0] }],
  ];
  test.each(events)('%s', (field, event) => {
    expect(refused(() => moveCorner(shock, sampleCorner, event))).toBe(field);
  });

  const options: readonly (readonly [string, CornerOptions])[] = [
    ['duration', { duration: 61 }],
    ['duration', { duration: 0 }],
    ['tolerance', { tolerance: 1e-13 }],
  ];
  test.each(options)('%s', (field, each) => {
    expect(refused(() => moveCorner(shock, sampleCorner, landing, each))).toBe(field);
  });
});

test('gas that locks on the way: with time, travel and the room that it lacks', () => {
  const tight = shockWith({ gas: { ...shock.gas, pressure: () => 101_325, capacity: 2e-7 } });
  expect(refused(() => benchStroke(tight, sine))).toBe('gas.capacity');
  expect(() => benchStroke(tight, sine)).toThrow(/locks at 0\.0\d+ s and a travel of 0\.0\d+ m.*another/u);
});

test('a droop stop so soft that the piston meets the end of its chamber', () => {
  // Without damping it swings out as far as it was pressed in.
  const small = linearShock({ farVolume: 2e-8 });
  const soft = { ...sampleCorner, droopStop: { stiffness: 40_000, damping: 0 } };
  expect(refused(() => moveCorner(small, soft, { kind: 'landing', dropHeight: 0.1 }))).toBe('farVolume');
});

test('cooling refuses what is no body', () => {
  const body = { diameter: 0.016, length: 0.045, emissivity: 0.1 };
  expect(refused(() => heatToAir({ ...body, diameter: 0 }, 300, 290, 1))).toBe('body.diameter');
  expect(refused(() => heatToAir({ ...body, emissivity: 1.2 }, 300, 290, 1))).toBe('body.emissivity');
  expect(refused(() => heatToAir(body, 300, 290, -1))).toBe('windSpeed');
});

describe('warnings', () => {
  const codes = (run: { readonly warnings: readonly { readonly code: string }[] }) =>
    run.warnings.map(({ code }) => code);

  test('thin oil through the holes leaves the range of their law, and its inertia counts', () => {
    const thin = sampleShock({ kinematicViscosity: 5e-5 });
    const fast = { ...sine, frequency: 30 };
    expect(codes(benchStroke(thin, fast))).toEqual(
      expect.arrayContaining(['hole-reynolds-number-high', 'hole-inertia-left-out']),
    );
    expect(codes(benchStroke(shock, { ...sine, frequency: 1 }))).toEqual([]);
  });

  test('a cavity, a full gas room, a wheel in the air, a piston at the cap', () => {
    expect(codes(benchStroke(shock, sine))).toEqual(['cavitation']);
    const high = moveCorner(shock, sampleCorner, { kind: 'landing', dropHeight: 0.4 });
    expect(codes(high)).toEqual(
      expect.arrayContaining(['cavitation', 'gas-nearly-full', 'wheel-off-the-ground']),
    );
    const soft = { ...sampleCorner, bumpStop: { from: 0.021, stiffness: 2000, damping: 0 } };
    const through = moveCorner(shock, soft, { kind: 'landing', dropHeight: 0.6 });
    expect(through.largestTravel.value).toBeGreaterThan(0.024);
    expect(codes(through)).toContain('piston-at-the-cap');
  });
});
