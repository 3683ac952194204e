import { expect, test } from 'vitest';
import type { Block } from '../../lib/page/blocks/block.js';
import { type Notebook, readParameterValues } from '../../lib/page/index.js';
import { listNotebooks } from '../../lib/runner/build/notebook-list.js';
import { realNotebooks } from '../live/notebook-folders.js';
import { files } from './answers.js';

// What each page says with the demo parts, as somebody read it and let it stand: a word in a file of `words/` that is not true is a fault, and so is
// one that changes unread. Numbers stand as #: they are worked out apart from the pages in the tests beside this one. `npm run quick -- -u` writes
// the files anew; read the difference before you commit it.

/** Every text in a value, in order; of pictures the words and not the marks. */
function textsOf(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(textsOf);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    ['kind', 'id', 'unit', 'dimension', 'format', 'drawings', 'chart', 'layout'].includes(key)
      ? []
      : textsOf(inner),
  );
}

function masked(text: string): string {
  return text
    .replaceAll(/[\u00a0\u202f]/gu, ' ')
    .replaceAll(/[−-]?\d[\d.,]*\d|[−-]?\d/gu, '#')
    .trim();
}

function saidBy({ title, question, parameters, run }: Notebook): string {
  const settings = Object.values(parameters).flatMap(({ label, help }) => [label, help]);
  const values = readParameterValues(parameters, {}, files.demo);
  const page = run(files.demo, values);
  const blocks = page.blocks.flatMap((block: Block) => ['', ...textsOf(block)]);
  const lines = [title, question, '', page.answer, '', ...settings, ...blocks, '', ...page.sources].map(
    masked,
  );
  // What is said twice, as on the sheet of each shock of a pair, need be read once.
  return `${lines.filter((line, place) => line === '' || lines.indexOf(line) === place).join('\n')}\n`;
}

test.each(await listNotebooks(realNotebooks))('$name says what was read', async (notebook) => {
  await expect(saidBy(notebook)).toMatchFileSnapshot(`words/${notebook.name}.txt`);
});
