import { type HtmlNode, html } from '../page/html.js';
import type { PartsFile } from './case.js';
import { saveFile } from './leave.js';
import { type PartField, partFields, withField } from './parts-text.js';
import { domNodes, patchChildren } from './patch.js';

/** The panel for the reader's own parts. */
export interface PartsPanel {
  readonly element: Element;
  /** Shows the parts of a file. */
  show(file: PartsFile): void;
}

/** What the panel tells of. */
export interface PartsListeners {
  /** A file was opened from disk. */
  readonly opened: (name: string, text: string) => void;
  /** A part was changed in the form. */
  readonly edited: (name: string, text: string) => void;
  /** The reader wants the parts that the page came with. */
  readonly back: () => void;
}

const lists = [
  ['oils', 'Oil'],
  ['pistons', 'Piston'],
] as const;

/** Makes the panel: open a file, change a part, save the file. Nothing leaves the device. */
export function partsPanel({ opened, edited, back }: PartsListeners): PartsPanel {
  const element = panelElement();
  const [which, fields, name] = [found(element, 'select'), found(element, '.part'), found(element, 'b')];
  let shown: PartsFile | undefined;
  const showFields = (): void => {
    const [list, index] = which.value.split(' ');
    const isList = list === 'oils' || list === 'pistons';
    const values = shown === undefined || !isList ? [] : partFields(shown.text, list, Number(index));
    // Patched, not replaced: the field that a reader has just gone on to keeps the focus.
    patchChildren(fields, values.flatMap(fieldNodes));
    for (const [at, input] of fields.querySelectorAll('input').entries())
      input.value = values[at]?.text ?? '';
  };
  which.addEventListener('input', showFields);
  fields.addEventListener('change', ({ target }) => {
    if (!(target instanceof HTMLInputElement) || shown === undefined) return;
    const path: PartField['path'] = JSON.parse(target.dataset['path'] ?? '[]');
    edited(shown.name, withField(shown.text, path, target.value));
  });
  const file = found(element, 'input');
  file.addEventListener('change', async () => {
    const [chosen] = file.files ?? [];
    // The same file can be chosen again after it was changed on disk.
    if (chosen !== undefined) opened(chosen.name, await chosen.text());
    file.value = '';
  });
  const [save, original] = element.querySelectorAll('button');
  save?.addEventListener('click', () => {
    if (shown !== undefined) saveFile(shown.name, new Blob([shown.text], { type: 'text/plain' }));
  });
  original?.addEventListener('click', back);
  return {
    element,
    show(next) {
      const before = which.value;
      shown = next;
      name.textContent = next.name;
      which.replaceChildren(...lists.flatMap(([list, word]) => optionNodes(list, word, next)));
      which.value = before;
      if (which.value === '') which.selectedIndex = 0;
      showFields();
    },
  };
}

function panelElement(): Element {
  const [element] = domNodes(html`<details class="panel parts"><summary>Parts</summary>
<p>From <b></b>; what you open or change stays on this device.</p>
<div class="control"><label for="parts-open">Open a parts file</label><input type="file" id="parts-open" accept=".yaml,.yml,.json"></div>
<div class="control"><label for="parts-which">Change a part</label><select id="parts-which" autocomplete="off"></select></div>
<div class="part"></div>
<p><button type="button">Save parts file</button> <button type="button">Parts of this page</button></p></details>`);
  if (!(element instanceof Element)) throw new TypeError('the panel is one element');
  return element;
}

function optionNodes(list: 'oils' | 'pistons', word: string, { parts }: PartsFile): readonly Node[] {
  return parts[list].flatMap(({ name }, index) =>
    domNodes(html`<option value="${list} ${index}">${word} ${name}</option>`),
  );
}

function fieldNodes({ path, text }: PartField): readonly HtmlNode[] {
  const id = `part-${path.join('-')}`;
  const steps = path
    .slice(2)
    .map((step) => (typeof step === 'number' ? step + 1 : step.replaceAll('-', ' ')));
  return html`<div class="control text" id="${id}-control"><label for="${id}">${steps.join(' ')}</label><input type="text" id="${id}" value="${text}" data-path="${JSON.stringify(path)}" autocomplete="off" spellcheck="false"></div>`
    .nodes;
}

function found<Name extends keyof HTMLElementTagNameMap>(
  element: Element,
  name: Name,
): HTMLElementTagNameMap[Name];
function found(element: Element, selector: string): Element;
function found(element: Element, selector: string): Element {
  const part = element.querySelector(selector);
  if (part === null) throw new TypeError(`the panel has no ${selector}`);
  return part;
}
