import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const pages = [
  'README.md',
  'DEVELOPERS.md',
  ...readdirSync(join(root, 'docs'))
    .filter((name) => name.endsWith('.md'))
    .map((name) => join('docs', name)),
];

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

describe.each(pages)('%s', (page) => {
  const text = readFileSync(join(root, page), 'utf8');

  test('links to files that exist', () => {
    const targets = [...text.matchAll(/\]\((?!https?:|#)([^)#]+)(?:#[^)]*)?\)/gu)].map(
      (match) => match[1] ?? '',
    );
    const missing = targets.filter((target) => !existsSync(join(root, dirname(page), target)));
    expect(missing).toEqual([]);
  });

  test('names files of the repository that exist', () => {
    const named = [...text.matchAll(/`((?:lib|test|notebooks|benchmarks|docs)\/[\w./-]*)`/gu)].map(
      (match) => match[1] ?? '',
    );
    expect(named.filter((name) => !existsSync(join(root, name)))).toEqual([]);
  });

  for (const { groups } of text.matchAll(example)) {
    test(`example prints what stands below it: ${groups?.['code']?.split('\n')[0]}`, () => {
      expect(printed(groups?.['code'] ?? '')).toBe(groups?.['output']);
    });
  }
});

test('there is an example in the readme', () => {
  expect(readFileSync(join(root, 'README.md'), 'utf8')).toMatch(example);
});

test('nothing stands at the top level but what the project agreed on', () => {
  const tracked = execFileSync('git', ['ls-files'], { cwd: root, encoding: 'utf8' }).trim().split('\n');
  const top = [...new Set(tracked.map((name) => relative('.', name).split('/')[0] ?? ''))]
    .filter((name) => !name.startsWith('.'))
    .sort();
  expect(top).toEqual([
    'DEVELOPERS.md',
    'README.md',
    'benchmarks',
    'docs',
    'lib',
    'notebooks',
    'package-lock.json',
    'package.json',
    'test',
    'tsconfig.json',
  ]);
});
