import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { deflateRawSync } from 'node:zlib';
import { build, type Plugin } from 'esbuild';
import type { Notice } from '../../page/index.js';
import { runtimeSpecs } from '../../plot/vega/runtime-specs.js';
import { licences } from './licences.js';

/** The program of a page, the form in which a page carries it, and the licences of what is in it. */
export interface LiveProgram {
  readonly script: string;
  readonly deflated: string;
  readonly notices: readonly Notice[];
}

const livePage = fileURLToPath(new URL('../../live/live-page.ts', import.meta.url));

/**
 * Bundles notebooks for a browser, all at once, so that what they share is read once.
 *
 * @param folder - folder of the notebooks
 * @param names - names of the notebooks
 * @returns the program of each notebook by its name; the same sources give the same text
 */
export async function livePrograms(
  folder: string,
  names: readonly string[],
): Promise<ReadonlyMap<string, LiveProgram>> {
  const entryPoints = names.map((name) => ({ in: `live:${name}`, out: name }));
  const { outputFiles, metafile } = await build({
    ...browserOptions(folder),
    plugins: [entries(folder, programText), compiledSpecs],
    entryPoints,
    minify: true,
    metafile: true,
  });
  return new Map(
    outputFiles.map(({ path: file, text }) => {
      const deflated = deflateRawSync(text, { level: 9 }).toString('base64');
      const inputs = Object.entries(metafile.outputs[path.relative(process.cwd(), file)]?.inputs ?? {});
      const used = inputs.filter(([, { bytesInOutput }]) => bytesInOutput > 0).map(([input]) => input);
      return [path.basename(file, '.js'), { script: text, deflated, notices: licences(used) }] as const;
    }),
  );
}

/** How a program is bundled, for a page that is built and for one that is being written. */
export function browserOptions(folder: string) {
  return {
    bundle: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    outdir: folder,
    write: false,
    logLevel: 'silent',
  } as const;
}

/** The first module of a built page: its notebook, handed to the live page. */
function programText(notebook: string): string {
  return `import { notebook } from ${JSON.stringify(notebook)};
import { livePage } from ${JSON.stringify(livePage)};
import specs from 'compiled-specs';
livePage(notebook, specs);`;
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
