import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Dimension,
  describeDimension,
  formatQuantity,
  parseQuantity,
  QuantityError,
  roundedText,
} from '../../lib/units/index.js';
import { fromSi, quantityPattern, toSi } from '../../lib/units/quantity-text.js';
import { unitTable } from '../../lib/units/unit-table.js';
import { anySign } from '../any-sign.js';

const dimensions = Object.keys(unitTable) as Dimension[];

function faultOf(text: string, dimension: Dimension): string {
  try {
    parseQuantity(text, dimension);
  } catch (error) {
    if (error instanceof QuantityError) return error.message;
    throw error;
  }
  return 'accepted';
}

describe('parseQuantity reads', () => {
  it.each([
    ['1.7 mm', 'length', 1.7e-3],
    ['1.7mm', 'length', 1.7e-3],
    ['  1.7   mm ', 'length', 1.7e-3],
    ['1.7\u00a0mm', 'length', 1.7e-3],
    ['1.7\u2009mm', 'length', 1.7e-3],
    ['1.7\tmm', 'length', 1.7e-3],
    ['.5 mm', 'length', 0.5e-3],
    ['5. mm', 'length', 5e-3],
    ['+5 mm', 'length', 5e-3],
    ['1e-3 m', 'length', 1e-3],
    ['1E3mm', 'length', 1],
    ['50 µm', 'length', 50e-6],
    ['50 μm', 'length', 50e-6],
    ['50 um', 'length', 50e-6],
    ['-5 °C', 'temperature', 268.15],
    ['−5 °C', 'temperature', 268.15],
    ['38°C', 'temperature', 311.15],
    ['38 ºC', 'temperature', 311.15],
    ['38 ˚C', 'temperature', 311.15],
    ['38 ℃', 'temperature', 311.15],
    ['0.3 Pa  s', 'dynamicViscosity', 0.3],
    ['50 %', 'ratio', 0.5],
    ['0.5', 'ratio', 0.5],
    ['1e−3 m', 'length', 1e-3],
  ] as const)('"%s" as %s', (text, dimension, expected) => {
    expect(Math.abs(parseQuantity(text, dimension) - expected)).toBeLessThanOrEqual(4e-16 * expected);
  });
});

describe('parseQuantity refuses', () => {
  const length = 'write a length such as "1.5 mm" (mm, µm, um, cm, m, in)';
  it.each([
    ['1.7', 'length', `"1.7" has no unit; ${length}`],
    ['1,7 mm', 'length', `"1,7 mm" has a decimal comma where a point is needed; ${length}`],
    ['0,500 mm', 'length', `"0,500 mm" has a decimal comma where a point is needed; ${length}`],
    ['1,0000 mm', 'length', `"1,0000 mm" has a decimal comma where a point is needed; ${length}`],
    [
      '1,000 cSt',
      'kinematicViscosity',
      '"1,000 cSt" can mean 1000 cSt or 1 cSt; write the one that you mean, without a comma',
    ],
    [
      '12,340mm',
      'length',
      '"12,340mm" can mean 12340 mm or 12.34 mm; write the one that you mean, without a comma',
    ],
    ['1,000.5 mm', 'length', '"1,000.5 mm" has commas between its digits; write 1000.5 mm'],
    ['1,000,000 mm', 'length', '"1,000,000 mm" has commas between its digits; write 1000000 mm'],
    ['1 000 mm', 'length', `"1 000 mm" has a space inside the number; ${length}`],
    ['350 cSt', 'length', `"350 cSt" is a kinematic viscosity; ${length}`],
    ['1.7 MM', 'length', `the unit "MM" in "1.7 MM" is not accepted; ${length}`],
    ['1 1/2 in', 'length', `"1 1/2 in" has a space inside the number; ${length}`],
    ['1² mm', 'length', `the unit "² mm" in "1² mm" is not accepted; ${length}`],
    [
      '2 fl oz',
      'volume',
      'the unit "fl oz" in "2 fl oz" is not accepted; write a volume such as "1.5 ml" (ml, mL, l, L, mm³, mm3, cm³, cm3, m³)',
    ],
    ['mm', 'length', '"mm" is not a length such as "1.5 mm" (mm, µm, um, cm, m, in)'],
    ['', 'length', '"" is not a length such as "1.5 mm" (mm, µm, um, cm, m, in)'],
    ['NaN mm', 'length', '"NaN mm" is not a length such as "1.5 mm" (mm, µm, um, cm, m, in)'],
    ['0x10 mm', 'length', `the unit "x10 mm" in "0x10 mm" is not accepted; ${length}`],
    [
      '1e400 mm',
      'length',
      '"1e400 mm" is too large a number for a length such as "1.5 mm" (mm, µm, um, cm, m, in)',
    ],
    ['1 mm\n2', 'length', `the unit "mm 2" in "1 mm\\n2" is not accepted; ${length}`],
    [
      '20 °K',
      'temperature',
      'the unit "°K" in "20 °K" is not accepted; write a temperature such as "20 °C" (°C, C, °F, F, K)',
    ],
  ] as const)('%j as %s', (text, dimension, message) => {
    expect(faultOf(text, dimension)).toBe(message);
  });

  it('a text longer than a quantity can be, before any pattern runs on it', () => {
    expect(faultOf(`${'1'.repeat(1_000_000)}\n`, 'length')).toBe(
      `"${'1'.repeat(40)}…" is not a length such as "1.5 mm" (mm, µm, um, cm, m, in)`,
    );
  });

  it('any other text, with a QuantityError and nothing else', () => {
    fc.assert(
      fc.property(fc.string({ unit: anySign }), fc.constantFrom(...dimensions), (text, dimension) => {
        try {
          expect(Number.isFinite(parseQuantity(text, dimension))).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(QuantityError);
        }
      }),
    );
  });
});

