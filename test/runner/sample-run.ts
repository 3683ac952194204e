import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { repositoryWorkshop } from '../../lib/runner/build/repository-workshop.js';
import type { Workshop } from '../../lib/runner/build/workshop.js';
import { runWith } from '../../lib/runner/run-with.js';
import { partsText } from '../page/sample-page.js';

/** What a run left and said. */
export interface Run {
  readonly exitCode: number;
  readonly printed: string;
  readonly errors: string;
  /** The empty folder it ran in, with its parts file. */
  readonly folder: string;
}

const folders: string[] = [];

const workshop = repositoryWorkshop(fileURLToPath(new URL('./notebooks', import.meta.url)), '1.2.3');
const made = new Map<string, ReturnType<Workshop['facts']>>();

/** Bundles the programs of the same pages once, which takes seconds. */
const kept: Workshop = {
  ...workshop,
  facts: (names) => {
    const all = made.get(names.join()) ?? workshop.facts(names);
    made.set(names.join(), all);
    return all;
  },
};

/** Runs the command on the notebooks of the tests in a new folder. */
export async function run(...args: readonly string[]): Promise<Run> {
  const folder = mkdtempSync(path.join(tmpdir(), 'dashpot-test-'));
  folders.push(folder);
  writeFileSync(path.join(folder, 'parts.json'), partsText);
  const printed: string[] = [];
  const errors: string[] = [];
  const exitCode = await runWith(args, {
    workingFolder: folder,
    workshop: kept,
    demoParts: path.join(folder, 'parts.json'),
    outFolder: path.join(folder, 'out'),
    print: (line) => printed.push(line),
    printError: (line) => errors.push(line),
  });
  return { exitCode, printed: printed.join('\n'), errors: errors.join('\n'), folder };
}

/** The files of a folder and of those in it by name, in base 64. */
export function contents(folder: string): Readonly<Record<string, string>> {
  return Object.fromEntries(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map(({ parentPath, name }) => path.join(parentPath, name))
      .sort()
      .map((file) => [path.relative(folder, file), readFileSync(file, 'base64')]),
  );
}

/** Removes what the runs of this process left. */
export function removeFolders(): void {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
}
