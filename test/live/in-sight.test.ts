import { describe, expect, it } from 'vitest';
import { type Case, caseInSight } from '../../lib/live/case/case.js';
import { later, type Piece } from '../../lib/page/blocks/later.js';
import { pageInPieces } from '../../lib/page/blocks/page.js';
import { partsFile } from '../../lib/parts/parts-file.js';

const file = partsFile(
  'parts.yaml',
  'dashpot: 1\noils: [{ name: oil, base: silicone, viscosity: 350 cSt }]\n',
);
const said = (text: string) => ({ kind: 'text', text }) as const;

function caseOf(answer: string, pieces: readonly Piece[]): Case {
  return {
    file,
    settings: {},
    page: pageInPieces({ answer, pieces, sources: [] }),
    answered: true,
    parameters: [],
    get body(): never {
      throw new RangeError('nobody asked for it');
    },
  };
}

/** The texts of a case that is shown. */
const textsOf = ({ page }: Case): readonly unknown[] => [
  page.answer,
  ...page.blocks.map((block) => (block.kind === 'text' ? block.text : block.kind)),
];

describe('a case as it can be shown at once', () => {
  const made: string[] = [];
  const piece = (...texts: readonly string[]) =>
    later(() => {
      made.push(...texts);
      return texts.map(said);
    });
  const before = caseOf('old', [said('old 1'), piece('old 2', 'old 3'), piece(), piece('old 4')]);

  it('is new where it is in the window, and as it was elsewhere', () => {
    const next = caseOf('new', [said('new 1'), piece('new 2'), piece('new 3'), piece('new 4')]);
    const asked: (readonly number[])[] = [];
    const shown = caseInSight(next, before, (from, to) => {
      asked.push([from, to]);
      return from === 1;
    });
    expect(textsOf(shown)).toEqual(['new', 'new 1', 'new 2', 'old 4']);
    // The blocks of each piece as they stand in the document: two, none, one.
    expect(asked).toEqual([
      [1, 3],
      [3, 3],
      [3, 4],
    ]);
    expect(made.filter((text) => text.startsWith('new'))).toEqual(['new 2']);
  });

  it('goes on from what is shown, which may be older than the case before', () => {
    const second = caseOf('second', [said('2nd 1'), piece('2nd 2'), piece(), piece('2nd 4')]);
    const third = caseOf('third', [said('3rd 1'), piece('3rd 2'), piece(), piece('3rd 4')]);
    const shown = caseInSight(second, before, (from) => from === 1);
    expect(textsOf(caseInSight(third, shown, () => false))).toEqual(['third', '3rd 1', '2nd 2', 'old 4']);
  });

  it('is whole where what was made is all new, or the pages are not made alike', () => {
    const whole = caseOf('whole', [said('a'), piece('b')]);
    expect(caseInSight(whole, before, () => false)).toBe(whole);
    const ready = caseOf('ready', [said('1'), piece('2'), piece('3'), piece('4')]);
    expect(ready.page.blocks).toHaveLength(4);
    expect(textsOf(caseInSight(ready, before, () => false))).toEqual(['ready', '1', '2', '3', '4']);
  });
});
