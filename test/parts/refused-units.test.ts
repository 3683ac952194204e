import { describe, expect, it } from 'vitest';
import { lengths, type Row, refusal, volumes } from './refusal.js';
import { changed } from './small-file.js';

describe('units and numbers', () => {
  it.each<Row>([
    [
      'bare number',
      '11.95 mm',
      '11.95',
      '16:15 pistons[0].diameter: needs a unit, for example "11.95 mm", got 11.95',
    ],
    [
      'number in quotes without unit',
      '11.95 mm',
      '"11.95"',
      `16:15 pistons[0].diameter: "11.95" has no unit; ${lengths}`,
    ],
    [
      'wrong dimension',
      '11.95 mm',
      '11.95 cSt',
      `16:15 pistons[0].diameter: "11.95 cSt" is a kinematic viscosity; ${lengths}`,
    ],
    [
      'fl oz',
      '60 ml',
      '2 fl oz',
      `8:23 oils[0].bottle.volume: the unit "fl oz" in "2 fl oz" is not accepted; ${volumes}`,
    ],
    [
      'a unit of no list',
      '60 ml',
      '2 cups',
      `8:23 oils[0].bottle.volume: the unit "cups" in "2 cups" is not accepted; ${volumes}`,
    ],
    [
      'decimal comma',
      '11.95 mm',
      '11,95 mm',
      `16:15 pistons[0].diameter: "11,95 mm" has a decimal comma where a point is needed; ${lengths}`,
    ],
    [
      'decimal comma in braces',
      '1.7 mm',
      '1,7 mm',
      '19:31 pistons[0].holes[0].diameter: "1,7 mm" has a decimal comma where a point is needed',
    ],
    [
      'comma before three digits',
      '350 cSt',
      '1,000 cSt',
      '6:16 oils[0].viscosity: "1,000 cSt" can mean 1000 cSt or 1 cSt; write the one that you mean, without a comma',
    ],
    [
      'comma before three digits in braces',
      '1.7 mm',
      '1,250 mm',
      '19:31 pistons[0].holes[0].diameter: "1,250 mm" can mean 1250 mm or 1.25 mm; write the one that you mean, without a comma',
    ],
    [
      'comma before three digits of a count',
      'count: 2',
      'count: 1,000',
      '19:18 pistons[0].holes[0].count: "1,000" can mean 1000 or 1; write the one that you mean, without a comma',
    ],
    [
      '1e400 with a unit',
      '11.95 mm',
      '1e400 mm',
      '16:15 pistons[0].diameter: "1e400 mm" is too large a number for a length such as "1.5 mm" (mm, µm, um, cm, m, in)',
    ],
    [
      '1e400',
      'count: 2',
      'count: 1e400',
      '19:18 pistons[0].holes[0].count: must be a number of ordinary size, got 1e400',
    ],
    [
      'infinity',
      'count: 2',
      'count: .inf',
      '19:18 pistons[0].holes[0].count: must be a number of ordinary size, got .inf',
    ],
    [
      'not a number',
      'count: 2',
      'count: .NaN',
      '19:18 pistons[0].holes[0].count: must be a number of ordinary size, got .NaN',
    ],
    [
      'NaN as a word',
      'count: 2',
      'count: NaN',
      '19:18 pistons[0].holes[0].count: must be a whole number from 1 to 50, without quotes, got "NaN"',
    ],
    [
      'half a hole',
      'count: 2',
      'count: 2.5',
      '19:18 pistons[0].holes[0].count: must be a whole number from 1 to 50, got 2.5',
    ],
    [
      'no hole',
      'count: 2',
      'count: 0',
      '19:18 pistons[0].holes[0].count: must be a whole number from 1 to 50, got 0',
    ],
    [
      'count in quotes',
      'count: 2',
      'count: "2"',
      '19:18 pistons[0].holes[0].count: must be a whole number from 1 to 50, without quotes, got "2"',
    ],
    [
      'absolute zero',
      '25 °C',
      '-273.15 °C',
      '7:9 oils[0].at: must be above absolute zero, −273.15 °C, got "-273.15 °C"',
    ],
    [
      'below absolute zero',
      '25 °C',
      '-500 °F',
      '7:9 oils[0].at: must be above absolute zero, −273.15 °C, got "-500 °F"',
    ],
    [
      'negative kelvin',
      '25 °C',
      '-1 K',
      '7:9 oils[0].at: must be above absolute zero, −273.15 °C, got "-1 K"',
    ],
    ['colder than any race', '25 °C', '25 K', '7:9 oils[0].at: must be -40 °C to 200 °C, got "25 K"'],
    [
      'viscosity index out of range',
      '95',
      '950',
      '13:22 oils[1].viscosity-index: must be a number from -100 to 500, got 950',
    ],
    [
      'exponent below 1',
      'volume: 0.9 ml',
      'volume: 0.9 ml, exponent: 0.9',
      '26:64 shocks[0].compensator.exponent: must be a number from 1 to 1.4, got 0.9',
    ],
    [
      'off the bore',
      'thickness: 2.5 mm',
      'thickness: 2.5 mm\n    off-centre: 1.5',
      '18:17 pistons[0].off-centre: must be a number from 0 to 0.99, got 1.5',
    ],
    [
      'price with a sign',
      '7.90 EUR',
      '7.90 €',
      '8:37 oils[0].bottle.price: must be an amount and a currency code of ISO 4217, such as "7.90 EUR", got "7.90 €"',
    ],
    [
      'price without currency',
      '7.90 EUR',
      '7.90',
      '8:37 oils[0].bottle.price: must be text such as "7.90 EUR", got 7.9',
    ],
  ])('%s', (_what, from, to, message) => {
    expect(refusal(changed(from, to))).toBe(message);
  });
});
