import { describe, expect, test } from 'vitest';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil, type Oil } from '../../lib/fluid/oil/oil.js';
import type { OilBase, OilDefinition, ViscosityDefinition } from '../../lib/fluid/oil/oil-definition.js';
import { viscosityAt } from '../../lib/fluid/viscosity/viscosity-line.js';

const kelvin = (celsius: number): number => celsius + 273.15;
const point = (celsius: number, viscosity: number) => ({
  temperature: kelvin(celsius),
  kinematicViscosity: viscosity * 1e-6,
});
const oilOf = (base: OilBase, viscosity: ViscosityDefinition): Oil => createOil({ base, viscosity });
const siliconeOf = (viscosity: number): Oil =>
  oilOf('silicone', { kind: 'silicone', point: point(25, viscosity) });
const mm2s = (oil: Oil, celsius: number, bound?: 'low' | 'typical' | 'high'): number =>
  fluidAt(oil, kelvin(celsius), bound).kinematicViscosity * 1e6;
const codes = (oil: Oil, celsius: number): readonly string[] =>
  fluidAt(oil, kelvin(celsius)).warnings.map(({ code }) => code);

describe('each way to know an oil', () => {
  const point25 = point(25, 350);
  const definitions: readonly [string, OilDefinition, number, number][] = [
    [
      'points',
      { base: 'petroleum', viscosity: { kind: 'points', points: [point(40, 32), point(100, 5.4)] } },
      40,
      32,
    ],
    [
      'viscosity index',
      {
        base: 'petroleum',
        viscosity: { kind: 'viscosity-index', point: point(20, 80), viscosityIndex: 120 },
      },
      20,
      80,
    ],
    [
      'coefficient',
      {
        base: 'silicone',
        viscosity: { kind: 'viscosity-temperature-coefficient', point: point25, coefficient: 0.6 },
      },
      25,
      350,
    ],
    ['silicone', { base: 'silicone', viscosity: { kind: 'silicone', point: point(20, 387) } }, 20, 387],
    ['iso grade', { base: 'petroleum', viscosity: { kind: 'iso-grade', grade: 46 } }, 40, 46],
    ['trade weight', { base: 'silicone', viscosity: { kind: 'trade-weight', weight: 30 } }, 25, 350],
  ];

  test.each(definitions)(
    '%s: passes its point, thins with heat, is plain data',
    (_, definition, at, wanted) => {
      const oil = createOil(definition);
      expect(mm2s(oil, at)).toBeCloseTo(wanted, 9);
      expect(mm2s(oil, at + 10)).toBeLessThan(wanted);
      expect(JSON.parse(JSON.stringify(oil))).toEqual(oil);
      expect(oil.base).toBe(definition.base);
    },
  );
});

test('a Barry silicone from 8 to 38 °C changes by a factor of 1.83, an ISO VG 32 oil by 5.3', () => {
  const silicone = siliconeOf(350);
  expect(mm2s(silicone, 8) / mm2s(silicone, 38)).toBeCloseTo(1.83, 2);
  const mineral = oilOf('petroleum', { kind: 'points', points: [point(40, 32), point(100, 5.4)] });
  expect(mm2s(mineral, 8) / mm2s(mineral, 38)).toBeCloseTo(5.3, 1);
});

