import { existsSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { embeddedFonts, fontFiles, fontNotice } from './fonts.js';
import { livePrograms } from './live-programs.js';
import { listNotebooks } from './notebook-list.js';
import { pngMaker } from './png.js';
import { programTexts } from './program-texts.js';
import type { RunFacts } from './render-notebook.js';
import type { Workshop } from './workshop.js';

const lib = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Makes pages from the sources of the repository.
 *
 * @param notebookFolder - folder of the notebooks
 * @param version - version of the library, for the pages
 */
export function repositoryWorkshop(notebookFolder: string, version: string): Workshop {
  const facts = async (
    notebooks: Readonly<Record<string, string>>,
    withFile: boolean,
  ): Promise<RunFacts> => ({
    version,
    notices: [await fontNotice()],
    fonts: embeddedFonts,
    png: pngMaker(Object.values(fontFiles)),
    programs: livePrograms(await programTexts({ ...liveSources(withFile), notebooks, entryFile })),
  });
  return {
    version,
    calledAs: 'npm start --',
    notebooks: () => listNotebooks(notebookFolder),
    facts: (names) =>
      facts(Object.fromEntries(names.map((name) => [name, path.join(notebookFolder, `${name}.ts`)])), true),
    ownFacts: ({ notebook, file }) => facts({ [notebook.name]: file }, false),
    entryFile,
  };
}

function liveSources(withFile: boolean): { readonly livePage: string; readonly liveFile?: string } {
  const livePage = path.join(lib, 'live/live-page.ts');
  return withFile ? { livePage, liveFile: path.join(lib, 'live/live-file.ts') } : { livePage };
}

function entryFile(name: string): string | undefined {
  const file = path.join(lib, name.replace(/^dashpot\/?/u, ''), 'index.ts');
  return existsSync(file) ? file : undefined;
}
