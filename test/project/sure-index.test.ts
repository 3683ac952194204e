import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const lib = fileURLToPath(new URL('../../lib', import.meta.url));

/** Where a text takes for sure (`!`) what the types doubt, with some of the line before it. */
function assertions(source: string): readonly string[] {
  const code = source.replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*/gu, '');
  return [...code.matchAll(/[^\n]*[\w)\]]!(?=[.,;:)\]}[\s])(?!\s*==)/gu)].map(([found]) => found);
}

test('an assertion is found after a name, a call and an index, a comparison and a negation are none', () => {
  const found = assertions('a! + 1;\nf()!.b;\nc[1]!, d\nif (a !== b) !c;\nconst d = !a; // k! = 1');
  expect(found).toEqual(['a!', 'f()!', 'c[1]!']);
});

test('lib takes for sure only what stands at an index of a list', () => {
  const faults = readdirSync(lib, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .flatMap((file) =>
      assertions(readFileSync(`${lib}/${file}`, 'utf8'))
        .filter((found) => !found.endsWith(']!'))
        .map((found) => `${file}: ${found.trim()}`),
    );
  expect(faults).toEqual([]);
});
