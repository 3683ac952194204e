import { describe, expect, test } from 'vitest';
import { InputError } from '../../lib/index.js';
import { everyExport, withoutCalls } from './every-export.js';
import { longCases } from './long-cases.js';
import { findingsOf } from './try-export.js';
import { wordsAccept } from './verdict.js';

test('every exported function of every entry has good calls', () => {
  expect(everyExport.length).toBeGreaterThan(250);
  expect(
    everyExport
      .filter(({ calls }) => calls.length === 0)
      .map(({ name }) => name)
      .sort(),
  ).toEqual([...withoutCalls].sort());
});

describe('one bad place in good arguments gets an InputError that names it, or a finite right answer', () => {
  const short = everyExport.filter(({ name }) => !longCases.includes(name));
  test.each(short)('$entry $name', async (one) => {
    const faults = (await findingsOf(one)).filter(({ fault }) => fault !== undefined);
    expect(faults.map(({ words }) => words)).toEqual([]);
  });
});

test('a refusal that would take what it refused is seen, whichever way it says its bound', () => {
  const takes = (value: number, accepted: string) =>
    wordsAccept(new InputError({ field: 'size', value, accepted }));
  for (const accepted of [
    'greater than 2',
    'above the shaft of 2',
    '2 or more',
    '2 to 3',
    'at most 3',
    'below 3',
  ])
    expect(takes(2.5, accepted)).toBe(true);
  for (const accepted of [
    'greater than 3',
    '3 or more',
    '0 to 1',
    'at most 2',
    '0 or more and below the 2 of it',
  ])
    expect(takes(2.5, accepted)).toBe(false);
});
