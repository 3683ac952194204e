import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };
import { root } from './doc-pages.js';

const read = (path: string) => readFileSync(join(root, path), 'utf8');

describe('versions', () => {
  test('each entry of the package says how stable it is', () => {
    const entries = Object.entries(manifest.exports)
      .filter(([, target]) => typeof target !== 'string')
      .map(([entry]) => entry.replace(/^\./u, 'dashpot'));
    const page = read('docs/stability.md');
    const said = [...page.matchAll(/^\| `(dashpot[/\w]*)` \| (stable|settling)/gmu)].map(
      ([, entry]) => entry,
    );
    expect([...said].sort()).toEqual(entries.sort());
  });

  test('the changelog has a heading for the version of the package', () => {
    expect(read('docs/changelog.md')).toMatch(
      new RegExp(`^## ${manifest.version.replaceAll('.', '\\.')}\\b`, 'mu'),
    );
  });

  test('what is deprecated says what to use instead and when it goes', () => {
    const marks = readdirSync(join(root, 'lib'), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .flatMap((name) => [...read(join('lib', name)).matchAll(/@deprecated([^\n]*(?:\n \*(?! @)[^\n]*)*)/gu)])
      .map(([, words = '']) => words);
    for (const words of marks) {
      expect(words).toMatch(/\buse\b/iu);
      expect(words).toMatch(/\b\d+\.\d+\.\d+\b/u);
    }
  });
});
