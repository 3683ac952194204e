import { describe, expect, test } from 'vitest';
import { everyExport, withoutCalls } from './every-export.js';
import { longCases } from './long-cases.js';
import { findingsOf } from './try-export.js';

test('every exported function of every entry has good calls', () => {
  expect(everyExport.length).toBeGreaterThan(250);
  expect(everyExport.filter(({ calls }) => calls.length === 0).map(({ name }) => name)).toEqual(withoutCalls);
});

describe('one bad place in good arguments gets an InputError that names it, or a finite right answer', () => {
  const short = everyExport.filter(({ name }) => !longCases.includes(name));
  test.each(short)('$entry $name', async (one) => {
    const faults = (await findingsOf(one)).filter(({ fault }) => fault !== undefined);
    expect(faults.map(({ words }) => words)).toEqual([]);
  });
});
