import { type Html, html } from './html.js';
import { prose } from './prose.js';

/** One page in a list of pages. */
export interface IndexItem {
  readonly name: string;
  /** Where its link leads. */
  readonly address: string;
  readonly title: string;
  readonly question: string;
  readonly answer: string;
  /** A small picture. */
  readonly picture?: Html;
  /** The sentence of the page that a reader looked for. */
  readonly found?: string;
}

/** A list of pages: the question that each answers, and its answer. */
export function indexList(items: readonly IndexItem[]): Html {
  return html`<ol class="index" id="questions">
${items.map(itemHtml)}</ol>`;
}

function itemHtml({ name, address, title, question, answer, picture, found }: IndexItem): Html {
  const small = picture === undefined ? '' : html`<div class="thumbnail">${picture}</div>`;
  const sentence = found === undefined ? '' : html`<p class="found">“${prose(found)}”</p>`;
  return html`<li id="${name}" class="${picture === undefined ? 'plain' : 'pictured'}"><div><h2><a href="${address}">${title}</a></h2>
<p class="question">${prose(question)}</p>
<p class="said">${prose(answer)}</p>${sentence}</div>${small}</li>
`;
}
