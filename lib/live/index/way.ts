import { type Html, html } from '../../page/html/html.js';
import { prose } from '../../page/html/prose.js';
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
${firstLink}
`;
}

/** The way on at the end of a page. */
export function pageEnd(next: Notebook): Html {
  return html`${onward(next)}${back}`;
}

/** The head of the form for a first parts file. */
export function firstHead(title: string): Html {
  return html`
<nav class="way" aria-label="Pages">${back}</nav>
<h1 id="title" tabindex="-1">${title}</h1>
<p class="question">What a calliper and a label tell, one step at a time; then every page answers for this shock. What you type stays on this device.</p>
`;
}

/** Where the form for a first parts file stands among the pages. */
export const firstName = 'first-file';

/** The way to the form, where a reader may want it. */
export const firstLink = html`<p class="begin"><a href="#${firstName}">Begin with your own shock: write a first parts file, one question at a time</a></p>`;

const back = html`<a href="#questions">All questions</a>`;

function onward({ name, title }: Notebook): Html {
  return html`<a class="onward" href="#${name}">Next: ${title}</a>`;
}
