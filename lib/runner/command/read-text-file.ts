import { createReadStream } from 'node:fs';
import path from 'node:path';
import { fileText } from '../../parts/source/file-text.js';
import { CommandError } from './command-error.js';
import { fileError } from './file-error.js';

/** Most that is read of a file [bytes]; a parts file may have 1 MB, and says so itself. */
const most = 4_000_000;

/** Text of a file that a user wrote, read by {@link readBytes}: {@link fileText} says in which encodings, and what else it throws. */
export async function readTextFile(folder: string, name: string): Promise<string> {
  return fileText(await readBytes(folder, name), name);
}

/**
 * Bytes of a file. It ends where it has read too much, so that an endless file cannot fill the memory.
 *
 * @param folder - where the path starts
 * @param name - path as the user wrote it
 * @throws CommandError where it cannot be read or is too large
 */
export async function readBytes(folder: string, name: string): Promise<Buffer> {
  const pieces: Buffer[] = [];
  let read = 0;
  try {
    for await (const piece of createReadStream(path.resolve(folder, name), { end: most })) {
      pieces.push(piece as Buffer);
      read += (piece as Buffer).length;
    }
  } catch (error) {
    throw fileError(`cannot read ${name}`, error);
  }
  if (read > most) throw new CommandError(`cannot read ${name}: it has more than 4 MB`);
  return Buffer.concat(pieces);
}
