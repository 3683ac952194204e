import {
  allBlocks,
  contentHash,
  type EmbeddedFont,
  motionPicture,
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
  unansweredPage,
} from '../../page/index.js';
import { runNotebook } from '../../page/run-notebook.js';
import type { FittedBuild } from '../../parts/fitted-builds.js';
import type { PartsFile } from '../../parts/parts-file.js';
import { renderSvg } from '../../plot/index.js';
import type { LivePrograms } from './live-programs.js';

/** What every page of a run has in common. */
export interface RunFacts {
  readonly version: string;
  readonly notices: readonly Notice[];
  /** The fonts of a page with at least the letters of a text. */
  readonly fonts: (text: string) => Promise<readonly EmbeddedFont[]>;
  /** Makes a PNG of a picture, where there shall be some. */
  readonly png?: (svg: string) => Uint8Array;
  /** What the measurements of the builds say, for pages that take the shocks as measured. */
  readonly fitted?: readonly FittedBuild[];
  /** The programs that make pages live, where they shall be. */
  readonly programs?: LivePrograms;
  /** What the user should know of these pages, such as a part that is not installed. */
  readonly remarks?: readonly string[];
}

/** A page with the files it is written as, by file name. */
export interface RenderedNotebook {
  readonly page: Page;
  /** Why the parts file does not say enough for the notebook; the page says what it needs. */
  readonly unanswered?: Error;
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
  file: PartsFile,
  texts: ParameterTexts,
  facts: RunFacts,
): Promise<RenderedNotebook> {
  const { page, parameters } = runNotebook(notebook, file.parts, texts);
  return renderPage(notebook, page, parameters, { file, texts, facts });
}

/** Makes the files of a notebook that the parts file does not say enough for: a page that says what it needs. */
export async function renderUnanswered(
  notebook: Notebook,
  file: PartsFile,
  unanswered: Error,
  facts: RunFacts,
): Promise<RenderedNotebook> {
  const rendered = await renderPage(notebook, unansweredPage(unanswered, file.parts), [], {
    file,
    texts: {},
    facts,
  });
  return { ...rendered, unanswered };
}

async function renderPage(
  notebook: Notebook,
  page: Page,
  parameters: PageContent['parameters'],
  {
    file,
    texts,
    facts,
  }: { readonly file: PartsFile; readonly texts: ParameterTexts; readonly facts: RunFacts },
): Promise<RenderedNotebook> {
  const { name: partsName, text: partsText, parts } = file;
  const { version, notices, programs, fitted } = facts;
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
      contentHash: await contentHash(partsText, parameters),
    },
    ...(program === undefined
      ? {}
      : { program: { ...program, start: { partsName, partsText, texts, ...carriedFits(fitted) } } }),
  };
  // The packed program is no text to read, and would ask for letters of half the world.
  const read =
    content.program === undefined ? content : { ...content, program: { ...content.program, packed: [] } };
  const fonts = await facts.fonts(await renderHtml(read));
  return {
    page,
    pictures: content.pictures,
    files: await filesOf(notebook.name, { ...content, fonts }, facts.png),
  };
}

/** Fits as the start of a page carries them. */
export function carriedFits(fitted: readonly FittedBuild[] = []): {
  readonly fitted?: readonly FittedBuild[];
} {
  return fitted.length === 0 ? {} : { fitted };
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
  png: RunFacts['png'],
): Promise<RenderedNotebook['files']> {
  const files = new Map<string, string | Uint8Array>();
  files.set(`${name}.html`, await renderHtml(content));
  files.set(`${name}.json`, pageJson(content));
  for (const [id, table] of pageTables(content.page)) files.set(`${id}.csv`, tableCsv(table));
  const stills = allBlocks(content.page).flatMap((block) =>
    block.kind === 'motion' ? [[block.id, { wide: motionPicture(block) }] as const] : [],
  );
  for (const [id, { wide }] of [...content.pictures, ...stills]) {
    files.set(`${id}.svg`, wide);
    if (png !== undefined) files.set(`${id}.png`, png(wide));
  }
  return files;
}
