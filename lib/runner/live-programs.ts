import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { deflateRawSync } from 'node:zlib';
import { build, type Plugin } from 'esbuild';
import type { Notice } from '../page/index.js';
import { runtimeSpecs } from '../plot/runtime-specs.js';
import { licences } from './licences.js';

/** The program of a page, the form in which a page carries it, and the licences of what is in it. */
export interface LiveProgram {
  readonly script: string;
  readonly deflated: string;
  readonly notices: readonly Notice[];
}

const livePage = fileURLToPath(new URL('../live/live-page.ts', import.meta.url));

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
  const { outputFiles, metafile } = await build({
    entryPoints: names.map((name) => ({ in: `live:${name}`, out: name })),
    bundle: true,
    minify: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    outdir: folder,
    write: false,
    metafile: true,
    logLevel: 'silent',
    plugins: [entries(folder)],
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

/** The first module of each program: a notebook, handed to the live page. */
function entries(folder: string): Plugin {
  return {
    name: 'entries',
    setup({ onResolve, onLoad }) {
      onResolve({ filter: /^live:/ }, ({ path: name }) => ({ path: name.slice(5), namespace: 'live' }));
      onResolve({ filter: /^compiled-specs$/ }, (found) => ({ path: found.path, namespace: 'specs' }));
      onLoad({ filter: /.*/, namespace: 'live' }, ({ path: name }) => ({
        contents: `import { notebook } from ${JSON.stringify(path.join(folder, `${name}.ts`))};
import { livePage } from ${JSON.stringify(livePage)};
import specs from 'compiled-specs';
livePage(notebook, specs);`,
        loader: 'ts',
        resolveDir: folder,
      }));
      onLoad({ filter: /.*/, namespace: 'specs' }, () => ({
        contents: JSON.stringify(runtimeSpecs()),
        loader: 'json',
      }));
    },
  };
}
