import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { OnLoadArgs, OnResolveArgs, PluginBuild } from 'esbuild';
import { afterAll, describe, expect, test } from 'vitest';
import { embeddedFonts } from '../../lib/runner/build/fonts.js';
import { leanPackages } from '../../lib/runner/build/lean-packages.js';
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

describe('packages of a page', () => {
  type Resolve = (asked: OnResolveArgs) => unknown;
  const resolvers: Resolve[] = [];
  const loads: ((asked: OnLoadArgs) => unknown)[] = [];
  const found = { path: '/p/node_modules/vega-scale/build/vega-scale.js' };
  let answered: { path: string } = found;
  leanPackages.setup({
    onResolve: (_filter: unknown, take: Resolve) => resolvers.push(take),
    onLoad: (_filter: unknown, take: (asked: OnLoadArgs) => unknown) => loads.push(take),
    // The question comes back to the plugin, which lets esbuild find it as usual.
    resolve: async (name: string, asked: { pluginData: unknown; importer: string }) => {
      expect(
        await resolvers[0]?.({ path: name, kind: 'import-statement', ...asked } as OnResolveArgs),
      ).toBeUndefined();
      return answered;
    },
  } as unknown as PluginBuild);
  const ask = async (name: string, importer = '/lib/a.ts', kind = 'import-statement') =>
    resolvers[0]?.({ path: name, importer, kind, resolveDir: '/lib' } as OnResolveArgs);
  const ofVega = '/p/node_modules/vega-functions/src/index.js';

  test('of Vega are taken from their sources file by file', async () => {
    expect(await ask('vega-scale')).toEqual({
      path: '/p/node_modules/vega-scale/index.js',
      sideEffects: false,
    });
    answered = { path: '/p/node_modules/vega-functions/src/scale.js' };
    expect(await ask('./scale', ofVega)).toEqual({ path: answered.path, sideEffects: false });
    // Outside the packages it is what esbuild finds.
    answered = { path: '/elsewhere/vega-scale.js' };
    expect(await ask('vega-scale')).toEqual(answered);
  });

  test('of others, and our own files, are found as usual', async () => {
    expect(await ask('yaml')).toBeUndefined();
    expect(await ask('./table.js')).toBeUndefined();
    expect(await ask('d3-array', ofVega)).toBeUndefined();
  });

  test('that no chart calls are empty inside Vega alone, and what is imported later stays out', async () => {
    expect(await ask('d3-geo', ofVega)).toEqual({ path: 'd3-geo', namespace: 'unused' });
    expect(await ask('d3-geo')).toBeUndefined();
    expect(loads[0]?.({} as OnLoadArgs)).toEqual({ contents: 'module.exports = {};' });
    expect(await ask('vega-scale', '/lib/a.ts', 'dynamic-import')).toEqual({
      path: 'vega-scale',
      external: true,
    });
  });
});

test('a font has the letters of any text in English, so that one that is changed later is drawn with it', async () => {
  const [plain, other] = await Promise.all([embeddedFonts(''), embeddedFonts('Quite another text: 27 %~!')]);
  expect(other).toEqual(plain);
  expect(plain.map(({ weight }) => weight)).toEqual([400, 600]);
});
