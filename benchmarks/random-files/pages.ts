import type { Notebook } from '../../lib/page/index.js';

export { readParts } from '../../lib/parts/index.js';
export { acceptedFiles } from '../../test/notebooks/random/accepted-files.js';
export { outcomeOf } from '../../test/notebooks/random/page-faults.js';
export { randomSettings } from '../../test/notebooks/random/settings.js';

/** The notebook of a name. */
export async function notebookNamed(name: string): Promise<Notebook> {
  const module: { readonly notebook: Notebook } = await import(`../../notebooks/${name}.ts`);
  return module.notebook;
}
