import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDocument } from 'yaml';
import { withCopy, withoutPart } from '../../lib/live/parts/part-entries.js';
import type { PartPlace } from '../../lib/live/parts/part-place.js';
import { anySign } from '../any-sign.js';
import { demoParts } from './notebook-folders.js';

// Reading the demo file a hundred times takes seconds on a busy machine.
const demo = readFileSync(demoParts, 'utf8');
const oil = (index: number): PartPlace => ({ list: 'oils', index });

/** Files of three oils, written in every manner that a reader may write them in. */
const manners = {
  'dashes, comments, blank lines': `# mine
oils: # bottles
  # the thin one
  - name: a # clear

    viscosity: 1 cSt
  # the middle one

  -   # dyed
    name: b
    points: [{ at: 1 °C }] # measured

  - { name: c, viscosity: 3 cSt } # thick
# and now
pistons: []
`,
  'dashes at the margin, the end of the file': 'pistons: []\noils:\n- name: a\n-\n  name: b\n- name: c',
  'windows line ends': 'oils:\r\n  - name: a\r\n  - name: b\r\n  - name: c\r\npistons: []\r\n',
  brackets:
    'oils: [{ name: a }, # the first\n  # the second\n  { name: b },{ name: c }, ] # all\npistons: []\n',
  JSON: JSON.stringify({ oils: [{ name: 'a' }, { name: 'b' }, { name: 'c' }], pistons: [] }, undefined, 2),
  'JSON in one line': JSON.stringify({ pistons: [], oils: [{ name: 'a' }, { name: 'b' }, { name: 'c' }] }),
};

interface File {
  readonly oils: readonly { readonly name: string }[];
}

const read = (text: string): File => {
  const document = parseDocument(text);
  expect(document.errors).toEqual([]);
  return document.toJS();
};
const comments = (text: string): readonly string[] => text.match(/# .*/gu) ?? [];

describe.each(Object.entries(manners))('a parts file written with %s', (_manner, text) => {
  const before = read(text);

  it.each([0, 1, 2])('takes a copy of part %i right after it, and changes nothing else', (index) => {
    const after = withCopy(text, oil(index), 'new');
    const copy = { ...before.oils[index], name: 'new' };
    expect(read(after)).toEqual({ ...before, oils: before.oils.toSpliced(index + 1, 0, copy) });
    expect(comments(after)).toEqual(expect.arrayContaining([...comments(text)]));
    // Without the copy it is as it was; a last line without an end got one.
    expect(withoutPart(after, oil(index + 1)).trimEnd()).toBe(text.trimEnd());
  });

  it.each([0, 1, 2])('loses part %i, and changes nothing else', (index) => {
    const after = withoutPart(text, oil(index));
    expect(read(after)).toEqual({ ...before, oils: before.oils.toSpliced(index, 1) });
    const inside = ['clear', 'dyed', 'measured', 'thick'];
    const kept = comments(text).filter((comment) => !inside.some((word) => comment.includes(word)));
    expect(comments(after)).toEqual(expect.arrayContaining(kept));
  });
});

describe('the demo file', () => {
  it('keeps every other line as it is', () => {
    const lines = withCopy(demo, { list: 'pistons', index: 3 }, 'mine').split('\n');
    const at = demo.split('\n').indexOf('  - name: two 1.5 two 1.2');
    expect(lines.slice(at + 7, at + 9)).toEqual(['  - name: mine', '    diameter: 11.92 mm']);
    expect(lines.toSpliced(at + 7, 7).join('\n')).toBe(demo);
  });

  it('takes any text as a name: it is read back as the same text', () => {
    const names = fc.oneof(
      fc.string({ unit: anySign }),
      fc.constantFrom('a: b', '- a', '{', '*a', '', '<b>'),
    );
    fc.assert(
      fc.property(names, fc.nat(5), (name, index) => {
        const read = parseDocument(withCopy(demo, oil(index), name));
        expect(String(read.getIn(['oils', index + 1, 'name']))).toBe(name.trim());
        expect(read.errors).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });
});
