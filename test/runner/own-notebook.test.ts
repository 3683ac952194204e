import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { listNotebooks } from '../../lib/runner/build/notebook-list.js';
import { isLost, loadOwnNotebook, namesFile } from '../../lib/runner/build/own-notebook.js';
import { CommandError } from '../../lib/runner/command/command-error.js';
import { fileError } from '../../lib/runner/command/file-error.js';

const folder = mkdtempSync(path.join(tmpdir(), 'own-notebook-'));
afterAll(() => rmSync(folder, { recursive: true }));
const write = (name: string, text: string): string => {
  writeFileSync(path.join(folder, name), text);
  return name;
};
const notebook = (name: string, order = 1) =>
  `export const notebook = { name: '${name}', order: ${order}, parameters: {}, run: (): string => 'ran' };`;
const constants = fileURLToPath(new URL('../../lib/base/constants.ts', import.meta.url));
const load = (name: string) =>
  loadOwnNotebook(name, folder, { entryFile: (entry) => (entry === 'dashpot' ? constants : undefined) });

describe('a notebook of the user', () => {
  test('is named by a path, and not by a word or an option', () => {
    expect(['mine.ts', './mine', 'a/mine', 'a\\mine'].map(namesFile)).toEqual([true, true, true, true]);
    expect(['landing', '--parts=a.yaml', '-h'].map(namesFile)).toEqual([false, false, false]);
  });

  test('is TypeScript that runs', async () => {
    const { notebook: found, file } = await load(write('mine.ts', notebook('mine')));
    expect([found.name, file]).toEqual(['mine', path.join(folder, 'mine.ts')]);
    expect((found.run as unknown as () => string)()).toBe('ran');
  });

  test.each([
    ['gone.ts', undefined, 'cannot read gone.ts: there is no such file'],
    ['bare.ts', 'export const other = 1;', 'bare.ts exports no "notebook"; write: export const notebook'],
    ['text.ts', 'export const notebook = "text";', 'text.ts exports no "notebook"'],
    ['none.ts', 'export const notebook = null;', 'none.ts exports no "notebook"'],
    ['half.ts', 'export const notebook = { name: "half" };', 'half.ts exports no "notebook"'],
    ['calls.ts', 'export const notebook = { name: "calls", run() {} };', 'calls.ts exports no "notebook"'],
    ['other.ts', notebook('mine'), 'other.ts holds the notebook "mine"; its name must be "other"'],
    ['slip.ts', 'export const = 3;', 'slip.ts: Build failed'],
    ['falls.ts', 'throw new Error("no shock");', 'falls.ts: no shock'],
    ['odd.ts', 'throw "a word";', 'odd.ts: a word'],
    ['lost.ts', 'import "dashpot/nothing";', 'lost.ts: Build failed'],
  ])('%s is refused in one line', async (name, text, words) => {
    if (text !== undefined) write(name, text);
    await expect(load(name)).rejects.toThrow(CommandError);
    await expect(load(name)).rejects.toThrow(words);
  });
});

test('a package is lost where its import failed, and not where another did', () => {
  const lost = Object.assign(new Error("Cannot find package 'esbuild' imported from x"), {
    code: 'ERR_MODULE_NOT_FOUND',
  });
  expect(isLost(lost, 'esbuild')).toBe(true);
  expect(isLost(lost, 'vega')).toBe(false);
  expect(isLost(new Error("'esbuild'"), 'esbuild')).toBe(false);
  expect(isLost("'esbuild'", 'esbuild')).toBe(false);
});

test('an error of the file system becomes a line, any other stays as it is', () => {
  const coded = (code: unknown) => Object.assign(new Error('raw'), { code });
  const said = (error: unknown) => String((fileError('cannot read a.yaml', error) as Error).message);
  expect(said(coded('EISDIR'))).toBe('cannot read a.yaml: it is a folder');
  expect(said(coded('ENOENT'))).toBe('cannot read a.yaml: there is no such file');
  expect(said(coded('EEXIST'))).toBe('cannot read a.yaml: a file is in the way');
  expect(said(coded('ENOTDIR'))).toBe('cannot read a.yaml: a part of the path is not a folder');
  expect(said(coded('EMFILE'))).toBe('cannot read a.yaml: EMFILE');
  for (const other of [new Error('raw'), coded(7), 'text']) expect(fileError('cannot', other)).toBe(other);
});

describe('the notebooks of a folder', () => {
  const shelf = path.join(folder, 'shelf-');
  const shelfOf = (files: Readonly<Record<string, string>>): string => {
    const own = mkdtempSync(shelf);
    for (const [name, text] of Object.entries(files)) writeFileSync(path.join(own, name), text);
    return own;
  };

  test('come in their order, and by name where that is the same', async () => {
    const found = await listNotebooks(
      shelfOf({
        'pear.ts': notebook('pear', 2),
        'apple.ts': notebook('apple', 2),
        'zest.ts': notebook('zest', 1),
        'notes.txt': '',
        'types.d.ts': '',
      }),
    );
    expect(found.map(({ name }) => name)).toEqual(['zest', 'apple', 'pear']);
  });

  test('a file without one, or with another', async () => {
    await expect(listNotebooks(shelfOf({ 'bare.ts': 'export {};' }))).rejects.toThrow(
      'bare.ts exports no "notebook"',
    );
    await expect(listNotebooks(shelfOf({ 'a.ts': notebook('b') }))).rejects.toThrow(
      'a.ts holds the notebook "b"',
    );
  });
});
