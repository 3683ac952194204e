import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build, type Plugin } from 'esbuild';
import type { Fault } from './faults.js';

// A process that stays: each test file is bundled with the fault in it and run here, so that neither a process nor a module of a package has to start for it.

/** Some tests to run with a fault in the sources, or without. */
export interface Question {
  readonly fault?: Fault | undefined;
  /** Test files, or `page NAME` for what a page says; in the order in which they run, up to the first failure. */
  readonly tests: readonly string[];
}

/** What came of it. */
export interface Verdict {
  /** Whether it was ended from outside, for want of an end. */
  readonly endless?: boolean;
  /** The first test that failed, and what it said. */
  readonly failed?: { readonly test: string; readonly said: string };
  /** How many tests passed and how long that took [ms], of each that has no failure. */
  readonly passed: Readonly<Record<string, { readonly tests: number; readonly duration: number }>>;
}

const root = fileURLToPath(new URL('../../..', import.meta.url));
const place = path.join(root, 'out/swaps');

/** Files that ask where they are. */
const located = new Set(
  ['lib', 'notebooks', 'test']
    .flatMap((folder) =>
      readdirSync(root + folder, { recursive: true, encoding: 'utf8' }).map(
        (name) => `${root}${folder}/${name}`,
      ),
    )
    .filter((file) => file.endsWith('.ts') && readFileSync(file, 'utf8').includes('import.meta.url')),
);

/** Puts the fault into its file, and keeps what a file knows of where it is. */
const changes = (fault: Fault | undefined): Plugin => ({
  name: 'one-fault',
  setup({ onLoad, onResolve }) {
    onResolve({ filter: /^vitest$/ }, () => ({ path: pathToFileURL(standIn).href, external: true }));
    onLoad({ filter: /\.ts$/ }, ({ path: file }) => {
      const harmed = fault !== undefined && file === root + fault.file;
      if (!harmed && !located.has(file)) return undefined;
      const source = readFileSync(file, 'utf8');
      const contents = harmed ? source.slice(0, fault.start) + fault.text + source.slice(fault.end) : source;
      return {
        contents: contents.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(file).href)),
        loader: 'ts',
      };
    });
  },
});

const standIn = fileURLToPath(new URL('./stand-in.ts', import.meta.url));

/** The test of what a page says, without the list of all pages. */
const pageTest = (name: string): string => `
  import { expect, test } from 'vitest';
  import { notebook } from './notebooks/${name}.js';
  import { readFileSync } from 'node:fs';
  import { saidBy, saidOfOthers, saidWithOtherSettings } from './test/notebooks/said-by.js';
  const read = (file) => readFileSync('test/notebooks/words/' + file + '.txt', 'utf8');
  test('says what was read', () => expect(saidBy(notebook)).toBe(read('${name}')));
  test('says what was read with other files', () => expect(saidOfOthers(notebook)).toBe(read('others/${name}')));
  test('says what was read with other settings', () => expect(saidWithOtherSettings(notebook)).toBe(read('settings/${name}')));
`;

let bundles = 0;

async function run(
  name: string,
  fault: Fault | undefined,
): Promise<{ readonly tests: number; readonly failed?: string }> {
  const page = /^page (.*)$/u.exec(name)?.[1];
  const outfile = path.join(place, `${process.pid}-${bundles++}.mjs`);
  const entry =
    page === undefined
      ? { entryPoints: [root + name] }
      : { stdin: { contents: pageTest(page), resolveDir: root, loader: 'ts' as const } };
  await build({
    ...entry,
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    packages: 'external',
    logLevel: 'silent',
    plugins: [changes(fault)],
  });
  // The same module that the tests import.
  const { forget, runDeclared, standingIn }: typeof import('./stand-in.js') = await import(
    pathToFileURL(standIn).href
  );
  standingIn(path.dirname(root + name));
  try {
    await import(pathToFileURL(outfile).href);
  } catch (error) {
    forget();
    return {
      tests: 0,
      failed: `while it is read: ${error instanceof Error ? error.message : String(error)}`,
    };
  }
  return await runDeclared();
}

async function answer({ fault, tests }: Question): Promise<Verdict> {
  const passed: Record<string, { tests: number; duration: number }> = {};
  for (const test of tests) {
    const start = performance.now();
    const { tests: number, failed } = await run(test, fault);
    if (failed !== undefined) return { failed: { test, said: failed }, passed };
    passed[test] = { tests: number, duration: performance.now() - start };
  }
  return { passed };
}

if (process.send !== undefined) {
  mkdirSync(place, { recursive: true });
  process.chdir(root);
  // The seed of random cases that the quick tests have.
  await import('../../fast-check-seed.js');
  process.on('message', (question: Question) => {
    answer(question).then(
      (verdict) => process.send?.(verdict),
      (error: unknown) => {
        console.error(error);
        process.exit(1);
      },
    );
  });
  process.on('disconnect', () => process.exit(0));
}
