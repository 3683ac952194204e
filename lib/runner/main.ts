import { readFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { runCommand } from './run-command.js';

const fromRoot = (name: string): string => fileURLToPath(new URL(`../../${name}`, import.meta.url));
const manifest: { readonly version: string } = JSON.parse(readFileSync(fromRoot('package.json'), 'utf8'));

// A reader such as `head` may close the pipe before all pages are named; the pages are written all the same.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

/** Lines as they are typed or piped; the input is opened when the first is asked for, so that nothing else waits for it. */
async function* typedLines(): AsyncGenerator<string, undefined> {
  yield* createInterface({ input: process.stdin });
}
const lines = typedLines();

process.exitCode = await runCommand(process.argv.slice(2), {
  // npm starts a script in the folder of the package and says where the user stood.
  workingFolder:
    process.env['npm_lifecycle_event'] === 'start' ? (process.env['INIT_CWD'] ?? '.') : process.cwd(),
  notebookFolder: fromRoot('notebooks'),
  demoParts: fromRoot('notebooks/demo-parts.yaml'),
  outFolder: fromRoot('out'),
  version: manifest.version,
  nextLine: async () => (await lines.next()).value,
  print: (line) => process.stdout.write(`${line}\n`),
  printError: (line) => process.stderr.write(`${line}\n`),
});

// A terminal that was asked is let go, so that the command ends.
await lines.return(undefined);
