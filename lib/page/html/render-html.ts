import { listOf, optional, requireShape, type Shape, someText } from '../../base/shape.js';
import { pageShape, requirePageIds } from '../blocks/checked-page.js';
import { parameterTextShape } from '../parameters/parameter-text.js';
import { picturesShape } from './block-html.js';
import { html } from './html.js';
import { type EmbeddedFont, embeddedFontShape, htmlDocument } from './html-document.js';
import { type BodyContent, pageBody } from './page-body.js';
import { type Provenance, pageFooter, provenanceShape } from './page-footer.js';
import type { Program } from './program.js';
import { programShape } from './program.js';
import { prose } from './prose.js';

/**
 * All that a page is made of.
 *
 * @public
 */
export interface PageContent extends BodyContent {
  readonly title: string;
  readonly question: string;
  readonly fonts: readonly EmbeddedFont[];
  readonly provenance: Provenance;
  /** Makes the page live where it is given. */
  readonly program?: Program;
}

/** Form of {@link PageContent}. */
export const pageContentShape: Shape = {
  title: someText,
  question: someText,
  fonts: listOf(embeddedFontShape),
  provenance: provenanceShape,
  program: optional(programShape),
  page: pageShape,
  about: someText,
  parameters: listOf(parameterTextShape),
  pictures: picturesShape,
};

/**
 * One self-contained HTML file: it asks the network for nothing, is whole without scripts, and reads the same on
 * paper. The same content gives the same bytes.
 *
 * @param content - the page with its pictures, fonts and provenance
 * @returns HTML text
 * @throws InputError for an id that is no file name or that two blocks have; TypeError where a figure has no picture
 *
 * @public
 */
export async function renderHtml(content: PageContent): Promise<string> {
  requireShape({ content }, { content: pageContentShape });
  const { title, question, fonts, provenance, program, page } = content;
  requirePageIds(page);
  const body = html`<header>
<h1>${title}</h1>
<p class="question">${prose(question)}</p>
</header>
<main>${pageBody(content)}</main>
${pageFooter(provenance)}`;
  return htmlDocument(title, fonts, body, program);
}
