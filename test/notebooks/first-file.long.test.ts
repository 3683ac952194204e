import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { expectedFailure } from '../../lib/live/case/failure.js';
import type { Notebook, Page } from '../../lib/page/index.js';
import { unansweredPage } from '../../lib/page/index.js';
import { runNotebook } from '../../lib/page/run-notebook.js';
import { type Parts, readParts } from '../../lib/parts/index.js';
import { listNotebooks } from '../../lib/runner/build/notebook-list.js';

const smallest = readFileSync(new URL('../parts/files/smallest.yaml', import.meta.url), 'utf8');

let notebooks: readonly Notebook[];

beforeAll(async () => {
  notebooks = await listNotebooks(fileURLToPath(new URL('../../notebooks', import.meta.url)));
});

interface Got {
  readonly page: Page;
  readonly answered: boolean;
}

/** What is asked of the smallest file more than once. */
const smallestParts = readParts(smallest);
const known = new Map<string, Got>();

function pageOfSmallest(notebook: Notebook): Got {
  const got = known.get(notebook.name) ?? pageOf(notebook, smallestParts);
  known.set(notebook.name, got);
  return got;
}

/** The page that a reader gets, and whether the notebook answered. */
function pageOf(notebook: Notebook, parts: Parts): Got {
  try {
    return { page: runNotebook(notebook, parts, {}).page, answered: true };
  } catch (error) {
    if (!expectedFailure(error)) throw error;
    return { page: unansweredPage(error, parts), answered: false };
  }
}

/** The lines that a page asks to be copied. */
function linesOf({ blocks }: Page): string {
  return blocks.flatMap((block) => (block.kind === 'lines' ? [block.text] : [])).join('\n');
}

describe('what a calliper and two labels give', () => {
  it('answers ten pages or more', () => {
    const answered = notebooks
      .filter((notebook) => pageOfSmallest(notebook).answered)
      .map(({ name }) => name);
    expect(answered.length).toBeGreaterThanOrEqual(10);
    expect(answered).toContain('compare-oils');
    expect(answered).toContain('build-sheet');
  });

  it('is answered on every page once the lines that the page shows are at its end', () => {
    const unanswered = notebooks.filter((notebook) => !pageOfSmallest(notebook).answered);
    expect(unanswered.length).toBeGreaterThan(0);
    for (const notebook of unanswered) {
      const lines = linesOf(pageOfSmallest(notebook).page);
      expect([notebook.name, lines]).not.toEqual([notebook.name, '']);
      const { page, answered } = pageOf(notebook, readParts(`${smallest}${lines}\n`));
      expect([notebook.name, answered ? '' : JSON.stringify(page.blocks)]).toEqual([notebook.name, '']);
    }
  });

  it.each(['oils', 'pistons', 'shocks'])('without %s says which lines would bring them', (list) => {
    const without = smallest.replace(new RegExp(`^${list}:\\n(?: .*\\n)+`, 'mu'), '');
    const notebook = notebooks.find(({ name }) => name === 'compare-oils');
    if (notebook === undefined) throw new Error('no notebook compare-oils');
    const { page, answered } = pageOf(notebook, readParts(without));
    expect(answered).toBe(false);
    expect(linesOf(page)).toContain(`${list}:\n`);
    expect(pageOf(notebook, readParts(`${without}${linesOf(page)}\n`)).answered).toBe(true);
  });
});
