import path from 'node:path';
import type { OnResolveArgs, Plugin, PluginBuild } from 'esbuild';
import { packageFolder } from './licences.js';

/** Packages of Vega that hold their sources file by file beside one bundle; a page takes the files that its charts use. */
const inFiles =
  /^vega-(?:dataflow|encode|event-selector|expression|format|functions|runtime|scale|scenegraph|selections|statistics|time|transforms|view|view-transforms)$/u;

/**
 * What Vega names and no chart of ours calls: colour schemes, since a figure names its colours; projections and maps; selections; files of
 * data. A picture with one of them would fail when it is first drawn, and the tests draw every kind of chart.
 */
const unused =
  /^(?:d3-geo|d3-scale-chromatic|d3-dsv|topojson-client|vega-selections|\.\/palettes(?:\.js)?)$/u;

const ofVega = /node_modules\/vega-[a-z-]+\//u;

/**
 * Lets a page carry of its packages only what it uses. Vega ships each of its packages as one bundle that is kept whole; from
 * its sources esbuild takes what is reached. A page cannot load anything later, so what is imported later stays out.
 */
export const leanPackages: Plugin = {
  name: 'lean-packages',
  setup(build) {
    build.onLoad({ filter: /.*/, namespace: 'unused' }, () => ({ contents: 'module.exports = {};' }));
    build.onResolve({ filter: /.*/ }, (asked) => {
      if (asked.kind === 'dynamic-import') return { path: asked.path, external: true };
      if (ofVega.test(asked.importer) && unused.test(asked.path))
        return { path: asked.path, namespace: 'unused' };
      return inFiles.test(asked.path) || (ofVega.test(asked.importer) && asked.path.startsWith('.'))
        ? fromSources(build, asked)
        : undefined;
    });
  },
};

/** Marks a question of our own. */
const asking = Symbol('asking');

/** Found as usual, with the first file of the sources in the place of the bundle. */
async function fromSources(build: PluginBuild, asked: OnResolveArgs) {
  // The question below comes back here.
  if (asked.pluginData === asking) return undefined;
  const { kind, importer, resolveDir } = asked;
  const found = await build.resolve(asked.path, { kind, importer, resolveDir, pluginData: asking });
  const { folder } = packageFolder.exec(found.path)?.groups ?? {};
  if (folder === undefined) return found;
  const file = asked.path.startsWith('.') ? found.path : path.join(folder, 'index.js');
  return { path: file, sideEffects: false };
}
