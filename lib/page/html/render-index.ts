import { listOf, optional, requireShape, type Shape, someText } from '../../base/shape.js';
import { html } from './html.js';
import { type EmbeddedFont, embeddedFontShape, htmlDocument } from './html-document.js';
import { type IndexItem, indexList } from './index-list.js';
import { indexTitle } from './index-title.js';
import { type Provenance, pageFooter, provenanceShape } from './page-footer.js';
import { prose } from './prose.js';
import { thumbnail } from './thumbnail.js';

/**
 * One page of the index.
 *
 * @public
 */
export interface IndexEntry {
  readonly name: string;
  readonly title: string;
  readonly question: string;
  readonly answer: string;
  /** SVG of a figure of the page, where it has one. */
  readonly picture?: string;
}

/** Form of {@link IndexEntry}. */
export const indexEntryShape: Shape = {
  name: someText,
  title: someText,
  question: someText,
  answer: someText,
  picture: optional(someText),
};

/**
 * All that an index is made of.
 *
 * @public
 */
export interface IndexContent {
  /** In the order of reading. */
  readonly entries: readonly IndexEntry[];
  /** What the parts file says of itself. */
  readonly about: string;
  readonly fonts: readonly EmbeddedFont[];
  readonly provenance: Provenance;
}

/** Form of {@link IndexContent}. */
export const indexContentShape: Shape = {
  entries: listOf(indexEntryShape),
  about: someText,
  fonts: listOf(embeddedFontShape),
  provenance: provenanceShape,
};

/**
 * The index of rendered pages: the question that each answers, its answer, and a small picture. It stands beside the folders of the
 * pages.
 *
 * @param content - the pages in the order of reading, with fonts and provenance
 * @returns HTML text; the same content gives the same bytes
 *
 * @public
 */
export async function renderIndex(content: IndexContent): Promise<string> {
  requireShape({ content }, { content: indexContentShape });
  const { entries, about, fonts, provenance } = content;
  const items = indexItems(entries, (name) => `${name}/${name}.html`);
  const body = html`<header>
<h1>${indexTitle}</h1>
<p class="question">${prose(about)}</p>
</header>
<main>${indexList(items)}</main>
${pageFooter(provenance)}`;
  return htmlDocument(indexTitle, fonts, body);
}

/** The pages of an index, each with its small picture. */
export function indexItems(
  entries: readonly IndexEntry[],
  addressOf: (name: string) => string,
): readonly IndexItem[] {
  return entries.map(({ name, title, question, answer, picture }) => ({
    name,
    title,
    question,
    answer,
    address: addressOf(name),
    ...(picture === undefined ? {} : { picture: thumbnail(picture, name) }),
  }));
}
