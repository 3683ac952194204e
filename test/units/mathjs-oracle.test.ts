// Every unit of the table against mathjs 15.2.0, a general unit library. mathjs has no stokes and no poise; both
// are made from their definitions (1 St = 1 cm²/s, 1 P = 0.1 Pa·s: SI brochure, 8th ed., table 9).
import * as mathjs from 'mathjs';
import { describe, expect, it } from 'vitest';
import type { Dimension } from '../../lib/units/index.js';
import { fromSi, toSi } from '../../lib/units/quantity-text.js';
import { findUnit, unitTable } from '../../lib/units/unit-table.js';

// Made again where another test file of this process has made them.
mathjs.createUnit(
  { stokes: '1 cm^2/s', centistokes: '0.01 cm^2/s', poise: '0.1 Pa s', centipoise: '0.001 Pa s' },
  { override: true },
);

/** What mathjs calls our unit, where its name differs from our symbol. */
const namesInMathjs: Readonly<Record<string, string>> = {
  µm: 'um',
  'mm²': 'mm^2',
  mm2: 'mm^2',
  'm²': 'm^2',
  'mm³': 'mm^3',
  mm3: 'mm^3',
  'cm³': 'cm^3',
  cm3: 'cm^3',
  'm³': 'm^3',
  '°C': 'degC',
  C: 'degC',
  '°F': 'degF',
  F: 'degF',
  cSt: 'centistokes',
  'mm²/s': 'mm^2/s',
  'mm2/s': 'mm^2/s',
  St: 'stokes',
  'm²/s': 'm^2/s',
  mPa·s: 'mPa s',
  Pa·s: 'Pa s',
  cP: 'centipoise',
  'kg/m³': 'kg/m^3',
  'kg/m3': 'kg/m^3',
  'g/cm³': 'g/cm^3',
  'g/cm3': 'g/cm^3',
  // mathjs's own psi is 6e-11 off the exact quotient, so the quotient is asked for.
  psi: 'lbf/in^2',
  µs: 'us',
  'Pa/m³': 'Pa/m^3',
  '°': 'deg',
};

const siUnits: Readonly<Record<Exclude<Dimension, 'ratio' | 'temperatureDifference'>, string>> = {
  length: 'm',
  area: 'm^2',
  volume: 'm^3',
  temperature: 'K',
  kinematicViscosity: 'm^2/s',
  dynamicViscosity: 'Pa s',
  density: 'kg/m^3',
  pressure: 'Pa',
  force: 'N',
  speed: 'm/s',
  springRate: 'N/m',
  volumeStiffness: 'Pa/m^3',
  mass: 'kg',
  time: 's',
  frequency: 'Hz',
  angle: 'rad',
};

const rows = Object.entries(siUnits).flatMap(([dimension, siUnit]) =>
  unitTable[dimension as Dimension].map((unit) => ({ dimension: dimension as Dimension, siUnit, unit })),
);

describe('every factor of the table, against mathjs', () => {
  it.each(rows)('$dimension in $unit.symbol', ({ siUnit, unit }) => {
    const name = namesInMathjs[unit.symbol] ?? unit.symbol;
    for (const value of [1, 37.5, -40, 350]) {
      const expected = mathjs.unit(value, name).toNumber(siUnit);
      // 4 ulp: both sides multiply once or twice.
      expect(Math.abs(toSi(value, unit) - expected)).toBeLessThanOrEqual(1e-15 * Math.abs(expected));
      expect(Math.abs(fromSi(expected, unit) - value)).toBeLessThanOrEqual(
        // A temperature near 0 °C loses the digits that 273.15 K take up.
        1e-15 * Math.max(Math.abs(value), unit.offset === undefined ? 0 : 600),
      );
    }
  });

  it.each(unitTable.temperatureDifference)('a difference in $symbol is that of two temperatures', (unit) => {
    const kelvin = (value: number): number =>
      mathjs.unit(value, namesInMathjs[unit.symbol] ?? unit.symbol).toNumber('K');
    // The spacing of doubles near 300 K is 6e-14.
    for (const value of [3, 9, -4])
      expect(Math.abs(toSi(value, unit) - (kelvin(value) - kelvin(0)))).toBeLessThan(2e-13);
  });

  it('whole numbers of a decimal unit give the double nearest to the decimal number', () => {
    const read = (value: number, dimension: Dimension, symbol: string): number =>
      toSi(value, findUnit(dimension, symbol) ?? { symbol, factor: Number.NaN });
    expect(read(200, 'kinematicViscosity', 'cSt')).toBe(0.0002);
    expect(read(60, 'volume', 'ml')).toBe(0.00006);
    expect(read(7, 'length', 'mm')).toBe(0.007);
  });

  it('a percent is a hundredth, a number without unit itself', () => {
    expect(unitTable.ratio.map((unit) => toSi(37, unit))).toEqual([37, 0.37]);
  });
});

describe('anchor points of the literature', () => {
  // SI brochure 9th ed. (2019) sec. 2.3.1 for 0 °C; NIST SP 811 (2008) appendix B.8 for the others. The last column is
  // half the last printed digit; for exact values it is the spacing of doubles near 273 (temperatures) or 0.
  it.each([
    ['temperature', '°C', 0, 273.15, 0],
    ['temperature', '°F', 32, 273.15, 6e-14],
    ['temperature', '°F', 212, 373.15, 6e-14],
    ['temperature', '°F', -459.67, 0, 6e-14],
    ['length', 'in', 1, 0.0254, 0],
    ['pressure', 'atm', 1, 101_325, 0],
    ['pressure', 'psi', 1, 6894.757, 5e-4],
    ['springRate', 'lbf/in', 1, 175.1268, 5e-5],
    ['dynamicViscosity', 'cP', 1, 1e-3, 0],
    ['kinematicViscosity', 'cSt', 1, 1e-6, 0],
  ] as const)('%s: %s %d', (dimension, symbol, value, expected, halfDigit) => {
    const unit = findUnit(dimension, symbol) ?? { symbol: 'missing', factor: Number.NaN };
    expect(Math.abs(toSi(value, unit) - expected)).toBeLessThanOrEqual(halfDigit);
  });
});

describe('why the list is closed', () => {
  it('mathjs reads "1 fl oz" as a femtolitre times an ounce; here it is no unit at all', () => {
    expect(mathjs.unit('1 fl oz').toNumber('m^3 kg')).toBeCloseTo(2.834_952_312_5e-20, 30);
    for (const symbol of ['fl oz', 'floz', 'fl', 'oz', 'fl. oz.']) {
      for (const dimension of Object.keys(unitTable) as Dimension[]) {
        expect(findUnit(dimension, symbol)).toBeUndefined();
      }
    }
  });
});
