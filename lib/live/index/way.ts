import { prose } from '../../page/blocks/prose.js';
import { type Html, html } from '../../page/html/html.js';
import type { Notebook } from '../../page/notebook.js';

/** The head of a page in one file: the way back and on, its title and its question. */
export function pageHead({ title, question }: Notebook, next: Notebook): Html {
  return html`
<nav class="way" aria-label="Pages">${back}${onward(next)}</nav>
<h1 id="title" tabindex="-1">${title}</h1>
<p class="question">${prose(question)}</p>
`;
}

/** The head of the index. */
export function indexHead(title: string, about: string): Html {
  return html`
<h1 id="title" tabindex="-1">${title}</h1>
<p class="question">${prose(about)}</p>
`;
}

/** The way on at the end of a page. */
export function pageEnd(next: Notebook): Html {
  return html`${onward(next)}${back}`;
}

const back = html`<a href="#questions">All questions</a>`;

function onward({ name, title }: Notebook): Html {
  return html`<a class="onward" href="#${name}">Next: ${title}</a>`;
}
