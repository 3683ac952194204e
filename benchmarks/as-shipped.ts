import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

/**
 * Loads a module of this folder as a user of the package runs it. The loader that runs TypeScript from source gives every inner function
 * its name at run time, which costs more than the physics.
 *
 * @param entry - path in this folder
 */
export async function asShipped<Module>(entry: string): Promise<Module> {
  const root = fileURLToPath(new URL('..', import.meta.url));
  const folder = `${root}node_modules/.cache/dashpot-benchmarks`;
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${folder}/package.json`, '{ "type": "module" }');
  const name = entry.replace(/\W/gu, '-');
  await build({
    absWorkingDir: root,
    entryPoints: { [name]: `benchmarks/${entry}`, jobs: 'lib/workers/jobs.ts' },
    outdir: folder,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
  });
  return import(pathToFileURL(`${folder}/${name}.js`).href) as Promise<Module>;
}
