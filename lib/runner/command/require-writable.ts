import { access, constants, mkdir, rm } from 'node:fs/promises';
import { fileError } from './file-error.js';

/** Tells at once, and not after minutes of drawing, of a folder that cannot be made; one that was not there is not left behind either. */
export async function requireWritable(folder: string): Promise<void> {
  try {
    const made = await mkdir(folder, { recursive: true });
    await access(folder, constants.W_OK);
    if (made !== undefined) await rm(made, { recursive: true });
  } catch (error) {
    throw fileError(`cannot write into ${folder}`, error);
  }
}
