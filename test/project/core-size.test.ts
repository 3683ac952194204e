import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { describe, expect, test } from 'vitest';

const lib = fileURLToPath(new URL('../../lib', import.meta.url));

/** What a page with the main job imports: oil in, force out. */
const mainJob =
  'createOil, fluidAt, sealedGas, damperModel, damperForce, forceVelocityCurve, cavitationOnset';

async function bundled(
  contents: string,
): Promise<{ readonly inputs: readonly string[]; readonly bytes: number }> {
  const result = await build({
    stdin: { contents, resolveDir: lib, loader: 'ts' },
    bundle: true,
    minify: true,
    format: 'esm',
    charset: 'utf8',
    platform: 'browser',
    write: false,
    metafile: true,
  });
  return {
    inputs: Object.keys(result.metafile.inputs).filter((input) => input !== '<stdin>'),
    bytes: result.outputFiles[0]?.contents.byteLength ?? Number.NaN,
  };
}

describe('entry of motion', () => {
  test('imports no package or Node module, and is at most 60 kB minified', async () => {
    const { inputs, bytes } = await bundled("export * from './motion/index.ts'");
    expect(inputs.length).toBeGreaterThan(20);
    expect(inputs.filter((input) => !input.startsWith('lib/'))).toEqual([]);
    expect(bytes).toBeLessThanOrEqual(60_000);
  });
});

describe('core entry', () => {
  test('imports no package or Node module, and is at most 102 kB minified with all it has', async () => {
    const { inputs, bytes } = await bundled("export * from './index.ts'");
    expect(inputs.length).toBeGreaterThan(20);
    expect(inputs.filter((input) => !input.startsWith('lib/'))).toEqual([]);
    expect(bytes).toBeLessThanOrEqual(102_000);
  });

  test('costs a page with the main job at most 73 kB minified, every kind of piston included', async () => {
    const { bytes } = await bundled(`export { ${mainJob} } from './index.ts'`);
    expect(bytes).toBeLessThanOrEqual(73_000);
  });

  test('costs a page that gets its models elsewhere at most 10.5 kB minified for a force of any gas, its warnings included', async () => {
    const { bytes } = await bundled("export { damperForce } from './index.ts'");
    expect(bytes).toBeLessThanOrEqual(10_500);
  });
});
