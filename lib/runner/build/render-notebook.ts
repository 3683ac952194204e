import {
  contentHash,
  type EmbeddedFont,
  type Notebook,
  type Notice,
  type Page,
  type PageContent,
  type ParameterTexts,
  type Pictures,
  pageFigures,
  pageJson,
  pageTables,
  renderHtml,
  tableCsv,
} from '../../page/index.js';
import { runNotebook } from '../../page/run-notebook.js';
import type { PartsFile } from '../../parts/parts-file.js';
import { renderSvg } from '../../plot/index.js';
import { embeddedFonts } from './fonts.js';
import type { LivePrograms } from './live-programs.js';
import { svgToPng } from './png.js';

/** What every page of a run has in common. */
export interface RunFacts {
  readonly version: string;
  readonly notices: readonly Notice[];
  /** The programs that make pages live, where they shall be. */
  readonly programs?: LivePrograms;
}

/** A page with the files it is written as, by file name. */
export interface RenderedNotebook {
  readonly page: Page;
  readonly pictures: Pictures;
  readonly files: ReadonlyMap<string, string | Uint8Array>;
}

/**
 * Runs a notebook and makes all its files in memory, so that a failure leaves nothing half written.
 *
 * @throws ParameterError, InputError for what the user gave
 */
export async function renderNotebook(
  notebook: Notebook,
  { name, text, parts }: PartsFile,
  given: ParameterTexts,
  { version, notices, programs }: RunFacts,
): Promise<RenderedNotebook> {
  const { page, parameters } = runNotebook(notebook, parts, given);
  const program = programs?.page(notebook.name);
  const content: PageContent = {
    title: notebook.title,
    question: notebook.question,
    page,
    about: parts.about,
    parameters,
    pictures: await drawnFigures(page),
    fonts: [],
    provenance: {
      version,
      notices: [...notices, ...(program?.notices ?? [])],
      contentHash: await contentHash(text, parameters),
    },
    ...(program === undefined
      ? {}
      : { program: { ...program, start: { partsName: name, partsText: text, given } } }),
  };
  const fonts = await embeddedFonts(await renderHtml(content));
  return { page, pictures: content.pictures, files: await filesOf(notebook.name, content, fonts) };
}

async function drawnFigures(page: Page): Promise<Pictures> {
  const pictures = new Map<string, { wide: string; narrow: string }>();
  // One after the other: Vega numbers its ids across all pictures under way.
  for (const figure of pageFigures(page)) {
    const wide = await renderSvg(figure, 'wide');
    pictures.set(figure.id, { wide, narrow: await renderSvg(figure, 'narrow') });
  }
  return pictures;
}

async function filesOf(
  name: string,
  content: PageContent,
  fonts: readonly EmbeddedFont[],
): Promise<RenderedNotebook['files']> {
  const files = new Map<string, string | Uint8Array>();
  files.set(`${name}.html`, await renderHtml({ ...content, fonts }));
  files.set(`${name}.json`, pageJson(content));
  for (const [id, table] of pageTables(content.page)) files.set(`${id}.csv`, tableCsv(table));
  for (const [id, { wide }] of content.pictures) {
    files.set(`${id}.svg`, wide);
    files.set(`${id}.png`, svgToPng(wide));
  }
  return files;
}