describe('labels are intervals', () => {
  test('an ISO grade spans 10 % to either side at 40 °C, by one viscosity index', () => {
    const oil = oilOf('petroleum', { kind: 'iso-grade', grade: 32 });
    expect(oil.isInterval).toBe(true);
    expect(mm2s(oil, 40, 'low')).toBeCloseTo(28.8, 9);
    expect(mm2s(oil, 40, 'high')).toBeCloseTo(35.2, 9);
    expect(mm2s(oil, 20, 'low')).toBeLessThan(mm2s(oil, 20));
    expect(oil.assumptions.join(' ')).toMatch(/ISO 3448.*Viscosity index 100/u);
    const known = oilOf('petroleum', { kind: 'iso-grade', grade: 32, viscosityIndex: 150 });
    expect(known.assumptions.join(' ')).not.toMatch(/Viscosity index/u);
    expect(mm2s(known, 20)).toBeLessThan(mm2s(oil, 20));
  });

  test('a trade weight spans its table, interpolates between labels and says that it has no source', () => {
    const oil = oilOf('silicone', { kind: 'trade-weight', weight: 40 });
    expect([mm2s(oil, 25, 'low'), mm2s(oil, 25), mm2s(oil, 25, 'high')].map(Math.round)).toEqual([
      420, 500, 550,
    ]);
    const between = oilOf('silicone', { kind: 'trade-weight', weight: 55 });
    expect([mm2s(between, 25, 'low'), mm2s(between, 25), mm2s(between, 25, 'high')].map(Math.round)).toEqual([
      600, 725, 815,
    ]);
    expect(oil.isInterval).toBe(true);
    expect(oil.assumptions.join(' ')).toMatch(/420 to 550 mm²\/s at 25 °C: common practice, no source/u);
  });

  test('a measured oil is no interval: its three lines are one', () => {
    const oil = siliconeOf(350);
    expect(oil.isInterval).toBe(false);
    expect([oil.low, oil.high]).toEqual([oil.typical, oil.typical]);
  });
});

describe('warnings', () => {
  const hydraulic = oilOf('petroleum', { kind: 'points', points: [point(40, 32), point(100, 5.4)] });

  test('a line is trusted 20 K beyond its points, no further', () => {
    expect(codes(hydraulic, 20.1)).toEqual([]);
    expect(codes(hydraulic, 19.9)).toEqual(['viscosity-extrapolated']);
    expect(codes(hydraulic, 119.9)).toEqual([]);
    const [warning] = fluidAt(hydraulic, kelvin(125)).warnings;
    expect(warning?.value).toBeCloseTo(kelvin(125), 10);
    expect(warning?.limit).toBeCloseTo(kelvin(120), 10);
    expect(fluidAt(hydraulic, kelvin(0)).warnings[0]?.message).toMatch(/at 0 °C.*20 to 120 °C/u);
  });

  test("Barry's law warns below 25 °C, or below the point where that is colder", () => {
    expect(codes(siliconeOf(350), 24.9)).toEqual(['viscosity-extrapolated']);
    expect(codes(siliconeOf(350), 25)).toEqual([]);
    const cold = oilOf('silicone', { kind: 'silicone', point: point(10, 500) });
    expect(codes(cold, 10)).toEqual([]);
    expect(codes(cold, 9)).toEqual(['viscosity-extrapolated']);
  });

  test("Barry's law warns above 250 °C, and a warm point does not move its cold end", () => {
    expect(codes(siliconeOf(350), 249)).toEqual([]);
    expect(codes(siliconeOf(350), 251)).toEqual(['viscosity-extrapolated']);
    const warm = oilOf('silicone', { kind: 'silicone', point: point(40, 300) });
    expect(codes(warm, 26)).toEqual([]);
    expect(codes(warm, 24)).toEqual(['viscosity-extrapolated']);
  });

  test('a coefficient is trusted 20 K beyond its temperatures', () => {
    const oil = oilOf('silicone', {
      kind: 'viscosity-temperature-coefficient',
      point: point(25, 350),
      coefficient: 0.6,
    });
    expect(codes(oil, 6)).toEqual([]);
    expect(codes(oil, 4)).toEqual(['viscosity-extrapolated']);
    expect(codes(oil, 118)).toEqual([]);
    expect(codes(oil, 120)).toEqual(['viscosity-extrapolated']);
  });

  test("a silicone thinner than Barry's law is stated for says so, thicker ones do not", () => {
    expect(codes(siliconeOf(50), 30)).toEqual(['barry-viscosity-low']);
    expect(codes(siliconeOf(100), 30)).toEqual([]);
    const weight = oilOf('silicone', { kind: 'trade-weight', weight: 10 });
    expect(codes(weight, 30)).toEqual(['barry-viscosity-low']);
    expect(weight.warnings[0]?.value).toBeCloseTo(80e-6, 12);
  });

  test('an improved oil warns by its index, given or found from its points', () => {
    const improved = oilOf('petroleum', { kind: 'points', points: [point(40, 13.5), point(100, 5.1)] });
    expect(codes(improved, 40)).toEqual(['viscosity-index-high']);
    expect(improved.warnings[0]?.message).toMatch(/382.*improver/u);
    const thin = oilOf('petroleum', { kind: 'points', points: [point(40, 8), point(100, 3)] });
    expect(codes(thin, 40)).toEqual(['viscosity-index-high']);
    const given = (viscosityIndex: number) =>
      oilOf('petroleum', { kind: 'viscosity-index', point: point(40, 32), viscosityIndex });
    expect(codes(given(201), 40)).toEqual(['viscosity-index-high']);
    expect(codes(given(200), 40)).toEqual([]);
  });

  test('a silicone by index is told of a better way, one by points is not measured by the index', () => {
    const byIndex = oilOf('silicone', {
      kind: 'viscosity-index',
      point: point(25, 350),
      viscosityIndex: 430,
    });
    expect(byIndex.warnings[0]?.message).toMatch(/coefficient is better/u);
    const byPoints = oilOf('silicone', { kind: 'points', points: [point(0, 600), point(60, 188)] });
    expect(byPoints.warnings).toEqual([]);
  });

  test('a point far off the fitted line is told', () => {
    const [first, second] = [point(20, 88), point(80, 8.5)];
    const good = oilOf('petroleum', { kind: 'points', points: [first, point(40, 32), second] });
    expect(good.warnings).toEqual([]);
    expect(good.assumptions.join(' ')).toMatch(/3 points/u);
    // A middle point off by 12 % leaves it 8 % off the line that it draws after it, one off by 5 % leaves 3 %.
    const withMiddle = (viscosity: number) =>
      oilOf('petroleum', { kind: 'points', points: [first, point(40, viscosity), second] });
    expect(withMiddle(36).warnings.map(({ code }) => code)).toEqual(['walther-residual-high']);
    expect(withMiddle(36).warnings[0]?.value).toBeLessThan(0.1);
    expect(withMiddle(33.6).warnings).toEqual([]);
  });

  test('an oil too thin for an index at 100 °C has no index to warn of', () => {
    const thin = oilOf('petroleum', { kind: 'points', points: [point(0, 8), point(40, 2.6)] });
    expect(viscosityAt(thin.typical, kelvin(100))).toBeLessThan(2e-6);
    expect(thin.warnings).toEqual([]);
  });

  test('a line that has no viscosity at all at 100 °C is still an oil', () => {
    const steep = oilOf('petroleum', { kind: 'points', points: [point(-40, 2), point(-30, 0.5)] });
    expect(steep.warnings).toEqual([]);
  });
});

