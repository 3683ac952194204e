import { html } from '../../page/html/html.js';
import { faultyStep, firstFault, firstFile } from '../../parts/first-file.js';
import { answerOf, type FirstAnswers } from '../../parts/first-questions.js';
import { partsFile } from '../../parts/parts-file.js';
import { type Bench, takeFile } from '../case/bench.js';
import { emptyDraft, type FirstDraft, stepOf, stepped } from '../case/first-draft.js';
import { elementIn } from '../document/element-in.js';
import { saveFile } from '../document/leave.js';
import { domNodes, patchChildren } from '../document/patch.js';
import { endNodes, stepNodes } from './first-nodes.js';

/** The page on which a reader answers for a first parts file. */
export interface FirstPage {
  readonly main: Element;
  /** Shows where the reader was. */
  arrive(): void;
}

const fileName = 'my-parts.yaml';

/**
 * Makes the page: one question at a time, and at the end a file that takes the place of the parts on the bench.
 *
 * @param bench - holds what was typed, and takes the file
 * @param rested - called when there is something new to keep
 */
export function openFirst(bench: Bench, rested: () => void): FirstPage {
  const [main] = domNodes(html`<main class="first"><form id="first" novalidate=""></form></main>`);
  if (!(main instanceof Element)) throw new TypeError('the page is one element');
  const form = elementIn(main, 'form');
  const draft = (): FirstDraft => bench.first ?? emptyDraft;
  const show = (fault: string): void => {
    const { answers } = draft();
    const { question } = stepOf(draft());
    const nodes =
      question === undefined
        ? endNodes(draft(), partsFile(fileName, firstFile(answers)), stateOf(bench, answers))
        : stepNodes(draft(), question, fault);
    patchChildren(form, nodes.nodes);
    if (question !== undefined) fill(form, answerOf(answers, question.key));
  };
  /** Shows a step; what was answered only once all of it is accepted, else the step that is not. */
  const goTo = (next: FirstDraft, fault = ''): void => {
    const faulty = stepOf(next).question === undefined ? faultyStep(next.answers) : undefined;
    bench.first = faulty === undefined ? next : { ...next, at: faulty.key };
    show(faulty?.message ?? fault);
  };
  const step = (next: FirstDraft, fault?: string): void => {
    goTo(next, fault);
    rested();
    focusOn(form.querySelector('input:checked') ?? form.querySelector('input,h2'));
  };
  const submit = (): void => {
    const { question } = stepOf(draft());
    if (question === undefined) {
      takeFile(bench, partsFile(fileName, firstFile(draft().answers)), true);
      step(draft());
      focusOn(form.querySelector('#first-save'));
      return;
    }
    const fault = firstFault(draft().answers, question);
    step(fault === undefined ? stepped(draft(), 1) : draft(), fault);
  };
  form.addEventListener('input', ({ target }) => {
    const { question } = stepOf(draft());
    if (!(target instanceof HTMLInputElement) || question === undefined) return;
    bench.first = { ...draft(), answers: { ...draft().answers, [question.key]: target.value } };
  });
  form.addEventListener('change', rested);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    submit();
  });
  form.addEventListener('click', ({ target }) => {
    const id = target instanceof Element ? target.id : '';
    if (id === 'first-back') step(stepped(draft(), -1));
    if (id === 'first-save') saveFile(bench.file.name, new Blob([bench.file.text], { type: 'text/plain' }));
  });
  return { main, arrive: () => goTo(draft()) };
}

/** How the parts on the bench stand to the file of the answers. */
function stateOf(
  { file, start }: Bench,
  answers: FirstAnswers,
): { readonly written: boolean; readonly aside: string } {
  const written = file.name === fileName && file.text === firstFile(answers);
  return { written, aside: !written && file !== start ? file.name : '' };
}

/** Puts what was typed before into the fields of a step. */
function fill(form: Element, text: string): void {
  for (const input of form.querySelectorAll('input')) {
    if (input.type === 'radio') input.checked = input.value === text;
    else if (input.value.trim() !== text) input.value = text;
  }
}

function focusOn(element: Element | null): void {
  if (element instanceof HTMLElement) element.focus();
}
