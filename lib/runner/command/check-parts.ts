import { parseArgs } from 'node:util';
import { PartsFileError, type PartsFileProblem, readParts } from '../../parts/index.js';
import { CommandError } from './command-error.js';
import { readTextFile } from './read-text-file.js';

/** What a check says, as lines and as the exit code: 0 where the file can be read, 2 where it cannot. */
export interface Checked {
  readonly lines: readonly string[];
  readonly exitCode: 0 | 2;
}

/**
 * `check FILE [--json]`: reads a parts file and nothing more. With `--json` it says one object: `file`, `ok`, and `problems`, each with `line`,
 * `column`, `path` and `message`.
 *
 * @param args - what follows `check`
 * @param folder - where paths start
 * @throws CommandError where no file is named or it cannot be opened
 */
export async function checkParts(args: readonly string[], folder: string): Promise<Checked> {
  const { values, positionals } = parsed(args);
  const [file, second] = [...positionals, ...(values.parts ?? [])];
  if (file === undefined || second !== undefined)
    throw new CommandError('name one file: check FILE [--json]');
  const problems = await problemsOf(folder, file);
  const ok = problems.length === 0;
  const exitCode = ok ? 0 : 2;
  if (values.json === true) return { lines: [JSON.stringify({ file, ok, problems })], exitCode };
  if (ok) return { lines: [`${file}: can be read`], exitCode };
  return {
    lines: problems.map(({ line, column, message }) => `${file}:${line}:${column}: ${message}`),
    exitCode,
  };
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      options: { json: { type: 'boolean' }, parts: { type: 'string', multiple: true } },
      allowPositionals: true,
    });
  } catch (error) {
    throw new CommandError(error instanceof Error ? error.message : String(error));
  }
}

async function problemsOf(folder: string, file: string): Promise<readonly PartsFileProblem[]> {
  try {
    readParts(await readTextFile(folder, file), file);
    return [];
  } catch (error) {
    if (error instanceof PartsFileError) return error.problems;
    throw error;
  }
}
