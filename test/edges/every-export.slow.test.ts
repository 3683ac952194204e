import { describe, expect, test } from 'vitest';
import { everyExport } from './every-export.js';
import { longCases } from './long-cases.js';
import { findingsOf } from './try-export.js';

describe('one bad place in good arguments of what takes long', () => {
  const long = everyExport.filter(({ name }) => longCases.includes(name));
  test('is tried', () => expect(long.length).toBeGreaterThanOrEqual(longCases.length));
  test.each(long)('$entry $name', async (one) => {
    const faults = (await findingsOf(one)).filter(({ fault }) => fault !== undefined);
    expect(faults.map(({ words }) => words)).toEqual([]);
  });
});
