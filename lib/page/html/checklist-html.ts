import type { ChecklistBlock, ChecklistStep, WriteIn } from '../blocks/checklist.js';
import { type Html, html } from './html.js';
import { prose } from './prose.js';

/** A checklist as markup: boxes that can be ticked and lines that can be typed on, or written on in print. */
export function checklistHtml({ id, title, about, writeIns, steps }: ChecklistBlock): Html {
  return html`<section class="sheet" id="${id}">
<h2>${title}</h2>
<p class="about">${prose(about)}</p>
<p class="write-ins">${writeIns.map((writeIn, index) => writeInHtml(writeIn, `${id}-head-${index + 1}`))}</p>
<ol class="steps">
${steps.map((step, index) => stepHtml(step, `${id}-${index + 1}`))}</ol>
</section>`;
}

function stepHtml({ title, text, aim, prevents, writeIns }: ChecklistStep, id: string): Html {
  const number = aim === undefined ? '' : html`<span class="aim">${prose(aim)}</span>`;
  return html`<li><input type="checkbox" id="${id}">
<div class="what"><label for="${id}">${title}.</label> ${prose(text)} <span class="prevents">Prevents ${prose(prevents)}.</span></div>
<div class="numbers">${number}${writeIns.map((writeIn, index) => writeInHtml(writeIn, `${id}-${index + 1}`))}</div>
</li>
`;
}

function writeInHtml({ label, unit }: WriteIn, id: string): Html {
  return html`<label class="write-in" for="${id}">${label} <input type="text" id="${id}" autocomplete="off"> ${unit}</label>`;
}
