import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { describe, expect, test } from 'vitest';
import { pages, root } from './doc-pages.js';

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
