import { describe, expect, it } from 'vitest';
import { PartsFileError, readParts } from '../../lib/parts/index.js';
import { changed, smallFile } from './small-file.js';

/** The error's own text, without the file name that begins each of its lines. */
function refusal(text: string): string {
  try {
    readParts(text, 'my.yaml');
  } catch (error) {
    if (error instanceof PartsFileError) return error.message.replaceAll('my.yaml:', '');
    throw error;
  }
  return 'accepted';
}

type Row = readonly [what: string, from: string, to: string, message: string];

const lengths = 'write a length such as "1.5 mm" (mm, µm, um, cm, m, in)';
const volumes = 'write a volume such as "1.5 ml" (ml, mL, l, L, mm³, mm3, cm³, cm3, m³)';

it('accepts the file that the rows below change', () => {
  expect(refusal(smallFile)).toBe('accepted');
});

describe('sizes', () => {
  it.each<Row>([
    [
      'negative',
      '1.7 mm',
      '-1.7 mm',
      '19:31 pistons[0].holes[0].diameter: must be greater than 0 mm, got "-1.7 mm"',
    ],
    ['zero', 'bore: 12 mm', 'bore: 0 mm', '22:11 shocks[0].bore: must be greater than 0 mm, got "0 mm"'],
    [
      'too small to be one',
      '1.7 mm',
      '1e-400 mm',
      '19:31 pistons[0].holes[0].diameter: must be greater than 0 mm, got "1e-400 mm"',
    ],
    ['absurd bore', 'bore: 12 mm', 'bore: 12 cm', '22:11 shocks[0].bore: must be 3 mm to 40 mm, got "12 cm"'],
    [
      'absurd hole',
      '1.7 mm',
      '17 mm',
      '19:31 pistons[0].holes[0].diameter: must be 0.1 mm to 10 mm, got "17 mm"',
    ],
    ['an oil that is thick but exists', '350 cSt', '350 St', 'accepted'],
    ['the upper end of a range, in another unit', '45 mm', '30 cm', 'accepted'],
    ['the lower end of a range, in another unit', '45 mm', '0.5 cm', 'accepted'],
    [
      'viscosity beyond any damper',
      '350 cSt',
      '3500 St',
      '6:16 oils[0].viscosity: must be 1 cSt to 100000 cSt, got "3500 St"',
    ],
    [
      'a file in metres',
      '2.5 mm',
      '2.5 m',
      '17:16 pistons[0].thickness: must be 0.3 mm to 20 mm, got "2.5 m"',
    ],
    [
      'gauge pressure taken for absolute',
      '1 atm',
      '0 bar',
      '26:38 shocks[0].gas.pressure: must be greater than 0 bar, got "0 bar"',
    ],
    [
      'spring like that of a real car',
      '0.4 N/mm',
      '40 N/mm',
      '28:25 springs[0].rate: must be 0.01 N/mm to 20 N/mm, got "40 N/mm"',
    ],
  ])('%s', (_what, from, to, message) => {
    expect(refusal(changed(from, to))).toBe(message);
  });
});

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
      [
        '19:31 pistons[0].holes[0].diameter: needs a unit, for example "1.7 mm", got 1',
        '19:33 pistons[0].holes[0]["7 mm"]: unknown key; if it is the rest of a number with a comma, write a point',
      ].join('\n'),
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
      'pressure: 1 atm',
      'pressure: 1 atm, exponent: 0.9',
      '26:55 shocks[0].gas.exponent: must be a number from 1 to 1.4, got 0.9',
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

