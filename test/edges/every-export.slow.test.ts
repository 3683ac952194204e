import { describe, expect, test } from 'vitest';
import { everyExport } from './every-export.js';
import { longCases } from './long-cases.js';
import { findingsOf } from './try-export.js';

/**
 * What stops with the solver's named error for a size that no part has: a motion says time and state, as it should;
 * a disc of absurd size should be refused by its field and is not yet.
 */
const stopsBySolver: Readonly<Record<string, string>> = {
  moveCorner: 'other error, IntegrationError: the integration stopped at ',
  discAtFlow: 'other error, ConvergenceError: lift of a disc valve: ',
};

describe('one bad place in good arguments of what takes long', () => {
  const long = everyExport.filter(({ name }) => longCases.includes(name));
  test('is tried', () => expect(long.length).toBeGreaterThanOrEqual(longCases.length));
  test.each(long)('$entry $name', async (one) => {
    const faults = (await findingsOf(one)).filter(({ fault }) => fault !== undefined);
    const stop = stopsBySolver[one.name];
    const others = faults.filter(({ words }) => stop === undefined || !words.includes(stop));
    expect(others.map(({ words }) => words)).toEqual([]);
  });
});
