import { describe, expect, test } from 'vitest';
import { blendFraction, blendViscosity } from '../../lib/fluid/blend/blend.js';
import { createOil, type Oil } from '../../lib/fluid/oil/oil.js';

const kelvin = (celsius: number): number => celsius + 273.15;
const point = (celsius: number, viscosity: number) => ({
  temperature: kelvin(celsius),
  kinematicViscosity: viscosity / 1e6,
});
const silicone = (viscosity: number, densityAt15Celsius = 975): Oil =>
  createOil({
    base: 'silicone',
    viscosity: { kind: 'silicone', point: point(25, viscosity) },
    densityAt15Celsius,
  });
const byPoints = (cold: number, hot: number): Oil =>
  createOil({ base: 'silicone', viscosity: { kind: 'points', points: [point(0, cold), point(60, hot)] } });
const grade = (number: number): Oil =>
  createOil({ base: 'petroleum', viscosity: { kind: 'iso-grade', grade: number } });
const rulesOf = (first: Oil, second: Oil): readonly string[] =>
  Object.keys(blendViscosity({ pair: { first, second }, temperature: kelvin(25) }, 0.5).rules).sort();

describe('the rules that fit a pair', () => {
  const general = ['arrhenius', 'astm-d7152', 'kendall-monroe', 'refutas'];

  test("petroleum has Wright's method, and nothing of polymers", () => {
    expect(rulesOf(grade(32), grade(100))).toEqual([...general, 'wright'].sort());
  });

  test('silicone has the rules of polymers, and no method that mixes Walther lines', () => {
    expect(rulesOf(silicone(100), silicone(1000))).toEqual([...general, 'molar-mass', 'polymer'].sort());
  });

  test('silicones by points are Walther lines; one of them is not enough', () => {
    const both = [...general, 'molar-mass', 'polymer', 'wright'].sort();
    expect(rulesOf(byPoints(600, 188), byPoints(1714, 538))).toEqual(both);
    expect(rulesOf(byPoints(600, 188), silicone(1000))).not.toContain('wright');
    expect(rulesOf(silicone(1000), byPoints(600, 188))).not.toContain('wright');
  });

  test('a silicone below 2.5 kg/mol has no rule by molar mass', () => {
    expect(rulesOf(silicone(35), silicone(1000))).toEqual([...general, 'polymer'].sort());
    expect(rulesOf(silicone(1000), silicone(35))).toEqual([...general, 'polymer'].sort());
  });
});

test('the default is additive logarithms for silicone, Wright for petroleum', () => {
  const at = (first: Oil, second: Oil) =>
    blendViscosity({ pair: { first, second }, temperature: kelvin(25) }, 0.5).defaultRule;
  expect(at(silicone(100), silicone(1000))).toBe('arrhenius');
  expect(at(grade(32), grade(100))).toBe('wright');
});

test('half of each volume is more than half of the mass of the heavier oil', () => {
  const pair = { first: silicone(100, 900), second: silicone(1000, 1000) };
  const { rules } = blendViscosity({ pair, temperature: kelvin(25) }, 0.5);
  // Both expand alike, so the mass share is 1000 / 1900 at any temperature.
  expect((rules.arrhenius ?? 0) * 1e6).toBeCloseTo(100 * 10 ** (1000 / 1900), 8);
  // By volume: the value published for 50/50, whatever the densities.
  expect((rules['astm-d7152'] ?? 0) * 1e6).toBeCloseTo(282.09, 2);
});

test("away from 25 °C the rule by molar mass changes with temperature as its oils do, by Barry's 0.5384 at 60 °C", () => {
  const pair = { first: silicone(100), second: silicone(1000) };
  const [at25 = Number.NaN, at60 = Number.NaN] = [25, 60].map(
    (celsius) => blendViscosity({ pair, temperature: kelvin(celsius) }, 0.5).rules['molar-mass'],
  );
  expect(at25 * 1e6).toBeCloseTo(381.1877, 3);
  expect(at60 / at25).toBeCloseTo(0.5384059697, 9);
});

test('labels widen the spread by their own intervals', () => {
  const weight = (number: number): Oil =>
    createOil({ base: 'silicone', viscosity: { kind: 'trade-weight', weight: number } });
  const pair = { first: weight(30), second: weight(40) };
  const { low, typical, high } = blendViscosity({ pair, temperature: kelvin(25) }, 0);
  expect([low, typical, high].map((value) => Math.round(value * 1e6))).toEqual([280, 350, 380]);
});

test('the viscosity of an oil itself takes all of that oil, whichever comes first', () => {
  for (const [first, second] of [
    [200, 500],
    [500, 200],
  ] as const) {
    const blend = { pair: { first: silicone(first), second: silicone(second) }, temperature: kelvin(25) };
    const sharesFor = (viscosity: number) => Object.values(blendFraction(blend, viscosity / 1e6).rules);
    for (const share of sharesFor(first)) expect(share).toBeCloseTo(0, 9);
    for (const share of sharesFor(second)) expect(share).toBeCloseTo(1, 9);
  }
});

test('two equal oils are taken from the first bottle', () => {
  const blend = { pair: { first: silicone(350), second: silicone(350) }, temperature: kelvin(25) };
  expect(blendFraction(blend, 350e-6).typical).toBe(0);
});
