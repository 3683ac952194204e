import { expect, test } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import type { Block } from '../../lib/page/blocks/block.js';
import type { Notebook } from '../../lib/page/index.js';
import { withCourse } from '../../lib/parts/course-entry.js';
import { type Parts, readParts } from '../../lib/parts/index.js';
import { listNotebooks } from '../../lib/runner/build/notebook-list.js';
import { notebook as benchStroke } from '../../notebooks/bench-stroke.js';
import { notebook as landing } from '../../notebooks/landing.js';
import { realNotebooks } from '../live/notebook-folders.js';
import { files, fileTexts, pageOf } from './answers.js';

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

function saidBy(notebook: Notebook, parts = files.demo): string {
  const { title, question, parameters } = notebook;
  const settings = Object.values(parameters).flatMap(({ label, help }) => [label, help]);
  const page = pageOf(notebook, parts);
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

// What it says beside with two other files: two cars with an odd shock, tapered and stepped holes and two bores, and the smallest that a newcomer would write. Only what it does not say
// with the demo parts stands there, or why it has no answer.
test.each(await listNotebooks(realNotebooks))(
  '$name with other files says what was read',
  async (notebook) => {
    const usual = new Set(saidBy(notebook).split('\n'));
    const said = (['twoCars', 'smallest'] as const).map((file) => {
      const lines = textOrRefusal(notebook, files[file])
        .split('\n')
        .filter((line) => !usual.has(line));
      return `${file}:\n${lines.join('\n')}\n`;
    });
    await expect(said.join('\n')).toMatchFileSnapshot(`words/others/${notebook.name}.txt`);
  },
);

/** What a page says, or why it says nothing. */
function textOrRefusal(notebook: Notebook, parts: Parts): string {
  try {
    return saidBy(notebook, parts);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return masked(error.message);
  }
}

/** Three seconds of an invented shake, from rest to rest, 100 rows a second. */
const shaken = (name: string, middle: number, amplitude: number) =>
  [
    `time (s),${name} (mm)`,
    ...Array.from({ length: 301 }, (_, row) => {
      const swing = Math.sin((row / 300) * Math.PI) ** 2 * Math.sin((row / 300) * 18 * Math.PI);
      return `${row / 100},${(middle + amplitude * swing).toFixed(4)}`;
    }),
  ].join('\n');

test.each([
  {
    file: 'bench-stroke-recorded',
    notebook: benchStroke,
    key: 'recorded-stroke',
    record: shaken('travel', 12, 11),
  },
  { file: 'landing-recorded', notebook: landing, key: 'recorded-ground', record: shaken('height', 0, 12) },
] as const)('$file says what was read', async ({ file, notebook, key, record }) => {
  const parts = readParts(withCourse(fileTexts.demo, key, { record }));
  await expect(saidBy(notebook, parts)).toMatchFileSnapshot(`words/${file}.txt`);
});
