import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { pages, root } from './doc-pages.js';
import { docstringExamples, wholeCode } from './doc-string-examples.js';

/** A TypeScript block and the text block after it, which is what it prints. */
const example = /```ts\n(?<code>[\s\S]*?)```(?:(?!```)[\s\S])*?```text\n(?<output>[\s\S]*?)```/gu;

/** What each of these programs prints: one process runs them one after the other, since it loads the library once. */
function printed(codes: readonly string[]): readonly string[] {
  const folder = mkdtempSync(join(tmpdir(), 'dashpot-example-'));
  const entry = (name: string) => join(root, 'lib', name, 'index.ts');
  // Modules whatever package.json is near: examples wait at their top.
  const file = (at: number) => join(folder, `example${at}.mts`);
  for (const [at, code] of codes.entries())
    writeFileSync(
      file(at),
      code.replace(/from 'dashpot(?:\/(\w+))?'/gu, (_, name?: string) => `from '${entry(name ?? '')}'`),
    );
  writeFileSync(
    join(folder, 'all.mts'),
    `import { format } from 'node:util';
const all = [];
console.log = (...values) => void (all[all.length - 1] += format(...values) + '\\n');
for (const file of ${JSON.stringify(codes.map((_, at) => file(at)))}) {
  all.push('');
  await import(file);
}
process.stdout.write(JSON.stringify(all));`,
  );
  try {
    return JSON.parse(
      execFileSync('node', ['--import', 'tsx', join(folder, 'all.mts')], { cwd: root, encoding: 'utf8' }),
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
}

// A notebook prints nothing; package.thorough.test.ts renders it and reads what stands below it.
const examples = pages
  .flatMap((page) =>
    [...readFileSync(join(root, page), 'utf8').matchAll(example)].map(({ groups }) => ({
      page,
      code: groups?.['code'] ?? '',
      output: groups?.['output'],
    })),
  )
  .filter(({ code }) => !code.includes('defineNotebook'));

describe('examples of the documentation', () => {
  let all: readonly string[];
  beforeAll(() => {
    all = printed(examples.map(({ code }) => code));
  });
  test.each(examples.map((example, at) => ({ ...example, at })))(
    '$at in $page prints what stands below it',
    ({ output, at }) => expect(all[at]).toBe(output),
  );
});

test('there is an example in the readme', () => {
  expect(readFileSync(join(root, 'README.md'), 'utf8')).toMatch(example);
});

test('the examples of the docstrings have the types that they need', () => {
  const examples = docstringExamples();
  mkdirSync(join(root, 'out'), { recursive: true });
  const folder = mkdtempSync(join(root, 'out', 'examples-'));
  const names = ['', 'fluid', 'fill', 'motion', 'measure', 'decisions', 'parts', 'plot', 'page', 'units'];
  const entries = names.map((name) => `typeof import('${join(root, 'lib', name, 'index.js')}')`);
  const known = `declare const known: ${entries.join(' & ')};`;
  const blocks = [...examples.values()].map(
    (example, at) =>
      `export function example${at}() { const { ${namesIn(wholeCode(example, examples)).join(', ')} } = known;\n${wholeCode(example, examples)} }`,
  );
  writeFileSync(join(folder, 'examples.ts'), `${known}\n${blocks.join('\n')}`);
  const options = {
    extends: '../../tsconfig.json',
    compilerOptions: { noUnusedLocals: false },
    include: ['*.ts', '../../lib/**/*.d.ts'],
  };
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(options));
  try {
    execFileSync('node', ['node_modules/typescript/bin/tsc', '-p', folder], { cwd: root, encoding: 'utf8' });
  } catch (error) {
    throw new TypeError((error as { readonly stdout: string }).stdout);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

/** Names that an example takes from the library. */
function namesIn(code: string): readonly string[] {
  const names = [...code.matchAll(/(?<![.\w])[a-z]\w+(?=\()|\b\w+Law\b/gu)].map(([name]) => name);
  return [...new Set(names)];
}
