import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { deflateRawSync } from 'node:zlib';
import type { Plugin } from 'esbuild';
import { packedText } from '../../page/html/packed-text.js';
import type { Notice } from '../../page/index.js';
import { runtimeSpecs } from '../../plot/vega/runtime-specs.js';
import { licences } from './licences.js';
import { programModules } from './program-modules.js';

/** A program in the form in which a page carries it, and the licences of what is in it. */
export interface LiveProgram {
  readonly script: string;
  /** The script in pieces, each as raw DEFLATE in the characters of `packedText`; the first is the same in all pages. */
  readonly packed: readonly string[];
  readonly notices: readonly Notice[];
}

/** The programs of all pages. */
export interface LivePrograms {
  /** That of the page of one notebook. */
  page(notebook: string): LiveProgram;
  /** That of the file of all notebooks. */
  readonly file: LiveProgram;
}

const live = (name: string): string =>
  JSON.stringify(fileURLToPath(new URL(`../../live/${name}`, import.meta.url)));

/** The entries that start the page of one notebook, and the file of all. */
const [pageEntry, fileEntry] = ['start-page', 'start-file'];

/** Gives the modules a place, and begins; all of a program is one function. */
const opening = '(()=>{const modules={},require=(name)=>modules[name];\n';

/**
 * Bundles notebooks for a browser, all at once: what they share is in a page as the very same text.
 *
 * @param folder - folder of the notebooks
 * @param names - names of the notebooks
 * @returns the same sources give the same text
 */
export async function livePrograms(folder: string, names: readonly string[]): Promise<LivePrograms> {
  const modules = await programModules(
    folder,
    [pageEntry, fileEntry, ...names].map((name) => ({ in: `live:${name}`, out: name })),
    [entries(folder, (file) => starts[path.basename(file, '.ts')] ?? notebookText(file)), compiledSpecs],
  );
  const common = modules.needed(pageEntry);
  const first = opening + common.map(modules.text).join('');
  const packedFirst = packed(first);
  const program = (needed: readonly string[], start: string): LiveProgram => {
    const own = needed.filter((name) => !common.includes(name));
    const second = `${own.map(modules.text).join('')}${start}})();`;
    return {
      script: first + second,
      packed: [packedFirst, packed(second)],
      notices: licences([...common, ...own].flatMap(modules.files)),
    };
  };
  return {
    page: (notebook) =>
      program(modules.needed(notebook), `${required(pageEntry)}.start(${required(notebook)}.notebook);`),
    file: program(
      [...new Set([fileEntry, ...names].flatMap(modules.needed))],
      `${required(fileEntry)}.start([${names.map((name) => `${required(name)}.notebook`).join()}]);`,
    ),
  };
}

function packed(text: string): string {
  return packedText(deflateRawSync(text, { level: 9 }));
}

const starts: Readonly<Record<string, string>> = {
  [pageEntry]: `import { livePage } from ${live('live-page.ts')};
import specs from 'compiled-specs';
export const start = (notebook) => livePage(notebook, specs);`,
  [fileEntry]: `import { liveFile } from ${live('live-file.ts')};
import specs from 'compiled-specs';
export const start = (notebooks) => liveFile(notebooks, specs);`,
};

function required(name: string): string {
  return `require(${JSON.stringify(`./${name}.js`)})`;
}

function notebookText(notebook: string): string {
  return `export { notebook } from ${JSON.stringify(notebook)};`;
}

/** Makes the first module of each program, for the entry `live:` with the name of the notebook. */
export function entries(folder: string, textFor: (notebook: string) => string): Plugin {
  return {
    name: 'entries',
    setup({ onResolve, onLoad }) {
      onResolve({ filter: /^live:/ }, ({ path: name }) => ({ path: name.slice(5), namespace: 'live' }));
      onLoad({ filter: /.*/, namespace: 'live' }, ({ path: name }) => ({
        contents: textFor(path.join(folder, `${name}.ts`)),
        loader: 'ts',
        resolveDir: folder,
      }));
    },
  };
}

/** Makes the module of the compiled charts. */
const compiledSpecs: Plugin = {
  name: 'compiled-specs',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^compiled-specs$/ }, (found) => ({ path: found.path, namespace: 'specs' }));
    onLoad({ filter: /.*/, namespace: 'specs' }, () => ({
      contents: JSON.stringify(runtimeSpecs()),
      loader: 'json',
    }));
  },
};
