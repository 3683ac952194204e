import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from './doc-pages.js';

/** Pages that the readme lists as those of a model. */
const listed = /One page a model\.(?<list>[\s\S]*?)\n- /u.exec(readFileSync(join(root, 'README.md'), 'utf8'))
  ?.groups?.['list'];
const models = [...(listed ?? '').matchAll(/\((?<page>docs\/[\w-]+\.md)\)/gu)]
  .map(({ groups }) => groups?.['page'] ?? '')
  // The solver behind motion is no entry of its own.
  .filter((page) => page !== 'docs/integrator.md');

test('the readme lists pages of models', () => {
  expect(models.length).toBeGreaterThan(20);
});

test.each(models)('%s names an entry and its functions', async (page) => {
  const line = /^From code: (?<text>.+)\.$/mu.exec(readFileSync(join(root, page), 'utf8'))?.groups?.['text'];
  const groups = (line ?? '').split('; ');
  for (const group of groups) {
    const [, names = '', entry = ''] = /^(.+) of `dashpot\/?(\w*)`$/u.exec(group) ?? [];
    const exported: object = await import(join(root, 'lib', entry, 'index.ts'));
    const named = [...names.matchAll(/`(\w+)`/gu)].map(([, name = '']) => name);
    expect(named).not.toEqual([]);
    expect(named.filter((name) => !(name in exported))).toEqual([]);
  }
});
