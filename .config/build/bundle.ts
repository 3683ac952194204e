import path from 'node:path';
import { build } from 'esbuild';
import { type Plugin, rolldown } from 'rolldown';
import { listNotebooks } from '../../lib/runner/build/notebook-list.js';
import manifest from '../../package.json' with { type: 'json' };
import { entryOf, library, sources } from './entries.js';
import { distFolder, root } from './folders.js';

/** Packages that come with a peer. */
const withPeers = ['vega-dataflow', 'vega-encode', 'vega-transforms', 'vega-view', 'vega-view-transforms'];
const outside = [...Object.keys(manifest.peerDependencies), ...withPeers];

function isOutside(name: string): boolean {
  return name.startsWith('node:') || outside.some((one) => name === one || name.startsWith(`${one}/`));
}

/**
 * Bundles the entries: what several of them share is in files of its own, once. Small packages are inside, peers are not.
 *
 * @returns paths of all files that are inside
 */
export async function bundlePackage(): Promise<readonly string[]> {
  const home = await homes();
  const bundle = await rolldown({
    input: Object.fromEntries(Object.entries(sources).map(([name, file]) => [name, path.join(root, file)])),
    external: isOutside,
    platform: 'neutral',
    resolve: { mainFields: ['module', 'main'] },
    treeshake: { moduleSideEffects: false },
    plugins: [await shippedNotebooks()],
  });
  const { output } = await bundle.write({
    dir: distFolder,
    format: 'esm',
    entryFileNames: '[name].js',
    chunkFileNames: 'shared/[name].js',
    comments: { legal: true, annotation: true, jsdoc: false },
    codeSplitting: {
      groups: library.map((name, at) => ({
        name,
        test: (id: string) => home.get(id) === name,
        priority: library.length - at,
      })),
    },
  });
  await bundle.close();
  return output.flatMap((chunk) =>
    chunk.type === 'asset'
      ? []
      : Object.entries(chunk.modules)
          .filter(([, { renderedLength }]) => renderedLength > 0)
          .map(([file]) => file),
  );
}

/** Which file of `dist` each source goes into: that of the first entry that loads it at its start. */
async function homes(): Promise<ReadonlyMap<string, string>> {
  const home = new Map<string, string>();
  for (const name of library)
    for (const file of await loadedAtStart(entryOf(name))) if (!home.has(file)) home.set(file, name);
  return home;
}

async function loadedAtStart(entry: string): Promise<readonly string[]> {
  const { metafile } = await build({
    entryPoints: [entry],
    absWorkingDir: root,
    bundle: true,
    format: 'esm',
    platform: 'node',
    packages: 'external',
    write: false,
    metafile: true,
    logLevel: 'silent',
  });
  const found = new Set<string>();
  const open = [entry];
  for (let file = open.pop(); file !== undefined; file = open.pop()) {
    if (found.has(file)) continue;
    found.add(file);
    for (const { path: target, kind, external } of metafile.inputs[file]?.imports ?? [])
      if (external !== true && kind === 'import-statement') open.push(target);
  }
  return [...found].map((file) => path.join(root, file));
}

/** Makes the module of all notebooks in their order. */
async function shippedNotebooks(): Promise<Plugin> {
  const notebooks = await listNotebooks(path.join(root, 'notebooks'));
  const imports = notebooks.map(
    ({ name }, at) =>
      `import { notebook as n${at} } from ${JSON.stringify(path.join(root, 'notebooks', `${name}.ts`))};`,
  );
  const name = 'shipped-notebooks';
  return {
    name,
    resolveId: (id) => (id === name ? { id, moduleSideEffects: false } : undefined),
    load: (id) =>
      id === name
        ? `${imports.join('\n')}\nexport const notebooks = [${notebooks.map((_, at) => `n${at}`).join()}];`
        : undefined,
  };
}