describe('state', () => {
  test('the density is typical of the base unless given, and falls with heat', () => {
    expect(fluidAt(siliconeOf(350), kelvin(25)).density).toBeCloseTo(969.794, 3);
    const oil = oilOf('petroleum', { kind: 'iso-grade', grade: 32 });
    expect(fluidAt(oil, kelvin(15)).density).toBeCloseTo(870, 9);
    expect(oil.assumptions.join(' ')).toMatch(/Density 870 kg\/m³ at 15 °C/u);
    const heavy = createOil({
      ...{ base: 'silicone' },
      densityAt15Celsius: 990,
      viscosity: { kind: 'silicone', point: point(25, 350) },
    });
    expect(fluidAt(heavy, kelvin(15)).density).toBeCloseTo(990, 9);
    expect(heavy.assumptions.join(' ')).not.toMatch(/Density/u);
  });

  test('a silicone has a relaxation time, a thin one and a petroleum oil none', () => {
    expect(fluidAt(siliconeOf(350), kelvin(25)).relaxationTime).toBeCloseTo(1.3526e-6, 9);
    const byPoints = oilOf('silicone', { kind: 'points', points: [point(0, 600.2), point(60, 188.4)] });
    expect(fluidAt(byPoints, kelvin(25)).relaxationTime).toBeCloseTo(1.35e-6, 7);
    expect(fluidAt(siliconeOf(60), kelvin(25)).relaxationTime).toBeGreaterThan(0);
    expect(fluidAt(siliconeOf(40), kelvin(25))).not.toHaveProperty('relaxationTime');
    const petroleum = oilOf('petroleum', { kind: 'iso-grade', grade: 100 });
    expect(fluidAt(petroleum, kelvin(25))).not.toHaveProperty('relaxationTime');
  });
});
