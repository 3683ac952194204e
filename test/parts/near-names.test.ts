import fc from 'fast-check';
import { expect, it } from 'vitest';
import { nearNames } from '../../lib/parts/index.js';

const keys = ['name', 'diameter', 'thickness', 'holes', 'off-centre'];

it.each([
  ['diametre', ['diameter']],
  ['Diameter', ['diameter']],
  ['off_centre', ['off-centre']],
  ['hole', ['holes']],
  ['colour', []],
  ['', []],
])('%s', (name, expected) => {
  expect(nearNames(name, keys)).toEqual(expected);
});

it('counts kitten and sitting as three apart', () => {
  // The usual textbook example of Levenshtein's distance (Dokl. Akad. Nauk SSSR 163 (1965) 845).
  expect(nearNames('kitten', ['sitting'])).toEqual(['sitting']);
  expect(nearNames('kitt', ['sitting'])).toEqual([]);
});

it('offers the nearest first, three at most', () => {
  expect(nearNames('clear 350', ['clear 650', 'clear 35', 'Clear 350', 'clear 200', 'clear 250'])).toEqual([
    'Clear 350',
    'clear 250',
    'clear 35',
  ]);
});

it('always offers the name itself, and nothing that is not known', () => {
  fc.assert(
    fc.property(
      fc.array(fc.string({ maxLength: 20 })),
      fc.string({ minLength: 1, maxLength: 80 }),
      (known, name) => {
        expect(nearNames(name, [name])).toEqual([name]);
        expect(known).toEqual(expect.arrayContaining([...nearNames(name, known)]));
      },
    ),
  );
});

it('does not compare a text that is no name', () => {
  expect(nearNames('n'.repeat(81), ['n'.repeat(81)])).toEqual([]);
});
