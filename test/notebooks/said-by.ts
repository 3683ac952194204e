import { InputError } from '../../lib/base/input-error.js';
import type { Block } from '../../lib/page/blocks/block.js';
import type { Notebook } from '../../lib/page/index.js';
import type { Parts } from '../../lib/parts/index.js';
import { files, pageOf } from './answers.js';

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

/** What a page says, with numbers as #. */
export function saidBy(notebook: Notebook, parts = files.demo): string {
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

/** What it says with two other files that it does not say with the demo parts, or why it has no answer. */
export function saidOfOthers(notebook: Notebook): string {
  const usual = new Set(saidBy(notebook).split('\n'));
  const said = (['twoCars', 'smallest'] as const).map((file) => {
    const lines = textOrRefusal(notebook, files[file])
      .split('\n')
      .filter((line) => !usual.has(line));
    return `${file}:\n${lines.join('\n')}\n`;
  });
  return said.join('\n');
}

function textOrRefusal(notebook: Notebook, parts: Parts): string {
  try {
    return saidBy(notebook, parts);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return masked(error.message);
  }
}
