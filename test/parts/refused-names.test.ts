import { describe, expect, it } from 'vitest';
import { type Row, refusal } from './refusal.js';
import { changed } from './small-file.js';

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
      '24:5 shocks[0].colour: unknown key; accepted are "name", "bore", "shaft", "stroke", "oil-volume", "seal", "inside", "compensator", "closing", "lengths"',
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
      `2:1 ["${'k'.repeat(90)}"]: unknown key; accepted are "dashpot", "about", "oils", "pistons", "shocks", "springs", "builds", "shop", "day", "timed", "measurements", "tolerances", "recorded-stroke", "recorded-ground"`,
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
      'name with a letter mark, which turns what follows',
      'name: mineral',
      'name: "a\\u061Cb"',
      '9:11 oils[1].name: must be a name on one line, without control characters, got "a{U+061C}b"',
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
