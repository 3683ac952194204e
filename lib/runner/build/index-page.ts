import { contentHash, type IndexEntry, type Notebook, renderIndex } from '../../page/index.js';
import type { PartsFile } from '../../parts/parts-file.js';
import { embeddedFonts } from './fonts.js';
import type { RenderedNotebook, RunFacts } from './render-notebook.js';

/** What the index says of a rendered notebook. */
export function indexEntry(
  { name, title, question }: Notebook,
  { page, pictures }: RenderedNotebook,
): IndexEntry {
  const [first] = pictures.values();
  return {
    name,
    title,
    question,
    answer: page.answer,
    ...(first === undefined ? {} : { picture: first.narrow }),
  };
}

/** The index of the pages of one run. */
export async function indexPage(
  entries: readonly IndexEntry[],
  { text, parts }: PartsFile,
  { version, notices }: RunFacts,
): Promise<string> {
  const provenance = { version, notices, contentHash: await contentHash(text, []) };
  const content = { entries, about: parts.about, fonts: [], provenance };
  return renderIndex({ ...content, fonts: await embeddedFonts(await renderIndex(content)) });
}
