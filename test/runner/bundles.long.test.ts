import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { pageEntry } from '../../lib/runner/build/live-programs.js';
import { programModules } from '../../lib/runner/build/program-modules.js';
import { programTexts } from '../../lib/runner/build/program-texts.js';

const folder = mkdtempSync(path.join(tmpdir(), 'dashpot-bundles-'));
afterAll(() => rmSync(folder, { recursive: true }));
const write = (name: string, text: string): string => {
  writeFileSync(path.join(folder, name), text);
  return path.join(folder, name);
};

test('what two programs share is a module of its own that comes first, and what is imported but says nothing is no part', async () => {
  const shared = write('shared.ts', "export const shared = ['both'];\nshared.push('more');");
  write('empty.ts', 'export type None = string;');
  const [one, two] = ['one', 'two'].map((name) =>
    write(
      `${name}.ts`,
      `import './empty.ts'; import { shared } from './shared.ts'; export const ${name} = [...shared, '${name}'];`,
    ),
  );
  const modules = await programModules(
    folder,
    [
      { in: one ?? '', out: 'one' },
      { in: two ?? '', out: 'two' },
    ],
    [],
  );
  const [common = '', own] = modules.needed('one');
  expect(own).toBe('one.js');
  expect(modules.needed('two')).toEqual([common, 'two.js']);
  expect(modules.files(common).map((file) => path.basename(file))).toEqual([path.basename(shared)]);
  expect(modules.files('one.js').map((file) => path.basename(file))).toEqual(['one.ts']);
  // A module takes others from `modules` and puts itself there.
  const run = new Function(
    'names',
    `const modules = {}, require = (name) => modules[name]; ${modules.needed('two').map(modules.text).join('')} return modules['./two.js'].two;`,
  );
  expect(run()).toEqual(['both', 'more', 'two']);
});

describe('the programs of pages', () => {
  const livePage = write('live-page.ts', "export const livePage = (notebook) => ['page', notebook];");
  const library = write('library.ts', 'export const constant = 7;');
  const mine = write(
    'mine.ts',
    "import { constant } from 'dashpot/base'; export const notebook = { name: 'mine', constant };",
  );
  const entryFile = (name: string) => (name === 'dashpot/base' ? library : undefined);

  test('hold the notebook, and the library that it imports by name', async () => {
    const { needed, modules } = await programTexts({ livePage, notebooks: { mine }, entryFile });
    expect(Object.keys(needed).sort()).toEqual(['mine', pageEntry].sort());
    const text = needed['mine']?.map((name) => modules[name]?.text).join('');
    expect(text).toContain('mine');
    expect(text).toMatch(/\b7\b/u);
  });

  test('are not made where the library has no such entry', async () => {
    await expect(programTexts({ livePage, notebooks: { mine }, entryFile: () => undefined })).rejects.toThrow(
      'dashpot/base',
    );
  });
});
