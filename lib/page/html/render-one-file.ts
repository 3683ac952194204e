import { requireShape } from '../../base/shape.js';
import { html } from './html.js';
import { htmlDocument } from './html-document.js';
import { indexBody } from './index-body.js';
import { indexTitle } from './index-title.js';
import { pageFooter } from './page-footer.js';
import type { Program } from './program.js';
import { programShape } from './program.js';
import { prose } from './prose.js';
import type { IndexContent } from './render-index.js';
import { indexContentShape, indexItems } from './render-index.js';

/**
 * All pages in one file: its program makes each page from the parts file, in the browser. Without scripts it is the list of the questions
 * with their answers, each with its first picture: these are seen while the program is still being unpacked.
 *
 * @param content - the pages in the order of reading, with fonts and provenance
 * @param program - makes the pages
 * @returns HTML text; the same content gives the same bytes
 *
 * @public
 */
export async function renderOneFile(content: IndexContent, program: Program): Promise<string> {
  requireShape({ content, program }, { content: indexContentShape, program: programShape });
  const { entries, about, fonts, provenance } = content;
  const items = indexItems(entries, (name) => `#${name}`);
  const body = html`<header>
<h1>${indexTitle}</h1>
<p class="question">${prose(about)}</p>
</header>
<noscript><p class="caution">Scripts are off here: what follows is the first sentence of each page, with its first picture. Open this file in a browser to see the pages.</p></noscript>
<main>${indexBody(items)}</main>
${pageFooter(provenance)}`;
  return htmlDocument(indexTitle, fonts, body, program);
}
