import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { defineNotebook, type Notebook, quantity } from '../../lib/page/index.js';
import type { LiveProgram } from '../../lib/runner/build/live-programs.js';
import type { RunFacts } from '../../lib/runner/build/render-notebook.js';
import { runWith } from '../../lib/runner/run-with.js';
import { smallFile } from '../parts/small-file.js';

/** A page of one check and no picture, which is made at once. */
export const telling = defineNotebook({
  name: 'telling',
  order: 1,
  title: 'A telling page',
  question: 'What is in the file?',
  parameters: {
    temperature: quantity({
      label: 'Oil temperature',
      help: 'Temperature of the oil.',
      dimension: 'temperature',
      unit: '°C',
      default: 20,
      min: -10,
      max: 60,
      step: 1,
    }),
  },
  run: ({ builds }, { temperature }) => ({
    answer: `Builds: ${builds.map(({ name }) => name).join(', ')}.`,
    blocks: [
      {
        kind: 'check',
        claim: 'It is cool',
        passed: temperature < 330,
        detail: `${temperature} K against 330 K`,
        ifFailed: 'Cool it.',
      },
    ],
    sources: [],
  }),
});

const program: LiveProgram = {
  script: 'start();',
  packed: ['packed'],
  notices: [{ name: 'a program', text: 'free' }],
};

/** What pages are made with here: no fonts, and a program that does nothing. */
export const facts: RunFacts = {
  version: '1.2.3',
  notices: [],
  fonts: async () => [],
  programs: { page: () => program, file: program },
};

/** What came of a run, and which notebooks it asked facts for. */
export interface MadeUpRun {
  readonly exitCode: number;
  readonly printed: readonly string[];
  readonly errors: readonly string[];
  readonly asked: readonly string[];
}

/** A folder with a parts file, and the command in it on some notebooks, without a bundler. */
export function madeUpWorkshop(notebooks: readonly Notebook[], own: RunFacts = facts) {
  const folder = mkdtempSync(path.join(tmpdir(), 'dashpot-run-'));
  writeFileSync(path.join(folder, 'parts.yaml'), smallFile);
  return {
    folder,
    remove: () => rmSync(folder, { recursive: true }),
    async run(...args: readonly string[]): Promise<MadeUpRun> {
      const printed: string[] = [];
      const errors: string[] = [];
      const asked: string[] = [];
      const exitCode = await runWith(args, {
        workingFolder: folder,
        workshop: {
          version: '1.2.3',
          calledAs: 'call',
          notebooks: async () => notebooks,
          facts: async (names) => {
            asked.push(...names);
            return own;
          },
          ownFacts: async ({ file }) => {
            asked.push(file);
            return own;
          },
          entryFile: () => undefined,
        },
        demoParts: path.join(folder, 'parts.yaml'),
        outFolder: path.join(folder, 'out'),
        print: (line) => printed.push(line),
        printError: (line) => errors.push(line),
      });
      return { exitCode, printed, errors, asked };
    },
  };
}
