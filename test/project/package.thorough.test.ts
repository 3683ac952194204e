import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bundlers, importing } from './packed/bundlers.js';
import { hasBrowser, openedPage } from './packed/opened-page.js';
import {
  addPeers,
  codeIn,
  emptyProject,
  entries,
  onlyNode,
  packed,
  peers,
  repository,
  run,
} from './packed/project.js';
import { forceOfAll, renderedTwice, spreadTwice } from './packed/scripts.js';
import { strictConsumer } from './packed/strict-consumer.js';

/** The package alone, and the package with all of its peers. */
let [tarball, bare, whole] = ['', '', ''];

beforeAll(() => {
  tarball = packed();
  bare = emptyProject(tarball);
  whole = emptyProject(tarball);
  addPeers(whole, peers);
});

afterAll(() => {
  for (const folder of [dirname(tarball), bare, whole])
    if (folder.length > 1) rmSync(folder, { recursive: true });
});

const inPackage = (...names: readonly string[]): string => join(bare, 'node_modules/dashpot', ...names);

/** Runs a program that is expected to fail; what it says. */
function refused(folder: string, command: string, ...args: readonly string[]): string {
  try {
    run(folder, command, ...args);
  } catch (error) {
    return String((error as { readonly stderr: string }).stderr);
  }
  return '';
}

