import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BuildContext, context } from 'esbuild';
import type { ParameterTexts } from '../page/index.js';
import { browserOptions, entries } from './live-programs.js';

/** A notebook that is being written: its page is drawn by the browser alone, so that a change costs one bundling. */
export interface Draft {
  /** The page, empty, with what it starts from. */
  html(): Promise<string>;
  /** The program, bundled anew. */
  program(): Promise<string>;
  dispose(): Promise<void>;
}

const fromLib = (name: string): string =>
  JSON.stringify(fileURLToPath(new URL(`../${name}`, import.meta.url)));

/** Opens a draft. */
export async function draft(
  notebookFolder: string,
  name: string,
  partsFile: string,
  given: ParameterTexts,
): Promise<Draft> {
  const bundler = await context({
    ...browserOptions(notebookFolder),
    plugins: [entries(notebookFolder, draftText)],
    entryPoints: [{ in: `live:${name}`, out: name }],
  });
  return {
    async html() {
      const partsText = await readFile(partsFile, 'utf8');
      const start = JSON.stringify({ partsName: path.basename(partsFile), partsText, given });
      return `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>${name}</title><body><header></header><main></main><script type="application/json" id="start">${start.replaceAll('<', '\\u003c')}</script>
<script src="program.js"></script></body></html>`;
    },
    program: () => programOf(bundler),
    dispose: () => bundler.dispose(),
  };
}

/** What does not bundle, or does not run, is said in the page, and the page still waits for the next change. */
function draftText(notebook: string): string {
  return `import { styleSheet } from ${fromLib('page/style.ts')};
import { failureText } from ${fromLib('live/failure.ts')};
import { livePage } from ${fromLib('live/live-page.ts')};
import { notebook } from ${JSON.stringify(notebook)};
import specs from 'compiled-specs';
const style = new CSSStyleSheet();
style.replaceSync(styleSheet);
document.adoptedStyleSheets = [style];
const heading = document.createElement('h1');
heading.textContent = notebook.title;
document.querySelector('header').append(heading);
new EventSource('changes').onmessage = () => location.reload();
try {
  livePage(notebook, specs);
} catch (error) {
  const line = document.createElement('pre');
  line.className = 'fault';
  line.textContent = failureText(error);
  document.querySelector('main').replaceChildren(line);
}`;
}

async function programOf(bundler: BuildContext): Promise<string> {
  try {
    const { outputFiles = [] } = await bundler.rebuild();
    return outputFiles[0]?.text ?? '';
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    return `document.querySelector('main').textContent = ${JSON.stringify(message)};
new EventSource('changes').onmessage = () => location.reload();`;
  }
}
