import { CommandError } from './command-error.js';

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  EACCES: 'it may not be opened',
  ENOTDIR: 'a part of the path is not a folder',
  EEXIST: 'a file is in the way',
};

/** An error of the file system as one line for the user; any other error as it is. */
export function fileError(what: string, error: unknown): unknown {
  if (!(error instanceof Error && 'code' in error && typeof error.code === 'string')) return error;
  return new CommandError(`${what}: ${reasons[error.code] ?? error.code}`);
}
