import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const library = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Packages as modules for a browser; what several of them share is in a module once.
 *
 * @param names - the packages as they are imported
 * @returns the text of each module by its file name; that of a package is its name with `.js`
 */
export async function packageModules(names: readonly string[]): Promise<ReadonlyMap<string, string>> {
  const { outputFiles } = await build({
    entryPoints: names.map((name) => ({ in: name, out: name })),
    absWorkingDir: library,
    outdir: library,
    bundle: true,
    splitting: true,
    minify: true,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    write: false,
    logLevel: 'silent',
  });
  return new Map(outputFiles.map(({ path: file, text }) => [path.relative(library, file), text]));
}
