import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDocument } from 'yaml';
import { partFields, withField } from '../../lib/live/parts/parts-text.js';
import { anySign } from '../any-sign.js';
import { demoParts } from './notebook-folders.js';

// Reading the demo file a hundred times takes seconds on a busy machine.
const text = `# mine
dashpot: 1
oils:
  - name: "thin, clear" # the first
    viscosity: 350 cSt
    at: 25 °C
pistons:
  - { name: two, diameter: 11.9 mm, holes: [{ count: 2, diameter: 1.7 mm }] } # drilled out
`;

describe('the values of a part', () => {
  it('are listed as they are written, in their order', () => {
    expect(partFields(text, { list: 'oils', index: 0 }).map((field) => field.text)).toEqual([
      'thin, clear',
      '350 cSt',
      '25 °C',
    ]);
    expect(partFields(text, { list: 'pistons', index: 0 }).map(({ path }) => path.join('.'))).toEqual([
      'pistons.0.name',
      'pistons.0.diameter',
      'pistons.0.holes.0.count',
      'pistons.0.holes.0.diameter',
    ]);
    expect(partFields(text, { list: 'pistons', index: 1 })).toEqual([]);
  });

  it('are written without a change to anything else', () => {
    const hole = ['pistons', 0, 'holes', 0, 'diameter'];
    expect(withField(text, hole, ' 1.8 mm ')).toBe(text.replace('1.7 mm', '1.8 mm'));
    expect(withField(text, ['oils', 0, 'name'], 'thick')).toBe(text.replace('"thin, clear"', '"thick"'));
  });

  it('can hold any text at all: it is read back as the same text, and no other value changes', () => {
    const path = ['pistons', 0, 'name'];
    const others = (file: string): unknown => {
      const document = parseDocument(file);
      document.deleteIn(path);
      return document.toJS();
    };
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: anySign }),
          fc.constantFrom('a: b', 'a #b', '{', '!x', '&a', '*a', "'", 'null', '- a', ''),
        ),
        (value) => {
          const file = withField(text, path, value);
          const read = parseDocument(file).getIn(path);
          expect(String(read)).toBe(value.trim());
          expect(others(file)).toEqual(others(text));
        },
      ),
    );
  });

  it('of the demo file can each be written back as they are', () => {
    const demo = readFileSync(demoParts, 'utf8');
    for (const list of ['oils', 'pistons'] as const)
      for (const { path, text: value } of [
        ...partFields(demo, { list, index: 0 }),
        ...partFields(demo, { list, index: 3 }),
      ])
        expect(parseDocument(withField(demo, path, value)).toJS()).toEqual(parseDocument(demo).toJS());
  });
});
