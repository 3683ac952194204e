import { readdir } from 'node:fs/promises';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Notebook } from '../../page/index.js';

/**
 * The notebooks of a folder in their order: each `.ts` file directly in it exports one as `notebook`.
 *
 * @param folder - absolute path
 * @throws TypeError for a file that exports no notebook, or one of another name than its file
 */
export async function listNotebooks(folder: string): Promise<readonly Notebook[]> {
  const files = (await readdir(folder)).filter((file) => file.endsWith('.ts') && !file.endsWith('.d.ts'));
  const notebooks = await Promise.all(files.map((file) => loadNotebook(folder, file)));
  return notebooks.toSorted((a, b) => a.order - b.order || (a.name < b.name ? -1 : 1));
}

async function loadNotebook(folder: string, file: string): Promise<Notebook> {
  const module: { readonly notebook?: Notebook } = await import(pathToFileURL(path.join(folder, file)).href);
  if (module.notebook === undefined) throw new TypeError(`${file} exports no "notebook"`);
  if (`${module.notebook.name}.ts` !== file)
    throw new TypeError(`${file} holds the notebook "${module.notebook.name}"`);
  return module.notebook;
}
