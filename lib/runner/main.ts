import { fileURLToPath } from 'node:url';
import { runInTerminal } from './command/terminal.js';
import { versionIn } from './command/version-in.js';
import { runCommand } from './run-command.js';

const fromRoot = (name: string): string => fileURLToPath(new URL(`../../${name}`, import.meta.url));

await runInTerminal(({ workingFolder, ...speech }) =>
  runCommand(process.argv.slice(2), {
    ...speech,
    // npm starts a script in the folder of the package and says where the user stood.
    workingFolder:
      process.env['npm_lifecycle_event'] === 'start' ? (process.env['INIT_CWD'] ?? '.') : workingFolder,
    notebookFolder: fromRoot('notebooks'),
    demoParts: fromRoot('notebooks/demo-parts.yaml'),
    outFolder: fromRoot('out'),
    version: versionIn(fromRoot('package.json')),
  }),
);