describe('keys, names and references', () => {
  it.each<Row>([
    [
      'mistyped key',
      'thickness:',
      'thicknes:',
      '15:5 pistons[0].thickness: is missing; write text with a unit such as "2.5 mm"\n17:5 pistons[0].thicknes: unknown key; did you mean "thickness"?',
    ],
    [
      'unknown key',
      'shaft: 3 mm',
      'shaft: 3 mm\n    colour: red',
      '24:5 shocks[0].colour: unknown key; accepted are "name", "bore", "shaft", "stroke", "oil-volume", "gas", "seal", "inside", "compensator", "lengths"',
    ],
    [
      'unknown key at the top',
      'springs:',
      'sprigns:',
      '27:1 sprigns: unknown key; did you mean "springs"?\n34:13 builds[0].spring: no spring is named "soft": there are none under "springs"',
    ],
    ['key given twice', 'bore: 12 mm', 'bore: 12 mm\n    bore: 16 mm', '23:5 shocks[0].bore: is given twice'],
    ['key that is a number', 'about: a', '12: a', '2:1 every key must be text, got 12'],
    ['key with a meaning in JavaScript', 'about: a', '__proto__: a', '2:1 __proto__: unknown key'],
    [
      'key of many letters',
      'about: a',
      `${'k'.repeat(90)}: a`,
      `2:1 ["${'k'.repeat(90)}"]: unknown key; accepted are "dashpot", "about", "oils", "pistons", "shocks", "springs", "builds", "shop", "day", "timed", "tolerances"`,
    ],
    [
      'missing key',
      '    stroke: 24 mm\n',
      '',
      '21:5 shocks[0].stroke: is missing; write text with a unit such as "28 mm"',
    ],
    [
      'empty value',
      'stroke: 24 mm',
      'stroke:',
      '24:5 shocks[0].stroke: is empty; write text with a unit such as "28 mm"',
    ],
    [
      'wrong kind of value',
      'stroke: 24 mm',
      'stroke: [24 mm]',
      '24:13 shocks[0].stroke: must be text with a unit such as "28 mm", got a list',
    ],
    [
      'unknown base',
      'base: silicone',
      'base: silicon',
      '5:11 oils[0].base: must be silicone or petroleum, got "silicon"',
    ],
    [
      'unknown oil',
      'oil: clear 350',
      'oil: clear 530',
      '33:10 builds[0].oil: no oil is named "clear 530"; did you mean "clear 350"?',
    ],
    [
      'unknown piston',
      'piston: two 1.7',
      'piston: something else',
      '32:13 builds[0].piston: no piston is named "something else"; there are "two 1.7"',
    ],
    [
      'unknown spring',
      'spring: soft',
      'spring: Soft',
      '34:13 builds[0].spring: no spring is named "Soft"; did you mean "soft"?',
    ],
    [
      'name used twice',
      'name: mineral',
      'name: clear 350',
      '9:11 oils[1].name: must be a name of its own, got "clear 350", the name of oils[0]',
    ],
    [
      'same letters, written in two ways',
      'name: mineral',
      'name: "cle\\u0301"\n    base: silicone\n    trade-weight: 35\n  - name: clé',
      '12:11 oils[2].name: must be a name of its own, got "clé", the name of oils[1]',
    ],
    [
      'name that is a number',
      'name: mineral',
      'name: 350',
      '9:11 oils[1].name: must be a name as text, in quotes if it is a number, got 350',
    ],
    [
      'name that is true',
      'name: mineral',
      'name: true',
      '9:11 oils[1].name: must be a name as text, in quotes if it is a number, got true',
    ],
    [
      'empty name',
      'name: mineral',
      'name: ""',
      '9:11 oils[1].name: must be a name of at least one letter, got ""',
    ],
    [
      'no name',
      'name: mineral',
      'name:',
      '9:5 oils[1].name: is empty; write a name as text, in quotes if it is a number',
    ],
    [
      'name of 81 letters',
      'name: mineral',
      `name: ${'n'.repeat(81)}`,
      `9:11 oils[1].name: must be a name of at most 80 letters, got "${'n'.repeat(81)}"`,
    ],
    [
      'name with a space at its end',
      'name: mineral',
      'name: "mineral "',
      '9:11 oils[1].name: must be a name without spaces around it, got "mineral "',
    ],
    [
      'name with a line break',
      'name: mineral',
      'name: "a\\nb"',
      '9:11 oils[1].name: must be a name on one line, without control characters, got "a{U+000A}b"',
    ],
    [
      'name that clears the terminal',
      'name: mineral',
      'name: "\\e[2Jx"',
      '9:11 oils[1].name: must be a name on one line, without control characters, got "{U+001B}[2Jx"',
    ],
    [
      'name that turns the reading direction',
      'name: mineral',
      'name: "a\\u202Eb"',
      '9:11 oils[1].name: must be a name on one line, without control characters, got "a{U+202E}b"',
    ],
    [
      'another version',
      'dashpot: 1',
      'dashpot: 2',
      '1:10 dashpot: must be 1, the version of the format that this program reads, got 2',
    ],
    [
      'no version',
      'dashpot: 1\n',
      '',
      '1:1 dashpot: is missing; the file must begin with "dashpot: 1", the version of the format',
    ],
    ['about that is no text', 'a file for tests', '[]', '2:8 about: must be text, got a list'],
    [
      'about of a book',
      'a file for tests',
      'x'.repeat(2001),
      '2:8 about: must be text of at most 2000 letters, got 2001',
    ],
    [
      'a part that is text',
      '  - { name: soft, rate: 0.4 N/mm, free-length: 45 mm }',
      '  - soft',
      '28:5 springs[0]: must be keys and values (name, rate, free-length), got "soft"\n34:13 builds[0].spring: no spring is named "soft": there are none under "springs"',
    ],
  ])('%s', (_what, from, to, message) => {
    expect(refusal(changed(from, to))).toBe(message);
  });
});

