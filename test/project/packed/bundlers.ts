import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { nodeResolve } from '@rollup/plugin-node-resolve';
import { build as esbuild } from 'esbuild';
import { rollup } from 'rollup';
import { build as vite } from 'vite';

/** Bundles a file for a browser; returns the text. */
type Bundler = (file: string) => Promise<string>;

/** The usual bundlers, each as its documentation tells to call it. */
export const bundlers: Readonly<Record<string, Bundler>> = {
  async esbuild(file) {
    const { outputFiles } = await esbuild({
      entryPoints: [file],
      bundle: true,
      format: 'esm',
      platform: 'browser',
      external: ['node:*'],
      write: false,
      logLevel: 'silent',
    });
    return outputFiles[0]?.text ?? '';
  },
  async rollup(file) {
    const bundle = await rollup({
      input: file,
      // The solver has a branch for Node, which a browser never takes.
      external: /^node:/u,
      plugins: [nodeResolve({ browser: true })],
      onwarn(warning) {
        if (warning.code === 'UNRESOLVED_IMPORT') throw new TypeError(warning.message);
      },
    });
    const { output } = await bundle.generate({ format: 'es', inlineDynamicImports: true });
    return output[0].code;
  },
  async vite(file) {
    const folder = mkdtempSync(join(file, '..', 'vite-'));
    await vite({
      root: folder,
      configFile: false,
      logLevel: 'silent',
      build: {
        lib: { entry: file, formats: ['es'], fileName: 'bundle' },
        outDir: folder,
        emptyOutDir: false,
        minify: false,
      },
    });
    return readdirSync(folder)
      .filter((name) => name.endsWith('.js'))
      .map((name) => readFileSync(join(folder, name), 'utf8'))
      .join('\n');
  },
};

/** Writes a file that imports an entry and keeps all of it. */
export function importing(folder: string, entry: string): string {
  const file = join(folder, `${entry.replace('/', '-')}.js`);
  writeFileSync(file, `import * as all from '${entry}';\nglobalThis.all = all;\n`);
  return file;
}
