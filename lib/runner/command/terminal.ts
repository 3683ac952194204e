import { createInterface } from 'node:readline';

/** A terminal, or what is piped in its place. */
export interface Terminal {
  readonly workingFolder: string;
  /** The next line that the user types; nothing once the input has ended. */
  readonly nextLine: () => Promise<string | undefined>;
  readonly print: (line: string) => void;
  readonly printError: (line: string) => void;
}

/** Runs a command in the terminal of this process, which ends with what the command says. */
export async function runInTerminal(command: (terminal: Terminal) => Promise<number>): Promise<void> {
  // A reader such as `head` may close the pipe before all pages are named; the pages are written all the same.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
  const lines = typedLines();
  process.exitCode = await command({
    workingFolder: process.cwd(),
    nextLine: async () => (await lines.next()).value,
    print: (line) => process.stdout.write(`${line}\n`),
    printError: (line) => process.stderr.write(`${line}\n`),
  });
  // A terminal that was asked is let go, so that the command ends.
  await lines.return(undefined);
}

/** Lines as they are typed or piped; the input is opened when the first is asked for, so that nothing else waits for it. */
async function* typedLines(): AsyncGenerator<string, undefined> {
  yield* createInterface({ input: process.stdin });
}
