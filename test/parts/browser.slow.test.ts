import { fileURLToPath } from 'node:url';
import vm from 'node:vm';
import { build } from 'esbuild';
import { expect, it } from 'vitest';
import { smallFile } from './small-file.js';

const entry = fileURLToPath(new URL('../../lib/parts/index.ts', import.meta.url));

async function bundle(names: string): Promise<string> {
  const result = await build({
    stdin: { contents: `export { ${names} } from ${JSON.stringify(entry)};`, resolveDir: '.' },
    bundle: true,
    minify: true,
    format: 'iife',
    globalName: 'parts',
    // For a browser esbuild refuses any import of a Node module.
    platform: 'browser',
    write: false,
  });
  return result.outputFiles[0]?.text ?? '';
}

it('reading runs where there is no Node and no eval, in at most 282.5 kB', async () => {
  const code = await bundle('readParts, PartsFileError');
  // yaml is 100 kB of it, with the writer that a changed file will need; the laws that decide whether parts fit, 30 kB, are in every page anyway.
  expect(code.length).toBeLessThanOrEqual(282_500);
  // A page with a strict content security policy forbids making code from text.
  const page = vm.createContext(
    { TextEncoder, smallFile },
    { codeGeneration: { strings: false, wasm: false } },
  );
  vm.runInContext(code, page);
  expect(vm.runInContext('parts.readParts(smallFile).builds[0].oil.name', page)).toBe('clear 350');
  const refusal = 'try { parts.readParts("dashpot: 2", "f") } catch (error) { error.message }';
  expect(vm.runInContext(refusal, page)).toBe(
    'f:1:10 dashpot: must be 1, the version of the format that this program reads, got 2',
  );
});

it('leaves the JSON Schema out of a page that does not ask for it', async () => {
  const reading = await bundle('readParts');
  const both = await bundle('readParts, partsJsonSchema');
  expect(both.length).toBeGreaterThan(reading.length + 5000);
});
