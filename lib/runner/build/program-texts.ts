import path from 'node:path';
import type { Plugin } from 'esbuild';
import { runtimeSpecs } from '../../plot/vega/runtime-specs.js';
import { licenceText, packageFolders } from './licences.js';
import type { ProgramTexts } from './live-programs.js';
import { fileEntry, pageEntry } from './live-programs.js';
import { programModules } from './program-modules.js';

/** What programs are made of. */
export interface ProgramSources {
  /** The file that makes a page live. */
  readonly livePage: string;
  /** The file that makes the file of all notebooks live; there is no program for that where it is not given. */
  readonly liveFile?: string;
  /** The notebooks by their names. */
  readonly notebooks: Readonly<Record<string, string>>;
  /** The file of an entry of the library, as {@link Workshop.entryFile}. */
  readonly entryFile: (name: string) => string | undefined;
}

/**
 * Bundles notebooks for a browser, all at once: what they share is in a page as the very same text.
 *
 * @returns the same sources give the same text
 */
export async function programTexts(sources: ProgramSources): Promise<ProgramTexts> {
  const { livePage, liveFile, notebooks } = sources;
  const texts: Readonly<Record<string, string>> = {
    [pageEntry]: startText('livePage', 'notebook', livePage),
    ...(liveFile === undefined ? {} : { [fileEntry]: startText('liveFile', 'notebooks', liveFile) }),
    ...Object.fromEntries(
      Object.entries(notebooks).map(([name, file]) => [
        name,
        `export { notebook } from ${JSON.stringify(file)};`,
      ]),
    ),
  };
  const bundled = await programModules(
    path.dirname(livePage),
    Object.keys(texts).map((name) => ({ in: `live:${name}`, out: name })),
    [
      entries(path.dirname(livePage), (name) => texts[name] ?? ''),
      libraryEntries(sources.entryFile),
      compiledSpecs,
    ],
  );
  const needed = Object.fromEntries(Object.keys(texts).map((name) => [name, bundled.needed(name)]));
  const names = [...new Set(Object.values(needed).flat())];
  const folders = packageFolders(names.flatMap(bundled.files));
  const modules = names.map((name) => {
    const packages = [...packageFolders(bundled.files(name)).keys()].sort();
    return [name, { text: bundled.text(name), packages }] as const;
  });
  return {
    modules: Object.fromEntries(modules),
    needed,
    licences: Object.fromEntries(
      [...folders].map(([name, folder]) => [name, licenceText(name, folder)] as const),
    ),
  };
}

function startText(start: string, what: string, file: string): string {
  return `import { ${start} } from ${JSON.stringify(file)};
import specs from 'compiled-specs';
export const start = (${what}) => ${start}(${what}, specs);`;
}

/** Makes the first module of each program, for the entry `live:` with a name. */
export function entries(folder: string, textFor: (name: string) => string): Plugin {
  return {
    name: 'entries',
    setup({ onResolve, onLoad }) {
      onResolve({ filter: /^live:/ }, ({ path: name }) => ({ path: name.slice(5), namespace: 'live' }));
      onLoad({ filter: /.*/, namespace: 'live' }, ({ path: name }) => ({
        contents: textFor(name),
        loader: 'ts',
        resolveDir: folder,
      }));
    },
  };
}

/** Finds the entries of the library that a notebook elsewhere imports by their names. */
function libraryEntries(entryFile: ProgramSources['entryFile']): Plugin {
  return {
    name: 'library-entries',
    setup({ onResolve }) {
      onResolve({ filter: /^dashpot(?:\/|$)/ }, ({ path: name }) => {
        const file = entryFile(name);
        return file === undefined ? undefined : { path: file, sideEffects: false };
      });
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
