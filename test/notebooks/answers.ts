import { readFileSync } from 'node:fs';
import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { allBlocks, type Notebook, type Page, readParameterValues } from '../../lib/page/index.js';
import { type Parts, readParts } from '../../lib/parts/index.js';

const textOf = (path: string): string => readFileSync(new URL(path, import.meta.url), 'utf8');

/** The files on which answers are worked out apart from the pages. */
export const fileTexts = {
  demo: textOf('../../notebooks/demo-parts.yaml'),
  twoCars: textOf('../parts/files/two-cars.yaml'),
  smallest: textOf('../parts/files/smallest.yaml'),
} as const;

export const files: Readonly<Record<keyof typeof fileTexts, Parts>> = {
  demo: readParts(fileTexts.demo),
  twoCars: readParts(fileTexts.twoCars),
  smallest: readParts(fileTexts.smallest),
};

const byText = new Map<string, Parts>(
  Object.entries(files).map(([name, parts]) => [fileTexts[name as keyof typeof fileTexts], parts]),
);

/** The page of a notebook on a file that is written out; the same text is the same file. */
export function pageOfText(
  notebook: unknown,
  text: string,
  texts: Readonly<Record<string, string | readonly string[]>> = {},
): Page {
  const parts = byText.get(text) ?? readParts(text);
  byText.set(text, parts);
  return pageOf(notebook, parts, texts);
}

/** A file with one text replaced; the text must be there. */
export function changedFile(text: string, from: string | RegExp, to: string): Parts {
  const changed = text.replace(from, to);
  if (changed === text) throw new Error(`${from} is not in the file`);
  return readParts(changed);
}

/** Pages by their question, settings and file: plain data, so that tests of one process share them. */
const rendered = new WeakMap<Parts, Map<string, Page>>();

/** The page of a notebook on a file; a setting may be given more than once. */
export function pageOf(
  notebook: unknown,
  parts: Parts,
  texts: Readonly<Record<string, string | readonly string[]>> = {},
): Page {
  const { question, parameters, run } = notebook as Notebook;
  const pages = rendered.get(parts) ?? new Map<string, Page>();
  rendered.set(parts, pages);
  const key = JSON.stringify([question, texts]);
  const page = pages.get(key) ?? run(parts, readParameterValues(parameters, texts, parts));
  pages.set(key, page);
  return page;
}

/** A table of a page by its id. */
export function tableOf(page: Page, id: string): TableBlock['table'] {
  const found = allBlocks(page).find((block) => block.kind === 'table' && block.id === id);
  if (found?.kind !== 'table') throw new Error(`no table ${id}`);
  return found.table;
}

/** A row of a table by its first cell, without that. */
export function rowOf(page: Page, id: string, name: string): readonly (string | number | null)[] {
  const row = tableOf(page, id).rows.find(([first]) => first === name);
  if (row === undefined) throw new Error(`no row ${name} in ${id}`);
  return row.slice(1);
}

/** All words of a page: answer, blocks, captions. */
export function wordsOf(page: Page): string {
  const said = allBlocks(page).flatMap((block): readonly string[] => {
    if (block.kind === 'text' || block.kind === 'heading') return [block.text];
    if (block.kind === 'list' || block.kind === 'assumptions') return block.items;
    if (block.kind === 'figure') return [block.figure.title, block.figure.alt];
    return block.kind === 'reveal' ? [block.question, ...block.choices] : [];
  });
  return [page.answer, ...said].join('\n');
}

/** `the … mm/s` numbers of a sentence, by a pattern with one group for each. */
export function numbersIn(sentence: string, pattern: RegExp): readonly number[] {
  const found = pattern.exec(sentence);
  if (found === null) throw new Error(`"${sentence}" does not match ${pattern}`);
  return found.slice(1).map(Number);
}
