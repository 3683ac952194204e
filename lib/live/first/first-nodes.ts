import { capital } from '../../page/blocks/capital.js';
import { type Html, html } from '../../page/html/html.js';
import { firstCaution, firstGuesses } from '../../parts/first-file.js';
import type { FirstQuestion } from '../../parts/first-questions.js';
import type { PartsFile } from '../../parts/parts-file.js';
import { answered, type FirstDraft, stepOf } from '../case/first-draft.js';

/** The one step of the form that is shown, with what is wrong with its answer. */
export function stepNodes(draft: FirstDraft, question: FirstQuestion, fault: string): Html {
  const { index, count } = stepOf(draft);
  const { key, label, how, example, options } = question;
  const wrong = `${fault !== ''}`;
  const about = 'first-step first-how first-fault';
  const field =
    options === undefined
      ? html`<div id="first-at-${key}"><label for="first-${key}">${label}</label><input type="text" id="first-${key}" aria-describedby="${about}" aria-invalid="${wrong}" autocomplete="off" spellcheck="false" enterkeyhint="next"></div>`
      : html`<fieldset id="first-at-${key}" aria-describedby="${about}"><legend>${label}</legend>${options.map(
          (option) =>
            html`<label id="first-label-${key}-${option}"><input type="radio" id="first-${key}-${option}" name="first-${key}" value="${option}" aria-describedby="first-fault">${option}</label>`,
        )}</fieldset>`;
  return html`<p class="step" id="first-step">Step ${index + 1} of ${count}</p>
${field}
<p class="note" id="first-how">${how}${options === undefined ? ` For example ${example}.` : ''}</p>
<p class="fault" id="first-fault" role="alert">${fault}</p>
<p class="row" id="first-go">${index > 0 ? html`<button type="button" id="first-back">Back</button>` : ''}<button type="submit" id="first-next">Next</button></p>
<p class="caution" id="first-care">${firstCaution}</p>`;
}

/** What was answered and what is guessed, and, once the file is written, what to do with it. */
export function endNodes(
  draft: FirstDraft,
  made: PartsFile,
  state: { readonly written: boolean; readonly aside: string },
): Html {
  const assumed = made.parts.oils.flatMap(({ assumptions = [] }) => assumptions);
  const guesses = firstGuesses.map(({ what, how }) => `${capital(what)}: ${how}.`);
  const done = state.written
    ? html`<p class="told" id="first-told" role="status">${made.name} is written, and all pages work with it. Save it to keep it: its notes say how to measure the rest.</p>
<p class="row" id="first-go"><button type="button" id="first-back">Back</button><button type="button" id="first-save">Save ${made.name}</button><a href="#questions">To the questions</a></p>`
    : html`${state.aside === '' ? '' : html`<p class="caution" id="first-aside">You changed ${state.aside}. Writing this file puts that one aside: to keep it, save it first, under Parts on the page of all questions.</p>`}
<p class="told" id="first-told" role="status"></p>
<p class="row" id="first-go"><button type="button" id="first-back">Back</button><button type="submit" id="first-next">Write the file</button></p>`;
  return html`<h2 id="first-end" tabindex="-1">What you answered</h2>
<dl class="settings answers" id="first-answers">${answered(draft).map(([label, text]) => html`<dt>${label}</dt><dd>${text}</dd>`)}</dl>
${done}
<h2 id="first-guessed">Guessed until you measure it</h2>
<ul id="first-guesses">${[...assumed, ...guesses].map((text) => html`<li>${text}</li>`)}</ul>
<details id="first-file-text"><summary>The file</summary><pre class="lines" role="region" aria-label="The parts file" tabindex="0">${made.text}</pre></details>`;
}
