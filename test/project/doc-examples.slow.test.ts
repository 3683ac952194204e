import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { pages, root } from './doc-pages.js';

/** A TypeScript block and the text block after it, which is what it prints. */
const example = /```ts\n(?<code>[\s\S]*?)```(?:(?!```)[\s\S])*?```text\n(?<output>[\s\S]*?)```/gu;

function printed(code: string): string {
  const folder = mkdtempSync(join(tmpdir(), 'dashpot-example-'));
  const file = join(folder, 'example.ts');
  const entry = (name: string) => join(root, 'lib', name, 'index.ts');
  writeFileSync(
    file,
    code.replace(/from 'dashpot(?:\/(\w+))?'/gu, (_, name?: string) => `from '${entry(name ?? '')}'`),
  );
  try {
    return execFileSync('node', ['--import', 'tsx', file], { cwd: root, encoding: 'utf8' });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const examples = pages.flatMap((page) =>
  [...readFileSync(join(root, page), 'utf8').matchAll(example)].map(({ groups }) => ({
    page,
    code: groups?.['code'] ?? '',
    output: groups?.['output'],
  })),
);

test.each(examples)('an example of $page prints what stands below it', ({ code, output }) => {
  expect(printed(code)).toBe(output);
});

test('there is an example in the readme', () => {
  expect(readFileSync(join(root, 'README.md'), 'utf8')).toMatch(example);
});