describe('ways to know a viscosity', () => {
  const silicone = '    viscosity: 350 cSt\n    at: 25 °C\n';
  const petroleum = '    viscosity: 32 cSt\n    at: 40 °C\n    viscosity-index: 95\n';
  it.each<Row>([
    [
      'none',
      silicone,
      '',
      '4:5 oils[0]: needs one way to know its viscosity: "viscosity" with "at", "points", "iso-grade" or "trade-weight"',
    ],
    [
      'two',
      silicone,
      `${silicone}    trade-weight: 35\n`,
      '4:5 oils[0]: has more than one way to know its viscosity, viscosity and trade-weight; keep one',
    ],
    [
      'no temperature',
      '    at: 25 °C\n',
      '',
      '4:5 oils[0].at: is missing; write the temperature of the viscosity, for example "25 °C"',
    ],
    [
      'no viscosity',
      '    viscosity: 350 cSt\n',
      '',
      '4:5 oils[0].viscosity: is missing; write the viscosity, for example "350 cSt"',
    ],
    [
      'petroleum by one viscosity',
      '    viscosity-index: 95\n',
      '',
      '9:5 oils[1]: a petroleum oil with one viscosity needs more: add its "viscosity-index" (on the data sheet), or write "points" with a second temperature',
    ],
    [
      'index and coefficient',
      silicone,
      `${silicone}    viscosity-index: 400\n    viscosity-temperature-coefficient: 0.6\n`,
      '8:22 oils[0].viscosity-index: says the same as "viscosity-temperature-coefficient" in another way; keep one',
    ],
    [
      'coefficient of petroleum',
      'viscosity-index: 95',
      'viscosity-temperature-coefficient: 0.6',
      '13:40 oils[1].viscosity-temperature-coefficient: is for silicone; write "viscosity-index" for petroleum',
    ],
    [
      'index of an oil too thin for one',
      '32 cSt',
      '3 cSt',
      '13:22 oils[1].viscosity-index: is not defined for an oil of this viscosity (it must have 2 to 2000 cSt at 100 °C); write "points" instead',
    ],
    [
      'index beside points',
      silicone,
      '    points: [{ at: 10 °C, viscosity: 500 cSt }, { at: 40 °C, viscosity: 280 cSt }]\n    viscosity-index: 95\n',
      '7:22 oils[0].viscosity-index: does not go with "points"; leave it out',
    ],
    [
      'one point',
      silicone,
      '    points: [{ at: 10 °C, viscosity: 500 cSt }]\n',
      '6:13 oils[0].points: must have 2 to 50 entries, got 1',
    ],
    [
      'points at one temperature',
      silicone,
      '    points: [{ at: 10 °C, viscosity: 500 cSt }, { at: 10 °C, viscosity: 480 cSt }]\n',
      '6:13 oils[0].points: must be at different temperatures, with a viscosity that falls as it gets warmer',
    ],
    [
      'points that thicken with heat',
      silicone,
      '    points: [{ at: 10 °C, viscosity: 280 cSt }, { at: 40 °C, viscosity: 500 cSt }]\n',
      '6:13 oils[0].points: must be at different temperatures, with a viscosity that falls as it gets warmer',
    ],
    [
      'ISO grade without an index',
      petroleum,
      '    iso-grade: 2\n',
      '11:16 oils[1].iso-grade: is too thin for a viscosity index; write "points" instead',
    ],
    [
      'no such ISO grade',
      petroleum,
      '    iso-grade: 33\n',
      '11:16 oils[1].iso-grade: must be one of 2, 3, 5, 7, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200, got 33',
    ],
    [
      'ISO grade of silicone',
      silicone,
      '    iso-grade: 32\n',
      '6:16 oils[0].iso-grade: is for petroleum; write "viscosity" and "at" for silicone',
    ],
    [
      'trade weight of petroleum',
      petroleum,
      '    trade-weight: 35\n',
      '11:19 oils[1].trade-weight: is a label of silicone damper oil; write "iso-grade" for petroleum',
    ],
    [
      'trade weight beyond the table',
      silicone,
      '    trade-weight: 100\n',
      '6:19 oils[0].trade-weight: must be a number from 10 to 80, got 100',
    ],
  ])('%s', (_what, from, to, message) => {
    expect(refusal(changed(from, to))).toBe(message);
  });
});