const anyUnit = fc.constantFrom(
  ...dimensions.flatMap((dimension) => unitTable[dimension].map((unit) => ({ dimension, unit }))),
);

describe('writing and reading', () => {
  it('give back what was written, to the digits written', () => {
    const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(number, anyUnit, fc.integer({ min: 1, max: 15 }), (value, { dimension, unit }, digits) => {
        const si = toSi(value, unit);
        const text = formatQuantity(si, dimension, unit.symbol, digits);
        const rounded = toSi(Number(fromSi(si, unit).toPrecision(digits)), unit);
        // 1e-15: one rounding in each of the two conversions, relative to the largest number that takes part.
        const scale = Math.max(Math.abs(rounded), unit.offset ?? 0);
        fc.pre(text.length <= 40);
        expect(Math.abs(parseQuantity(text, dimension) - rounded)).toBeLessThanOrEqual(1e-15 * scale);
      }),
    );
  });

  it('stay within the pattern given to editors', () => {
    const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(
        number,
        anyUnit,
        fc.constantFrom('', ' ', '\u00a0'),
        (value, { dimension, unit }, space) => {
          const text = `${value}${space}${unit.symbol}`;
          expect(text).toMatch(new RegExp(quantityPattern(dimension), 'u'));
          expect(faultOf(text, dimension)).toBe('accepted');
        },
      ),
    );
    expect('2 fl oz').not.toMatch(new RegExp(quantityPattern('volume'), 'u'));
    expect('1.7 cSt').not.toMatch(new RegExp(quantityPattern('length'), 'u'));
  });
});

describe('roundedText', () => {
  it.each([
    [0, 3, '0'],
    [-0, 3, '0'],
    [1.7, 3, '1.7'],
    [1234.56, 3, '1230'],
    [0.000_123_456, 2, '0.00012'],
    [-2.5, 2, '−2.5'],
    [1e-7, 3, '0.0000001'],
    [1e21, 3, '1000000000000000000000'],
    [0.1 + 0.2, 15, '0.3'],
  ] as const)('%d to %d digits', (value, digits, expected) => {
    expect(roundedText(value, digits)).toBe(expected);
  });

  it('refuses what is not a number', () => {
    expect(() => roundedText(Number.NaN, 3)).toThrow('value must be a finite number, got NaN');
  });
});

it('formatQuantity knows where no space belongs, and refuses a unit of another dimension', () => {
  expect(formatQuantity(0.0017, 'length', 'mm')).toBe('1.7 mm');
  expect(formatQuantity(0.5, 'ratio', '%')).toBe('50%');
  expect(formatQuantity(Math.PI / 4, 'angle', '°')).toBe('45°');
  expect(formatQuantity(268.15, 'temperature', '°C')).toBe('−5 °C');
  expect(() => formatQuantity(1, 'length', 'cSt')).toThrow(
    'the unit "cSt" is not a length such as "1.5 mm" (mm, µm, um, cm, m, in)',
  );
  expect(describeDimension('ratio')).toBe('a plain number such as "1.5" (%)');
});
