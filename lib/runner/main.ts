import { fileURLToPath } from 'node:url';
import { runInTerminal } from './command/terminal.js';
import { userFolder } from './command/user-folder.js';
import { versionIn } from './command/version-in.js';
import { runCommand } from './run-command.js';

const fromRoot = (name: string): string => fileURLToPath(new URL(`../../${name}`, import.meta.url));

await runInTerminal(({ workingFolder, ...speech }) =>
  runCommand(process.argv.slice(2), {
    ...speech,
    workingFolder: userFolder(process.env, workingFolder),
    notebookFolder: fromRoot('notebooks'),
    demoParts: fromRoot('notebooks/demo-parts.yaml'),
    outFolder: fromRoot('out'),
    version: versionIn(fromRoot('package.json')),
  }),
);
