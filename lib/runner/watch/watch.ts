import type { ParameterTexts } from '../../page/index.js';
import { draft } from './draft.js';
import { fileChanges } from './file-changes.js';
import { servePage } from './page-server.js';

/** What is watched. */
export interface Watched {
  readonly notebookFolder: string;
  readonly name: string;
  /** Absolute path. */
  readonly partsFile: string;
  readonly texts: ParameterTexts;
  /** Folders whose files make the page: library and notebooks. */
  readonly sources: readonly string[];
}

/** A page under watch. */
export interface Watch {
  /** Address of the page on this machine. */
  readonly address: string;
  close(): Promise<void>;
}

/** Serves the page of a notebook to this machine only, and has it loaded again after each save of a source or of the parts file. */
export async function watchNotebook(watched: Watched): Promise<Watch> {
  const { notebookFolder, name, partsFile, texts, sources } = watched;
  const page = await draft(notebookFolder, name, partsFile, texts);
  await page.rebuild();
  // The page loads itself again while the program is bundled.
  let bundled = Promise.resolve();
  const server = await servePage(page, () => bundled);
  const stopWatching = fileChanges(sources, partsFile, (inSources) => {
    if (inSources)
      bundled = bundled.then(page.rebuild).then((other) => {
        if (other) server.tell();
      });
    server.tell();
  });
  return {
    address: server.address,
    async close() {
      stopWatching();
      await server.close();
      await bundled;
      await page.dispose();
    },
  };
}
