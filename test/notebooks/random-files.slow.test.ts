import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readParts } from '../../lib/parts/index.js';
import { listNotebooks } from '../../lib/runner/build/notebook-list.js';
import { demoParts, realNotebooks } from '../live/notebook-folders.js';
import { acceptedFiles } from './random/accepted-files.js';
import { outcomeOf, pageFaults } from './random/page-faults.js';
import { randomSettings } from './random/settings.js';

// `npm run random-files` does the same with as many files as wanted.
const notebooks = await listNotebooks(realNotebooks);
const demo = readParts(readFileSync(demoParts, 'utf8'));
/** Minutes with oils that thin through valves; the benchmark runs them. */
const long = ['spread', 'measure-next', 'landing'];

describe('random accepted files', () => {
  const { files } = acceptedFiles(2, 20_261_126);
  it.each(files.map((file, place) => ({ ...file, place })))(
    'file $place: every page answers or names the key',
    ({ parts }) => {
      const faults = notebooks
        .filter(({ name }) => !long.includes(name))
        .flatMap((notebook) =>
          outcomeOf(notebook, parts).faults.map((fault) => `${notebook.name}: ${fault}`),
        );
      expect(faults).toEqual([]);
    },
  );

  it.each([1, 2, 3])(
    'the demo with its controls set to anything they take (%d): every page answers or names one',
    (seed) => {
      const faults = notebooks.flatMap((notebook) =>
        outcomeOf(notebook, demo, randomSettings(notebook, demo, seed)).faults.map(
          (fault) => `${notebook.name}: ${fault}`,
        ),
      );
      expect(faults).toEqual([]);
    },
  );

  it('a page with what a reader should never see is told', () => {
    const page = (text: string) => ({ answer: text, blocks: [], sources: [] });
    expect(pageFaults(page('It damps with NaN N.'))).toHaveLength(1);
    expect(pageFaults(page('It damps with undefined.'))).toHaveLength(1);
    expect(pageFaults(page('It damps with 3 N.'))).toEqual([]);
  });
});