describe('what does not fit', () => {
  const room = 'find room between a shaft of';
  it.each<Row>([
    // Outer ring 2π / 2 asin(1.8/10.05) = 17.4, inner ring 2π / 2 asin(1.8/6.45) = 11.1.
    [
      'too many holes',
      'count: 2',
      'count: 50',
      `19:7 pistons[0].holes: do not fit on the piston: 28 of 50 ${room} 1 mm and the rim at 11.95 mm, with walls of 0.1 mm; the first that does not has 1.7 mm`,
    ],
    [
      'a hole wider than the face',
      '1.7 mm',
      '5.5 mm',
      `19:7 pistons[0].holes: do not fit on the piston: 0 of 2 ${room} 1 mm and the rim at 11.95 mm, with walls of 0.1 mm; the first that does not has 5.5 mm`,
    ],
    [
      'holes that meet the shaft of the build',
      '1.7 mm',
      '4.5 mm',
      `32:13 builds[0].piston: the holes of "two 1.7" do not fit on the piston: 0 of 2 ${room} 3 mm and the rim at 11.95 mm, with walls of 0.1 mm; the first that does not has 4.5 mm`,
    ],
    [
      'piston as wide as the bore',
      '11.95 mm',
      '12 mm',
      '32:13 builds[0].piston: the piston "two 1.7" of 12 mm must be smaller than the bore of 12 mm of "short 12"',
    ],
    [
      'piston of another shock',
      'bore: 12 mm',
      'bore: 16 mm',
      '32:13 builds[0].piston: the piston "two 1.7" of 11.95 mm must be at least 14.4 mm for the bore of 16 mm of "short 12"',
    ],
    [
      'shaft thicker than the bore',
      'shaft: 3 mm\n    stroke: 24 mm',
      'shaft: 13 mm\n    stroke: 6 mm',
      '23:12 shocks[0].shaft: must be thinner than the bore of 12 mm, got 13 mm',
    ],
    [
      'shaft as thick as the bore',
      'shaft: 3 mm\n    stroke: 24 mm',
      'shaft: 12 mm\n    stroke: 6 mm',
      '23:12 shocks[0].shaft: must be thinner than the bore of 12 mm, got 12 mm',
    ],
    [
      'shaft thicker than the piston',
      'shaft: 3 mm\n    stroke: 24 mm',
      'shaft: 11.97 mm\n    stroke: 6 mm',
      '32:13 builds[0].piston: the piston "two 1.7" of 11.95 mm must be larger than the shaft of 11.97 mm of "short 12"',
    ],
    // π/4 · 3² · 24 = 169.6 mm³; 120 mm³ are used up after 120 / 7.069 = 16.98 mm.
    [
      'hydraulic lock',
      '0.9 ml',
      '120 mm³',
      '26:20 shocks[0].gas.volume: must be more than 169.6 mm³, which the 3 mm shaft pushes aside over the stroke of 24 mm, got 120 mm³: the shock locks with the shaft 16.98 mm in',
    ],
    [
      'breakaway below moving friction',
      'pressure: 1 atm }',
      'pressure: 1 atm }\n    seal: { moving-friction: 2 N, breakaway-friction: 1 N }',
      '27:55 shocks[0].seal.breakaway-friction: must be at least the moving friction of 2 N, got 1 N',
    ],
  ])('%s', (_what, from, to, message) => {
    expect(refusal(changed(from, to))).toBe(message);
  });
});

