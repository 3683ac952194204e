import type { OnLoadArgs, OnResolveArgs, PluginBuild } from 'esbuild';
import { describe, expect, test } from 'vitest';
import { leanPackages } from '../../lib/runner/build/lean-packages.js';

describe('packages of a page', () => {
  type Resolve = (asked: OnResolveArgs) => unknown;
  const resolvers: Resolve[] = [];
  const loads: ((asked: OnLoadArgs) => unknown)[] = [];
  const found = { path: '/p/node_modules/vega-scale/build/vega-scale.js' };
  let answered: { path: string } = found;
  leanPackages.setup({
    onResolve: (_filter: unknown, take: Resolve) => resolvers.push(take),
    onLoad: (_filter: unknown, take: (asked: OnLoadArgs) => unknown) => loads.push(take),
    // The question comes back to the plugin, which lets esbuild find it as usual.
    resolve: async (name: string, asked: { pluginData: unknown; importer: string }) => {
      expect(
        await resolvers[0]?.({ path: name, kind: 'import-statement', ...asked } as OnResolveArgs),
      ).toBeUndefined();
      return answered;
    },
  } as unknown as PluginBuild);
  const ask = async (name: string, importer = '/lib/a.ts', kind = 'import-statement') =>
    resolvers[0]?.({ path: name, importer, kind, resolveDir: '/lib' } as OnResolveArgs);
  const ofVega = '/p/node_modules/vega-functions/src/index.js';

  test('of Vega are taken from their sources file by file', async () => {
    expect(await ask('vega-scale')).toEqual({
      path: '/p/node_modules/vega-scale/index.js',
      sideEffects: false,
    });
    answered = { path: '/p/node_modules/vega-functions/src/scale.js' };
    expect(await ask('./scale', ofVega)).toEqual({ path: answered.path, sideEffects: false });
    // Outside the packages it is what esbuild finds.
    answered = { path: '/elsewhere/vega-scale.js' };
    expect(await ask('vega-scale')).toEqual(answered);
  });

  test('of others, and our own files, are found as usual', async () => {
    expect(await ask('yaml')).toBeUndefined();
    expect(await ask('./table.js')).toBeUndefined();
    expect(await ask('d3-array', ofVega)).toBeUndefined();
  });

  test('that no chart calls are empty inside Vega alone, and what is imported later stays out', async () => {
    expect(await ask('d3-geo', ofVega)).toEqual({ path: 'd3-geo', namespace: 'unused' });
    expect(await ask('d3-geo')).toBeUndefined();
    expect(loads[0]?.({} as OnLoadArgs)).toEqual({ contents: 'module.exports = {};' });
    expect(await ask('vega-scale', '/lib/a.ts', 'dynamic-import')).toEqual({
      path: 'vega-scale',
      external: true,
    });
  });
});
