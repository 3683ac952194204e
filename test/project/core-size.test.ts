import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { describe, expect, test } from 'vitest';

describe.each([
  ['core', 'index.ts', 25_000],
  ['motion', 'motion/index.ts', 60_000],
] as const)('entry of %s', (_name, path, limit) => {
  test(`is at most ${limit} bytes minified, without any package or Node module`, async () => {
    const result = await build({
      entryPoints: [fileURLToPath(new URL(`../../lib/${path}`, import.meta.url))],
      bundle: true,
      minify: true,
      format: 'esm',
      charset: 'utf8',
      platform: 'browser',
      write: false,
      metafile: true,
    });
    const inputs = Object.keys(result.metafile.inputs);
    expect(inputs.length).toBeGreaterThan(20);
    expect(inputs.filter((input) => !input.startsWith('lib/'))).toEqual([]);
    expect(result.outputFiles[0]?.contents.byteLength).toBeLessThanOrEqual(limit);
  });
});
