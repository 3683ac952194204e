import { describe, expect, test } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import { later, once } from '../../lib/page/blocks/later.js';
import { defineNotebook, onePart, pageInPieces } from '../../lib/page/index.js';
import { runInPieces, runNotebook } from '../../lib/page/run-notebook.js';
import { readParts } from '../../lib/parts/index.js';

const said = (text: string) => ({ kind: 'text', text }) as const;
const parts = readParts(`dashpot: 1
oils: [{ name: oil, base: silicone, viscosity: 350 cSt }]
pistons: [{ name: piston, diameter: 11.9 mm, thickness: 2.5 mm, holes: [{ count: 2, diameter: 1.5 mm }] }]
shocks: [{ name: shock, bore: 12 mm, shaft: 3 mm, stroke: 25 mm }]
builds: [{ name: front, shock: shock, piston: piston, oil: oil }]
`);

describe('what is made later', () => {
  test('is made once, when it is first asked for', () => {
    let times = 0;
    const piece = later(() => {
      times += 1;
      return said(`made ${times}`);
    });
    expect([times, piece.made]).toEqual([0, false]);
    expect([piece.blocks, piece.blocks]).toEqual([[said('made 1')], [said('made 1')]]);
    expect([times, piece.made]).toEqual([1, true]);
  });

  test('is asked for again where it could not be made', () => {
    let times = 0;
    const value = once(() => {
      times += 1;
      if (times === 1) throw new RangeError('not yet');
      return times;
    });
    expect(value).toThrow('not yet');
    expect([value(), value()]).toEqual([2, 2]);
  });

  test('stands where it was put, with none, one or several blocks', () => {
    const page = pageInPieces({
      answer: 'An answer.',
      pieces: [later(() => []), said('a'), later(() => said('b')), later(() => [said('c'), said('d')])],
      sources: ['A source.'],
    });
    expect(page.blocks).toEqual(['a', 'b', 'c', 'd'].map(said));
    expect([page.answer, page.sources]).toEqual(['An answer.', ['A source.']]);
  });
});

describe('a notebook that makes some of its page later', () => {
  let made = 0;
  const notebook = (make: () => ReturnType<typeof said>) =>
    defineNotebook({
      name: 'waits',
      order: 1,
      title: 'Waits',
      question: 'What waits?',
      parameters: { oil: onePart({ list: 'oils', label: 'Oil', help: 'An oil.' }) },
      run: (_parts, { oil }) => pageInPieces({ answer: oil.name, pieces: [later(make)], sources: [] }),
    });
  const counted = notebook(() => {
    made += 1;
    return said('made');
  });
  const refused = notebook(() => {
    throw new InputError({ field: 'piston.thickness', value: 1, unit: 'm', accepted: 'less' });
  });

  test('is asked for all of it on the command line, and only for the answer in a page', () => {
    const { page } = runInPieces(counted, parts, {});
    expect([page.answer, made]).toEqual(['oil', 0]);
    expect(page.blocks).toEqual([said('made')]);
    runNotebook(counted, parts, {});
    expect(made).toBe(2);
  });

  test('refuses in the keys of the parts file whenever it is asked', () => {
    expect(() => runNotebook(refused, parts, {})).toThrow(/^pistons must be of sizes/u);
    const { page } = runInPieces(refused, parts, {});
    expect(page.answer).toBe('oil');
    expect(() => page.blocks).toThrow(/^pistons must be of sizes/u);
  });
});
