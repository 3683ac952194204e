import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runCommand } from './run-command.js';

const fromRoot = (name: string): string => fileURLToPath(new URL(`../../${name}`, import.meta.url));
const manifest: { readonly version: string } = JSON.parse(readFileSync(fromRoot('package.json'), 'utf8'));

// A reader such as `head` may close the pipe before all pages are named; the pages are written all the same.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

process.exitCode = await runCommand(process.argv.slice(2), {
  // npm starts a script in the folder of the package and says where the user stood.
  workingFolder:
    process.env['npm_lifecycle_event'] === 'start' ? (process.env['INIT_CWD'] ?? '.') : process.cwd(),
  notebookFolder: fromRoot('notebooks'),
  demoParts: fromRoot('notebooks/demo-parts.yaml'),
  outFolder: fromRoot('out'),
  version: manifest.version,
  print: (line) => process.stdout.write(`${line}\n`),
  printError: (line) => process.stderr.write(`${line}\n`),
});
