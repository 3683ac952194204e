import { expect, test } from 'vitest';
import { neededPeers } from '../../lib/runner/packed/missing-peers.js';

test('a command needs the packages of what it does: to read a file, to draw pages, to bundle what is written in TypeScript', () => {
  const [check, table, pages, own] = [['check', 'a.yaml'], ['table'], ['landing'], ['mine.ts']].map(
    neededPeers,
  );
  expect(check).toEqual(['yaml', 'zod']);
  expect(table).toEqual(check);
  expect(pages).toEqual(expect.arrayContaining([...(check ?? []), 'vega']));
  expect(pages).not.toContain('esbuild');
  expect(own).toEqual([...(pages ?? []), 'esbuild']);
  expect(neededPeers([])).toEqual(pages);
  // The word counts only where it is the first.
  expect(neededPeers(['landing', 'check'])).toEqual(pages);
});
