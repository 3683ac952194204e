import { contentHash, type IndexEntry, type Notebook, renderIndex, renderOneFile } from '../../page/index.js';
import type { PartsFile } from '../../parts/parts-file.js';
import { carriedFits, type RenderedNotebook, type RunFacts } from './render-notebook.js';

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
  { version, notices, fonts }: RunFacts,
): Promise<string> {
  const provenance = { version, notices, contentHash: await contentHash(text, []) };
  const content = { entries, about: parts.about, fonts: [], provenance };
  return renderIndex({ ...content, fonts: await fonts(await renderIndex(content)) });
}

/**
 * All pages of one run in one file.
 *
 * @param letters - texts whose letters the pages may show, besides those of the index
 */
export async function oneFile(
  entries: readonly IndexEntry[],
  { name, text, parts }: PartsFile,
  { version, notices, programs, fonts, fitted }: RunFacts,
  letters: string,
): Promise<string> {
  const file = programs?.file;
  if (file === undefined) throw new TypeError('one file needs a program');
  const fingerprint = await contentHash(text, []);
  const provenance = { version, notices: [...notices, ...file.notices], contentHash: fingerprint };
  const content = { entries, about: parts.about, fonts: [], provenance };
  const start = { partsName: name, partsText: text, texts: {}, fingerprint, ...carriedFits(fitted) };
  const program = { ...file, start };
  const withLetters = await fonts(letters + (await renderOneFile(content, { ...program, packed: [] })));
  return renderOneFile({ ...content, fonts: withLetters }, program);
}
