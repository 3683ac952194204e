import { type Html, html, trusted } from './html.js';
import { type IndexItem, indexList } from './index-list.js';

/** The middle of the index of one file: places for the search and the controls, which the program fills, and the list. */
export function indexBody(items: readonly IndexItem[]): Html {
  return html`
<div class="controls" id="controls">${trusted('')}</div>
<div class="find" id="find-place">${trusted('')}</div>
${indexList(items)}
`;
}
