import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { type Build, readParts } from '../../lib/parts/index.js';
import { heatCheck } from '../../notebooks/warm-up/checks.js';
import { trackHeat } from '../../notebooks/warm-up/track.js';
import { files } from './answers.js';
import { buildOf } from './landing-cases.js';

const track = { bumpsPerSecond: 2, bumpHeight: 0.015, landingsPerSecond: 0.25, dropHeight: 0.1 };
const air = 298.15;

test('between two oil temperatures the heat of an event goes evenly in ratio, and at both it is what that oil makes', () => {
  const build = buildOf(files.demo, 'buggy front');
  const [cold, warm] = [trackHeat(build, air, track), trackHeat(build, air + 30, track)];
  expect(cold.bumps(air)).toBeCloseTo(2 * cold.ofOneBump, 12);
  expect(cold.landings(air)).toBeCloseTo(cold.ofOneLanding / 4, 12);
  expect(cold.bumps(air + 30)).toBeCloseTo(2 * warm.ofOneBump, 9);
  expect(cold.landings(air + 30)).toBeCloseTo(warm.ofOneLanding / 4, 9);
  expect(cold.bumps(air + 15)).toBeCloseTo(2 * Math.sqrt(cold.ofOneBump * warm.ofOneBump), 9);
});

test('without bumps or landings nothing is made of them', () => {
  const build = buildOf(files.demo, 'buggy front');
  const none = trackHeat(build, air, { ...track, bumpsPerSecond: 0 });
  expect(none.bumps(air)).toBe(0);
  expect(none.landings(air)).toBeGreaterThan(0);
});

// π/4 · 9 mm² · 20 mm = 0.141 ml of shaft; 0.16 ml of gas at 20 °C, and 2.1 ml of oil grow by 0.06 ml over 30 K.
test('where the shaft locks once the oil is warm, the heat is taken as that of the oil at the air', () => {
  const rare = readParts(readFileSync(new URL('../parts/files/rare.yaml', import.meta.url), 'utf8'));
  const build: Build = buildOf(rare, 'squeezed gas');
  const heat = trackHeat(build, 293.15, track);
  expect(heat.ofOneBump).toBeGreaterThan(0);
  expect(heat.bumps(303.15)).toBe(heat.bumps(293.15));
});

// By hand: three points 10 s apart, 2, 4 and 6 W: 30 + 50 = 80 J; a body of 10 J/K that is 8 K warmer and as good as insulated holds all of it.
const insulated = { diameter: 1e-9, length: 1e-9, emissivity: 0 };
const warmedBy = (kelvins: number, powers: readonly number[]) => ({
  result: {
    times: Float64Array.from([0, 10, 20, 30]),
    temperatures: Float64Array.from([300, 300 + kelvins / 2, 300 + kelvins, 300]),
    powers: Float64Array.from([...powers, 99]),
    endTemperature: 300,
    highestTemperature: 300 + kelvins,
    warnings: [],
  },
  body: { body: insulated, heatCapacity: 10, windShare: 1 },
  wind: 0,
  runEnd: 2,
  speed: 0.3,
  left: () => 1,
  assumptions: [],
});
const checked = (kelvins: number, powers: readonly number[]) => {
  const check = heatCheck(warmedBy(kelvins, powers), {
    build: buildOf(files.demo, 'buggy front'),
    air: 300,
    run: 20,
    wind: 0,
    middle: 0.3,
  });
  if (check.kind !== 'check') throw new Error('no check');
  return { passed: check.passed, detail: check.detail };
};

test('the check of the heat holds where it is kept, to a hundredth, and says by how much it is not', () => {
  expect(checked(8, [2, 4, 6])).toEqual({
    passed: true,
    detail: 'off by 0.00 %, summed over 2 points of the run',
  });
  expect(checked(7.2, [2, 4, 6])).toEqual({
    passed: false,
    detail: 'off by 10.00 %, summed over 2 points of the run',
  });
  // Nothing made, and 20 J out of nowhere.
  expect(checked(2, [0, 0, 0]).passed).toBe(false);
  expect(checked(0, [0, 0, 0]).passed).toBe(true);
});