describe('the package alone in an empty project', () => {
  test('brings no other package', () => {
    const names = readdirSync(join(bare, 'node_modules')).filter((name) => !name.startsWith('.'));
    expect(names).toEqual(['dashpot']);
  });

  test('holds build, sources, schemas and documentation', () => {
    expect(readdirSync(inPackage()).sort()).toEqual([
      'DEVELOPERS.md',
      'README.md',
      'dist',
      'docs',
      'lib',
      'notebooks',
      'package.json',
    ]);
    for (const schema of ['parts-file', 'force-table', 'page-results', 'check-result'])
      expect(
        run(
          bare,
          'node',
          '-p',
          `require.resolve('dashpot/${schema}.schema.json').endsWith('docs/${schema}.schema.json')`,
        ),
      ).toBe('true\n');
  });

  test('has declaration maps that lead to its sources', () => {
    const map = JSON.parse(readFileSync(inPackage('dist/types/index.d.ts.map'), 'utf8'));
    const source = join(inPackage('dist/types'), map.sources[0]);
    expect(readFileSync(source, 'utf8')).toBe(readFileSync(join(repository, 'lib/index.ts'), 'utf8'));
  });

  test('has no link in its readme that leads nowhere', () => {
    const text = readFileSync(inPackage('README.md'), 'utf8');
    const targets = [...text.matchAll(/\]\((?!https?:|#)([^)#]+)/gu)].map(([, target = '']) => target);
    expect(targets.length).toBeGreaterThan(20);
    expect(
      targets.filter((target) => statSync(inPackage(target), { throwIfNoEntry: false }) === undefined),
    ).toEqual([]);
  });

  test('runs the example of the readme, imported and required', () => {
    const code = codeIn('README.md', 'ts', "from 'dashpot'");
    const output = codeIn('README.md', 'text', '8 °C');
    writeFileSync(join(bare, 'example.mjs'), code);
    expect(run(bare, 'node', 'example.mjs')).toBe(output);
    writeFileSync(
      join(bare, 'example.cjs'),
      code.replace(/import (\{[^}]+\}) from '(\w+)'/u, "const $1 = require('$2')"),
    );
    expect(run(bare, 'node', 'example.cjs')).toBe(output);
  });

  test('loads three files for the core, so that Node starts it fast', () => {
    const seen = new Set<string>();
    const follow = (file: string): void => {
      if (seen.has(file)) return;
      seen.add(file);
      for (const [, target = ''] of readFileSync(file, 'utf8').matchAll(/from "(\.[^"]+)"/gu))
        follow(join(dirname(file), target));
    };
    follow(inPackage('dist/core.js'));
    expect(seen.size).toBeLessThanOrEqual(3);
  });

  test.each(['fluid', 'fill', 'motion', 'decisions', 'measure'])('imports %s without a peer', (entry) => {
    const script = `console.log(Object.keys(await import('dashpot/${entry}')).length > 3)`;
    expect(run(bare, 'node', '--input-type=module', '-e', script)).toBe('true\n');
  });

  test('says what else a command needs', () => {
    expect(refused(bare, 'npx', 'dashpot', 'check', 'x.yaml')).toMatch(
      /^dashpot needs more packages for this:\nnpm install "yaml@\S+" "zod@\S+"\n$/u,
    );
    expect(refused(bare, 'npx', 'dashpot', 'render', 'my.ts')).toMatch(/"vega@\S+" .*"esbuild@\S+ \S+"\n$/u);
  });
});

describe('the package with its peers', () => {
  test.each(entries)('%s is imported by Node', (entry) => {
    const script = `console.log(Object.keys(await import('${entry}')).length > 0)`;
    expect(run(whole, 'node', '--input-type=module', '-e', script)).toBe('true\n');
  });

  const forBrowsers = entries.filter((entry) => !onlyNode.includes(entry));
  test.each(
    forBrowsers.flatMap((entry) =>
      Object.entries(bundlers).map(([name, bundle]) => ({ entry, name, bundle })),
    ),
  )('$entry is bundled for a browser by $name', async ({ entry, bundle }) => {
    mkdirSync(join(whole, 'src'), { recursive: true });
    const text = await bundle(importing(join(whole, 'src'), entry));
    if (entry === 'dashpot') {
      writeFileSync(join(whole, 'bundled.mjs'), text);
      const script = `await import('./bundled.mjs');\n${forceOfAll}`;
      expect(run(whole, 'node', '--input-type=module', '-e', script)).toBe('-17.1\n');
    }
    // What is left to be imported later is the solver, whose other branch is for Node.
    expect(text).not.toMatch(/^import [^'"\n]*["'](?!node:|\.)/mu);
  });

  test('finds its worker threads, which draw what one thread draws', () => {
    expect(run(whole, 'node', '--input-type=module', '-e', spreadTwice)).toBe('true true\n');
  });

  test('has types that a strict consumer can use', () => {
    expect(strictConsumer(whole, entries)).toBe('');
  });
});

describe('a notebook outside the repository', () => {
  test('is rendered by the command to a page that opens with its first sentence, and moves', async () => {
    const code = codeIn('docs/own-notebook.md', 'ts', 'defineNotebook');
    const sentence = codeIn('docs/own-notebook.md', 'text', 'keeps').trim();
    writeFileSync(join(whole, 'my-notebook.ts'), code);
    run(whole, 'npx', 'dashpot', 'render', 'my-notebook.ts');
    const html = join(whole, 'out/my-notebook/my-notebook.html');
    // A number stays beside its unit, and a unit stays whole.
    const written = sentence
      .replaceAll(/(\d) (%|mm)/gu, '$1\u00a0$2')
      .replaceAll('mm/s', '<span class="unit">mm/s</span>');
    expect(readFileSync(html, 'utf8')).toContain(written);
    expect(readdirSync(dirname(html)).sort()).toEqual([
      'damping.csv',
      'damping.png',
      'damping.svg',
      'my-notebook.html',
      'my-notebook.json',
    ]);
    if (!hasBrowser) return;
    const { first, warmer } = await openedPage(html);
    expect(first).toBe(sentence);
    const percent = (text: string): number => Number(/(\d+) %/u.exec(text)?.[1]);
    expect(percent(warmer)).toBeLessThan(percent(first));
  });

  test('is rendered by one function', () => {
    expect(run(whole, 'node', '--input-type=module', '-e', renderedTwice)).toBe(
      'buggy front keeps 100 % of its damping in compression at 500 mm/s. true true true\nInputError request.parts must be a string, got 5\n',
    );
  });

  test('is rendered by the program of the documentation, warmer than its template', () => {
    const parts = readFileSync(join(repository, 'notebooks/demo-parts.yaml'), 'utf8');
    writeFileSync(join(whole, 'my-parts.yaml'), parts);
    writeFileSync(join(whole, 'program.mjs'), codeIn('docs/own-notebook.md', 'js', 'renderNotebookFile'));
    const said = run(whole, 'node', 'program.mjs');
    expect(said).toMatch(/ true \[[^\]]*'my-notebook\.html'/u);
    expect(Number(/(\d+) %/u.exec(said)?.[1])).toBeLessThan(81);
    expect(readFileSync(join(whole, 'page.html'), 'utf8')).toContain('class="program"');
  });

  test('of the package is rendered with what the package holds', () => {
    const said = run(whole, 'npx', 'dashpot', 'render', 'compare-oils', '--out', 'shipped');
    expect(said).toMatch(/^compare-oils: 3 figures, 1 of 1 checks passed\n/u);
    expect(readFileSync(join(whole, 'shipped/compare-oils/compare-oils.html'), 'utf8')).toContain(
      'class="program"',
    );
  });

  test('is refused in one line where it holds no notebook', () => {
    writeFileSync(join(whole, 'empty.ts'), 'export const other = 1;\n');
    expect(refused(whole, 'npx', 'dashpot', 'render', 'empty.ts')).toMatch(
      /^empty\.ts exports no "notebook"[^\n]*\n$/u,
    );
  });
});
