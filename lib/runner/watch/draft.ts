import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { context, type Metafile } from 'esbuild';
import { visibleText } from '../../base/visible-text.js';
import type { ParameterTexts } from '../../page/index.js';
import { PartsFileError } from '../../parts/source/parts-file-error.js';
import { type KeptModules, moduleKeeper } from '../build/kept-modules.js';
import { browserOptions } from '../build/program-modules.js';
import { entries } from '../build/program-texts.js';
import { readTextFile } from '../command/read-text-file.js';
import { draftHtml } from './draft-html.js';

/**
 * A notebook that is being written. Its page is drawn by the browser alone, and a change bundles only our own files: packages and
 * compiled charts are modules by themselves, which a browser keeps.
 */
export interface Draft {
  /** The page, empty, with what it starts from, as it is after so many changes. */
  html(changes: number): Promise<string>;
  /** The program, or one that says why there is none. */
  program(): string;
  /** The text of a module that a browser may keep. */
  kept(address: string): string | undefined;
  /** Follows a change of the sources; tells whether the page has to name other modules. */
  rebuild(): Promise<boolean>;
  dispose(): Promise<void>;
}

const fromLib = (name: string): string =>
  JSON.stringify(fileURLToPath(new URL(`../../${name}`, import.meta.url)));

/** Opens a draft. */
export async function draft(
  notebookFolder: string,
  name: string,
  partsFile: string,
  texts: ParameterTexts,
): Promise<Draft> {
  const bundler = await context({
    ...browserOptions(notebookFolder),
    format: 'esm',
    packages: 'external',
    metafile: true,
    plugins: [entries(notebookFolder, (one) => draftText(path.join(notebookFolder, `${one}.ts`)))],
    entryPoints: [{ in: `live:${name}`, out: name }],
  });
  const keeper = await moduleKeeper();
  let modules: KeptModules = { addresses: {}, texts: new Map() };
  let program = '';
  return {
    async html(changes) {
      // Between two steps of an editor the file may be away; of signs that cannot be read the page shows the reason.
      const partsText = await readTextFile('/', partsFile).catch((error: unknown) =>
        error instanceof PartsFileError ? error.message : '',
      );
      const start = { partsName: visibleText(path.basename(partsFile)), partsText, texts };
      return draftHtml(name, modules.addresses, start, changes);
    },
    program: () => program,
    kept: (address) => modules.texts.get(address),
    async rebuild() {
      const before = JSON.stringify(modules.addresses);
      try {
        const { outputFiles, metafile } = await bundler.rebuild();
        modules = await keeper.modules(importedBy(metafile));
        program = outputFiles[0]?.text ?? '';
      } catch (error) {
        program = `throw new Error(${JSON.stringify(error instanceof Error ? error.message : String(error))});`;
      }
      return JSON.stringify(modules.addresses) !== before;
    },
    async dispose() {
      await bundler.dispose();
      await keeper.dispose();
    },
  };
}

/** The first module of a page that is being written. */
function draftText(notebook: string): string {
  return `import { styleSheet } from ${fromLib('page/style/style.ts')};
import { livePage } from ${fromLib('live/live-page.ts')};
import { notebook } from ${JSON.stringify(notebook)};
import specs from 'compiled-specs';
const style = new CSSStyleSheet();
style.replaceSync(styleSheet);
document.adoptedStyleSheets = [style];
const heading = document.createElement('h1');
heading.textContent = notebook.title;
document.querySelector('header').append(heading);
livePage(notebook, specs);`;
}

/** The names of what a bundle leaves to be imported. */
function importedBy({ outputs }: Metafile): readonly string[] {
  const imports = Object.values(outputs).flatMap((output) => output.imports);
  return [...new Set(imports.filter(({ external }) => external === true).map((one) => one.path))];
}
