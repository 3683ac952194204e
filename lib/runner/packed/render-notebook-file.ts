import { optional, record, requireShape, someText } from '../../base/shape.js';
import type { Page, ParameterTexts } from '../../page/index.js';
import { readParts } from '../../parts/index.js';
import { loadOwnNotebook } from '../build/own-notebook.js';
import { renderNotebook } from '../build/render-notebook.js';
import { packageWorkshop } from './package-workshop.js';

/**
 * What a notebook is to be rendered with.
 *
 * @public
 */
export interface RenderRequest {
  /** Text of a parts file, YAML or JSON. */
  readonly parts: string;
  /** Name of that file, for messages and for the page; `parts.yaml` unless given. */
  readonly partsName?: string;
  /** Values of parameters as they would be written on the command line, by the names of the parameters: `{ temperature: '12 °C' }`. */
  readonly settings?: ParameterTexts;
}

/**
 * A rendered notebook.
 *
 * @public
 */
export interface RenderedFile {
  /** The page as plain data. */
  readonly page: Page;
  /** The page as one HTML file that needs no other. */
  readonly html: string;
  /** Whether the HTML has controls; it has none where esbuild is not installed. */
  readonly isLive: boolean;
  /** All that the command would write, by file name: the HTML, its data, pictures and tables. */
  readonly files: ReadonlyMap<string, string | Uint8Array>;
}

/**
 * Renders a notebook of yours to a page with controls, as the command `dashpot render` does; Node only. With esbuild beside this package the
 * notebook may be TypeScript.
 *
 * @param file - path of the module that exports `notebook`
 * @param request - parts file and settings
 * @returns the page as data, as HTML, and with all its files
 * @throws DashpotError for a file that holds no notebook, a parts file that cannot be read, or a setting that cannot be used
 *
 * @public
 */
export async function renderNotebookFile(file: string, request: RenderRequest): Promise<RenderedFile> {
  requireShape(
    { file, request },
    {
      file: someText,
      request: { parts: someText, partsName: optional(someText), settings: optional(record) },
    },
  );
  const { parts, partsName = 'parts.yaml', settings = {} } = request;
  const workshop = packageWorkshop();
  const own = await loadOwnNotebook(file, process.cwd(), workshop);
  const { notebook } = own;
  const facts = await workshop.ownFacts(own);
  const { page, files } = await renderNotebook(
    notebook,
    { name: partsName, text: parts, parts: readParts(parts, partsName) },
    settings,
    facts,
  );
  const html = files.get(`${notebook.name}.html`);
  if (typeof html !== 'string') throw new TypeError('a page is written as HTML');
  return { page, html, isLive: facts.programs !== undefined, files };
}
