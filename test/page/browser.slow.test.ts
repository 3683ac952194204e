import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';

const entry = (name: string): string => fileURLToPath(new URL(`../../lib/${name}/index.ts`, import.meta.url));

describe.each(['plot', 'page'])('the entry dashpot/%s', (name) => {
  it('bundles for a browser with nothing left out: no module of Node is reachable', async () => {
    const { errors, outputFiles } = await build({
      entryPoints: [entry(name)],
      bundle: true,
      platform: 'browser',
      format: 'esm',
      write: false,
      logLevel: 'silent',
    });
    expect(errors).toEqual([]);
    expect(outputFiles[0]?.text).not.toMatch(/from ?"node:|require\("node:/u);
  });
});

describe('charts without their renderer', () => {
  it('bring neither Vega nor Vega-Lite into a page', async () => {
    const source = `export { lineChart, dotChart } from ${JSON.stringify(entry('plot'))};`;
    const { metafile } = await build({
      stdin: { contents: source, resolveDir: '.' },
      bundle: true,
      treeShaking: true,
      platform: 'browser',
      format: 'esm',
      write: false,
      metafile: true,
      logLevel: 'silent',
    });
    const used = Object.values(metafile.outputs).flatMap((output) =>
      Object.entries(output.inputs).filter(([, { bytesInOutput }]) => bytesInOutput > 0),
    );
    const packages = used.flatMap(([file]) => /node_modules\/([^/]+)/u.exec(file)?.slice(1) ?? []);
    expect([...new Set(packages)].toSorted()).toEqual(['d3-array', 'simplify-js']);
  });
});