describe('YAML that is broken, or more than a parts file needs', () => {
  it.each<Row>([
    ['tab', '    bore: 12 mm', '\tbore: 12 mm', '22:1 a tab is used to indent this line; use spaces'],
    [
      'no space after a colon',
      'base: silicone',
      'base:silicone',
      '5:5 a key needs a colon and a space after it, on the same line, as in "name: clear 350"',
    ],
    [
      'colon in a text',
      'a file for tests',
      'a file: for tests',
      '2:8 a colon and a space begin a value; put a text that holds them in quotes, and begin keys at the column of their neighbours',
    ],
    [
      'sign that YAML keeps for itself',
      'a file for tests',
      '@home',
      '2:8 a text that starts with this sign must be in quotes',
    ],
    ['quote never closed', 'soft\n', '"soft\n', '35:1 a quote is opened and never closed'],
    [
      'bracket never closed',
      'mm }\nshocks',
      'mm\nshocks',
      '20:1 a bracket is opened and not closed, or what is in it is not indented',
    ],
    [
      'uneven indentation',
      '  - name: two 1.7\n    diameter',
      '  - name: two 1.7\n   diameter',
      '16:1 this line is neither an entry of the list above nor indented as part of one',
    ],
    [
      'two documents',
      'shocks:',
      '---\nshocks:',
      '20:1 a second document begins here; a parts file is one, without "---" in it',
    ],
    [
      'alias',
      'about: a file for tests',
      'about: &x a\nspare: *x',
      '2:8 anchors (&) are not accepted; write the value out where it is needed\n3:8 aliases (*) are not accepted; write the value out',
    ],
    [
      'tag',
      'about: a',
      'about: !!str a',
      '2:8 tags (!) are not accepted; put a text that starts with "!" in quotes',
    ],
    [
      'YAML 1.1',
      'dashpot: 1',
      '%YAML 1.1\n---\ndashpot: 1',
      '1:1 directives (%) are not accepted; leave the line out',
    ],
    [
      'merge key',
      'about: a file for tests',
      '<<: { about: x }',
      '2:1 ["<<"]: unknown key; accepted are "dashpot", "about", "oils", "pistons", "shocks", "springs", "builds", "shop", "day", "timed", "tolerances"',
    ],
    [
      'endless nesting',
      'a file for tests',
      '['.repeat(100_000),
      '2:31 lists and groups are nested too deeply for a parts file',
    ],
    [
      'list for a group',
      smallFile,
      '- dashpot: 1\n',
      '1:1 must be keys and values (dashpot, about, oils, …), got a list',
    ],
    [
      'text for a group',
      smallFile,
      'hello',
      '1:1 must be keys and values (dashpot, about, oils, …), got "hello"',
    ],
    [
      'group for a list',
      smallFile,
      'dashpot: 1\noils: { name: x }\n',
      '2:7 oils: must be a list, each entry on a line that starts with "- ", got a group of keys',
    ],
    ['nothing', smallFile, '', '1:1 the file is empty; it must begin with "dashpot: 1"'],
    ['only a comment', smallFile, '# dashpot: 1\n', '1:1 the file is empty; it must begin with "dashpot: 1"'],
    [
      '1001 oils',
      smallFile,
      `dashpot: 1\noils:\n${'  - {}\n'.repeat(1001)}`,
      '3:3 oils: must have at most 1000 entries, got 1001',
    ],
    [
      '100 000 oils',
      smallFile,
      `dashpot: 1\noils:\n${'  - {}\n'.repeat(100_000)}`,
      '3:3 this list or group is far too long; a list may have 1000 entries',
    ],
    [
      '100 000 commas',
      smallFile,
      `dashpot: 1\noils: [${','.repeat(100_000)}`,
      '2:7 not readable as YAML: thousands of signs or comments without a value',
    ],
    [
      'over 1 MB',
      smallFile,
      `# ${'x'.repeat(1_000_000)}`,
      '1:1 the file must have at most 1 MB, got 1.00 MB',
    ],
    [
      'over 1 MB of two-byte letters',
      smallFile,
      `# ${'é'.repeat(600_000)}`,
      '1:1 the file must have at most 1 MB, got 1.20 MB',
    ],
  ])('%s', (_what, from, to, message) => {
    expect(refusal(changed(from, to))).toBe(message);
  });

  it('aliases that explode are refused before anything is expanded', () => {
    const levels = Array.from(
      { length: 9 },
      (_, level) => `a${level + 1}: &a${level + 1} [${`*a${level},`.repeat(9)}]`,
    );
    const message = refusal(['a0: &a0 x', ...levels].join('\n'));
    expect(message.split('\n')).toHaveLength(20);
    expect(message).toMatch(/^1:5 anchors/u);
  });
});

