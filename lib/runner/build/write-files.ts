import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';

/** Writes files into a folder, each under a temporary name first: a reader never meets half a file. */
export async function writeFiles(
  folder: string,
  files: ReadonlyMap<string, string | Uint8Array>,
): Promise<void> {
  await mkdir(folder, { recursive: true });
  const partial = (name: string): string => path.join(folder, `.${name}.partial`);
  try {
    for (const [name, content] of files) await writeFile(partial(name), content);
    for (const name of files.keys()) await rename(partial(name), path.join(folder, name));
  } catch (error) {
    for (const name of files.keys()) await rm(partial(name), { force: true });
    throw error;
  }
}
