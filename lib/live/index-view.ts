import { html } from '../page/html/html.js';
import { indexBody } from '../page/html/index-body.js';
import type { IndexItem } from '../page/html/index-list.js';
import type { Notebook } from '../page/notebook.js';
import { asItCame, type Bench } from './case/bench.js';
import { elementIn } from './document/element-in.js';
import { domNodes } from './document/patch.js';
import { answers } from './index/answers.js';
import { printedItems } from './index/printed.js';
import { find } from './index/search.js';
import { sharedParameters } from './index/shared-parameters.js';
import type { ScreenParts } from './screen.js';
import { openView, type View } from './view.js';

/** Shown while the answer of a page is worked out anew. */
const pending = '…';

/** Makes the index live: settings that many pages share, the reader's parts, a search, and answers that follow. */
export function openIndex(
  main: Element,
  notebooks: readonly Notebook[],
  bench: Bench,
  parts: ScreenParts,
  rested: () => void,
): View {
  const printed = printedItems(notebooks);
  const said = answers(notebooks, bench, printed, () => view.follow());
  const field = searchField();
  elementIn(main, '.find').replaceChildren(...field.nodes);
  const items = (): readonly IndexItem[] =>
    notebooks.flatMap(({ name, title, question }) => {
      const { answer = pending, words = [] } = said.of(name) ?? {};
      const hit = find(field.input.value, [title, question, answer], words);
      if (hit === undefined) return [];
      // A picture of what is no longer chosen would be a wrong number.
      const picture = asItCame(bench) ? printed.get(name)?.picture : undefined;
      const item = { name, address: `#${name}`, title, question, answer, ...(picture && { picture }) };
      return [hit.sentence === undefined ? item : { ...item, found: hit.sentence }];
    });
  const view = openView(
    main,
    { name: '', order: 0, title: '', question: '', parameters: sharedParameters(notebooks), run: nothing },
    bench,
    {
      ...parts,
      body() {
        const shown = items();
        field.tell(shown.length, notebooks.length, said.complete());
        return indexBody(shown);
      },
    },
    {
      rested() {
        rested();
        said.refresh(field.input.value !== '');
      },
    },
  );
  field.input.addEventListener('input', () => {
    said.refresh(true);
    view.follow();
  });
  return view;
}

function nothing() {
  return { answer: '', blocks: [], sources: [] };
}

function searchField() {
  const nodes = domNodes(
    html`<label for="find">Find a question or a word</label><input type="search" id="find" autocomplete="off" spellcheck="false"><p class="count" role="status"></p>`,
  );
  const [input, count] = [nodes[1], nodes[2]];
  if (!(input instanceof HTMLInputElement && count instanceof Element))
    throw new TypeError('a search has a field and a line');
  return {
    nodes,
    input,
    tell(shown: number, all: number, complete: boolean) {
      const text =
        input.value.trim() === '' ? '' : `${shown} of ${all} pages${complete ? '' : ', looking on …'}`;
      if (count.textContent !== text) count.textContent = text;
    },
  };
}
