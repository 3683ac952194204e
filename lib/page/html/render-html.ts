import { requirePageIds } from '../blocks/page.js';
import { prose } from '../blocks/prose.js';
import { html } from './html.js';
import { type EmbeddedFont, htmlDocument } from './html-document.js';
import { type BodyContent, pageBody } from './page-body.js';
import { type Provenance, pageFooter } from './page-footer.js';
import type { Program } from './program.js';

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
