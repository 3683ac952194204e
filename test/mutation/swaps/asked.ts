import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

// A fault of the physics must be seen by the tests of its layer, a law or a published number: that something above it changed would not say which of the two is right. What
// only the fits use is tested with them.
const physics = [
  'base',
  'numeric',
  'fluid',
  'flow',
  'gas',
  'damper',
  'fill',
  'motion',
  'measure',
  'decisions',
];
const foundations = ['laws', 'published', 'reference', 'accuracy'];
const besides: Readonly<Record<string, readonly string[]>> = { base: physics, numeric: ['measure'] };

/** What finds the pages by their folder imports them as they are in the files, without a fault. */
const pageList = 'lib/runner/build/notebook-list.ts';

const known = new Map<string, readonly string[]>();

/** The files of this project that a file imports by name. */
function importsOf(file: string): readonly string[] {
  const found = known.get(file);
  if (found !== undefined) return found;
  const imported = [...readFileSync(file, 'utf8').matchAll(/(?:from|import) ?\(?'(\.[^']*)\.js'/gu)]
    .map(([, place = '']) => `${path.join(path.dirname(file), place)}.ts`)
    .filter((place) => existsSync(place));
  known.set(file, imported);
  return imported;
}

/** Whether imports lead from one file to another. */
function leads(from: string, to: string): boolean {
  const seen = new Set([from]);
  for (const file of seen) {
    if (file === to) return true;
    for (const next of importsOf(file)) seen.add(next);
  }
  return false;
}

const tests = readdirSync('test', { recursive: true, encoding: 'utf8' })
  .map((name) => `test/${name}`)
  .filter((name) => /(?<!\.slow|\.browser|\.thorough)\.test\.ts$/u.test(name))
  .sort();

/** The tests in this process that are asked for a fault in a file, those first that are likely to see it, and the pages whose words are. */
export function askedFor(file: string): {
  readonly files: readonly string[];
  readonly pages: readonly string[];
} {
  const [layer = '', room = ''] = file.replace(/\.ts$/u, '').split('/');
  const asks = (test: string): boolean => leads(test, file) && (room === 'runner' || !leads(test, pageList));
  const inFolders = (folders: readonly string[]): readonly string[] =>
    tests.filter((test) => folders.some((folder) => test.startsWith(`test/${folder}/`)) && asks(test));
  if (layer === 'lib' && physics.includes(room))
    return { files: inFolders([room, ...foundations, ...(besides[room] ?? [])]), pages: [] };
  const pages = readdirSync('notebooks')
    .filter((name) => name.endsWith('.ts'))
    .map((name) => name.slice(0, -'.ts'.length));
  return {
    files: layer === 'lib' ? inFolders([room]) : inFolders(['notebooks', 'page', 'measure']),
    // What renders a page no page imports.
    pages: room === 'runner' ? [] : pages.filter((page) => leads(`notebooks/${page}.ts`, file)),
  };
}
