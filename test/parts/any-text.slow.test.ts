import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { PartsFileError, readParts } from '../../lib/parts/index.js';
import { anySign } from '../any-sign.js';
import { anyFile } from './any-file.js';
import { smallFile } from './small-file.js';

/** A number and a unit, by means other than the library's. */
function metres(text: string): number {
  const [number, unit] = text.split(' ');
  const perMetre: Readonly<Record<string, number>> = { mm: 1000, cm: 100, µm: 1e6, in: 1 / 0.0254, m: 1 };
  return Number(number) / (perMetre[unit ?? ''] ?? Number.NaN);
}

describe('any good file', () => {
  it('reads back, as YAML and as JSON, in SI and in order', () => {
    fc.assert(
      fc.property(anyFile, (file) => {
        // Without this, yaml writes a value that occurs twice as an alias.
        const parts = readParts(stringify(file, { aliasDuplicateObjects: false }));
        expect(readParts(JSON.stringify(file))).toEqual(parts);
        expect(parts.about).toBe(file.about);
        expect(parts.oils.map(({ name }) => name)).toEqual(file.oils.map(({ name }) => name));
        parts.pistons.forEach(({ name, piston }, index) => {
          const written = file.pistons[index];
          expect(name).toBe(written?.name);
          // Two roundings of a double.
          expect(piston.thickness / metres(written?.thickness ?? '')).toBeCloseTo(1, 14);
          expect(piston.holes.map(({ count }) => count)).toEqual(written?.holes.map(({ count }) => count));
        });
        parts.builds.forEach((build, index) => {
          const written = file.builds[index];
          expect(build.oil.name).toBe(written?.oil);
          expect(build.piston.name).toBe(written?.piston);
          expect(build.shock.name).toBe(written?.shock);
          expect(build.spring?.name).toBe(written?.spring);
          expect(build.quantity).toBe(written?.quantity ?? 1);
        });
      }),
    );
  });
});

/** What readParts makes of a text; anything but parts or a PartsFileError fails the test. */
function expectPartsOrRefusal(text: string): void {
  try {
    expect(readParts(text, 'f').builds).toBeInstanceOf(Array);
  } catch (error) {
    if (!(error instanceof PartsFileError)) throw error;
    expect(error.problems.length).toBeGreaterThan(0);
    const lines = text.split(/\r\n|\n|\r/u).length + 1;
    for (const { line, column, message } of error.problems) {
      expect(line).toBeGreaterThanOrEqual(1);
      expect(line).toBeLessThanOrEqual(lines);
      expect(column).toBeGreaterThanOrEqual(1);
      // One line each, with nothing that a terminal would act on.
      expect(message).toMatch(/^[^\p{Cc}\u2028\u2029\u202A-\u202E\u2066-\u2069]+$/u);
    }
  }
}

describe('any other text gives parts or a PartsFileError, and nothing else', () => {
  it('random text', () => {
    fc.assert(fc.property(fc.string({ unit: anySign, maxLength: 200 }), expectPartsOrRefusal));
  });

  it('signs that mean something in YAML', () => {
    const signs = fc.constantFrom(
      ...'{}[],:-?&*!|>\'"%@`# \n\t',
      ': ',
      '- ',
      '\n  ',
      '---\n',
      '<<: ',
      '!!',
      '.inf',
      'null',
      '1e400',
      'oils',
      '__proto__',
      'dashpot: 1\n',
    );
    const text = fc.array(signs, { maxLength: 60 }).map((parts) => parts.join(''));
    fc.assert(fc.property(text, expectPartsOrRefusal), { numRuns: 200 });
  });

  it('random bytes', () => {
    const bytes = fc.uint8Array({ maxLength: 300 }).map((data) => new TextDecoder().decode(data));
    fc.assert(fc.property(bytes, expectPartsOrRefusal));
  });

  it('a good file with pieces cut out, doubled or put elsewhere', () => {
    const place = fc.nat(smallFile.length);
    const edit = fc.record({
      from: place,
      length: fc.nat(40),
      to: place,
      piece: fc.string({ maxLength: 5 }),
    });
    const mutated = fc.array(edit, { minLength: 1, maxLength: 4 }).map((edits) =>
      edits.reduce((text, { from, length, to, piece }) => {
        const cut = text.slice(from, from + length);
        const rest = text.slice(0, from) + text.slice(from + length);
        return rest.slice(0, to) + piece + cut + rest.slice(to);
      }, smallFile),
    );
    fc.assert(fc.property(mutated, expectPartsOrRefusal), { numRuns: 200 });
  });

  it('a good file with one value of any kind in any place', () => {
    const values = [
      '',
      '~',
      '[]',
      '{}',
      '-1',
      '0',
      '1e9',
      'true',
      '"x"',
      '[[1]]',
      '{ a: 1 }',
      '.nan',
      '"\\0"',
      '2 fl oz',
    ];
    const spots = [...smallFile.matchAll(/: (?=\S)/gu)].map(({ index }) => index + 2);
    for (const spot of spots) {
      for (const value of values) {
        expectPartsOrRefusal(
          smallFile.slice(0, spot) + value + smallFile.slice(spot).replace(/^[^\n,}]*/u, ''),
        );
      }
    }
  });
});
