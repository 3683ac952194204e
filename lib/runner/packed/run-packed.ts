import path from 'node:path';
import { runInTerminal } from '../command/terminal.js';
import { runWith } from '../run-with.js';
import { demoParts, packageWorkshop } from './package-workshop.js';

/** Runs the command of the package in the terminal of this process. */
export function runPacked(args: readonly string[]): Promise<void> {
  return runInTerminal((terminal) =>
    runWith(args, {
      ...terminal,
      workshop: packageWorkshop(),
      demoParts: demoParts(),
      outFolder: path.join(terminal.workingFolder, 'out'),
    }),
  );
}
