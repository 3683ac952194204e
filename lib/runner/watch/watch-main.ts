import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { visibleText } from '../../base/visible-text.js';
import { listNotebooks } from '../build/notebook-list.js';
import { CommandError } from '../command/command-error.js';
import { readCommandLine } from '../command/command-line.js';
import { watchNotebook } from './watch.js';

const fromRoot = (name: string): string => fileURLToPath(new URL(`../../../${name}`, import.meta.url));

try {
  const { notebook, partsFile, parameters } = readCommandLine(
    process.argv.slice(2),
    await listNotebooks(fromRoot('notebooks')),
  );
  if (notebook === undefined) throw new CommandError('name a notebook: npm run watch -- NOTEBOOK');
  // npm starts a script in the folder of the package and says where the user stood.
  const workingFolder = process.env['INIT_CWD'] ?? process.cwd();
  const { address } = await watchNotebook({
    notebookFolder: fromRoot('notebooks'),
    name: notebook.name,
    partsFile: path.resolve(workingFolder, partsFile ?? fromRoot('notebooks/demo-parts.yaml')),
    texts: parameters,
    sources: [fromRoot('lib'), fromRoot('notebooks')],
  });
  process.stdout.write(`${address}\nControl-C ends it.\n`);
} catch (error) {
  if (!(error instanceof CommandError)) throw error;
  process.stderr.write(`${visibleText(error.message)}\n`);
  process.exitCode = 2;
}
