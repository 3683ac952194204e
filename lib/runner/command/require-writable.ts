import { access, constants, mkdir, rmdir, stat } from 'node:fs/promises';
import path from 'node:path';
import { CommandError } from './command-error.js';
import { fileError } from './file-error.js';

/** Tells at once, and not after minutes of drawing, of a folder that cannot be made; one that was not there is not left behind either. */
export async function requireWritable(folder: string): Promise<void> {
  const made: string[] = [];
  try {
    // One at a time: asked for a whole path, Node never returns where the system has no place for it, such as under /proc.
    for (const one of await missingFolders(folder)) {
      await mkdir(one).catch((error: NodeJS.ErrnoException) => {
        if (error.code === 'ENOENT') throw new CommandError(`cannot write into ${folder}: it cannot be made`);
        throw error;
      });
      made.unshift(one);
    }
    await access(folder, constants.W_OK);
  } catch (error) {
    throw fileError(`cannot write into ${folder}`, error);
  } finally {
    // What another has begun to use stays.
    for (const one of made) await rmdir(one).catch(() => undefined);
  }
}

/** The folders of a path that are not there yet, the outermost first. */
async function missingFolders(folder: string): Promise<readonly string[]> {
  try {
    if ((await stat(folder)).isDirectory()) return [];
    throw Object.assign(new Error(), { code: 'EEXIST' });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    return [...(await missingFolders(path.dirname(folder))), folder];
  }
}
