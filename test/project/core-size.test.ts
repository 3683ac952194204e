import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { describe, expect, test } from 'vitest';

const entry = fileURLToPath(new URL('../../lib/index.ts', import.meta.url));

describe('core entry', () => {
  test('is at most 25 kB minified, without any package or Node module', async () => {
    const result = await build({
      entryPoints: [entry],
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
    expect(result.outputFiles[0]?.contents.byteLength).toBeLessThanOrEqual(25_000);
  });
});
