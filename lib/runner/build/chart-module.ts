import { createRequire } from 'node:module';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { context, type Plugin } from 'esbuild';
import type { runtimeSpecs } from '../../plot/vega/runtime-specs.js';

/** The compiled charts as a module of a page. */
export interface ChartModule {
  /** Its text, as the sources are now. */
  text(): Promise<string>;
  dispose(): Promise<void>;
}

const source = fileURLToPath(new URL('../../plot/vega/runtime-specs.ts', import.meta.url));

/** A module without a file finds a package only by its whole path. */
const packagesByPath: Plugin = {
  name: 'packages-by-path',
  setup({ onResolve }) {
    const { resolve } = createRequire(source);
    onResolve({ filter: /^[^./]/ }, ({ path }) => ({
      path: pathToFileURL(resolve(path)).href,
      external: true,
    }));
  },
};

/**
 * Opens the charts for a page that is being written. A process keeps a module as it was when it was first imported, so the sources of the charts
 * are bundled, and what differs from before is run as a new module.
 */
export async function chartModule(): Promise<ChartModule> {
  const bundler = await context({
    entryPoints: [source],
    bundle: true,
    format: 'esm',
    platform: 'node',
    write: false,
    logLevel: 'silent',
    plugins: [packagesByPath],
  });
  let before = '';
  let text = '';
  return {
    async text() {
      const now = (await bundler.rebuild()).outputFiles[0]!.text;
      if (now === before) return text;
      const address = `data:text/javascript;base64,${Buffer.from(now).toString('base64')}`;
      const module: { readonly runtimeSpecs: typeof runtimeSpecs } = await import(address);
      text = `export default JSON.parse(${JSON.stringify(JSON.stringify(module.runtimeSpecs()))});`;
      before = now;
      return text;
    },
    dispose: () => bundler.dispose(),
  };
}