describe('the error', () => {
  it('reports all that is wrong, in the order of the file', () => {
    const text = changed('11.95 mm', '1195 mm')
      .replace('at: 25 °C', 'at: warm')
      .replace('oil: clear', 'oil: cleer');
    try {
      readParts(text, 'my-parts.yaml');
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(PartsFileError);
      if (!(error instanceof PartsFileError)) return;
      expect(error.fileName).toBe('my-parts.yaml');
      expect(error.problemCount).toBe(3);
      expect(error.problems.map(({ line, column, path }) => ({ line, column, path }))).toEqual([
        { line: 7, column: 9, path: 'oils[0].at' },
        { line: 16, column: 15, path: 'pistons[0].diameter' },
        { line: 33, column: 10, path: 'builds[0].oil' },
      ]);
      expect(error.message.split('\n')[1]).toBe(
        'my-parts.yaml:16:15 pistons[0].diameter: must be 3 mm to 40 mm, got "1195 mm"',
      );
    }
  });

  it('writes out 20 problems and counts the rest', () => {
    const lines = refusal(`dashpot: 1\nsprings:\n${'  - {}\n'.repeat(10)}`).split('\n');
    expect(lines).toHaveLength(21);
    expect(lines[20]).toBe('and 10 more');
  });

  it('finds its place in a file with Windows line ends and a byte order mark', () => {
    const text = `\uFEFF${changed('1.7 mm }', '-1 mm }').replaceAll('\n', '\r\n')}`;
    expect(refusal(text)).toBe('19:31 pistons[0].holes[0].diameter: must be greater than 0 mm, got "-1 mm"');
  });

  it('finds its place in JSON', () => {
    expect(refusal('{"dashpot": 1,\n "springs": [{"name": "s", "rate": 4, "free-length": "45 mm"}]}')).toBe(
      '2:36 springs[0].rate: needs a unit, for example "0.45 N/mm", got 4',
    );
  });
});
