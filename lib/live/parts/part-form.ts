import { html } from '../../page/html/html.js';
import type { PartsFile } from '../../parts/parts-file.js';
import { elementIn } from '../document/element-in.js';
import { domNodes, patchChildren } from '../document/patch.js';
import { fieldWritten, partCopied, partRemoved } from './file-edits.js';
import { fieldNodes, optionNodes, pathOf } from './part-nodes.js';
import { type PartPlace, placeIn, placeText } from './part-place.js';
import { partFields } from './parts-text.js';

/** The form for one part of a file. */
export interface PartForm {
  readonly element: Element;
  /** Shows the parts of a file. */
  show(file: PartsFile): void;
}

/** A change of the part that is shown, and what to show and say once it has come through. */
interface PartChange {
  readonly change: (file: PartsFile, place: PartPlace) => PartsFile;
  readonly step: number;
  readonly said: string;
}

/**
 * Makes the form: choose a part, write its values, copy it, remove it.
 *
 * @param edited - told of a change, which is made where its faults are told
 */
export function partForm(edited: (change: () => PartsFile) => void): PartForm {
  const element = formElement();
  const [which, fields, line] = [
    elementIn(element, 'select'),
    elementIn(element, '.part'),
    elementIn(element, '.told'),
  ];
  let shown: PartsFile | undefined;
  let made: { readonly file: PartsFile; readonly which: string; readonly said: string } | undefined;
  const showFields = (): void => {
    const place = placeIn(which.value);
    const values = shown === undefined || place === undefined ? [] : partFields(shown.text, place);
    // Patched, not replaced: the field that a reader has just gone on to keeps the focus.
    patchChildren(fields, values.flatMap(fieldNodes));
    for (const [at, input] of fields.querySelectorAll('input').entries())
      input.value = values[at]?.text ?? '';
  };
  which.addEventListener('input', () => {
    line.textContent = '';
    showFields();
  });
  listen(element, ({ change, step, said }) => {
    const [file, place] = [shown, placeIn(which.value)];
    if (file === undefined || place === undefined) return;
    line.textContent = '';
    const next = placeText({ ...place, index: Math.max(0, place.index + step) });
    edited(() => {
      made = { file: change(file, place), which: next, said };
      return made.file;
    });
  });
  return {
    element,
    show(file) {
      shown = file;
      const { which: chosen, said } = made?.file === file ? made : { which: which.value, said: '' };
      which.replaceChildren(...optionNodes(file));
      which.value = chosen;
      if (which.value === '') which.selectedIndex = 0;
      line.textContent = said;
      if (said !== '') elementIn(element, 'input#parts-copy').value = '';
      showFields();
    },
  };
}

/** Listens to what a reader does in the form. */
function listen(element: Element, make: (change: PartChange) => void): void {
  elementIn(element, '.part').addEventListener('change', ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return;
    const [path, { value }] = [pathOf(target), target];
    make({ change: (file) => fieldWritten(file, path, value), step: 0, said: '' });
  });
  const name = elementIn(element, 'input#parts-copy');
  const copy = (): void => {
    const { value } = name;
    const said = `${value.trim()} is in the list; save the parts file to keep it.`;
    make({ change: (file, place) => partCopied(file, place, value), step: 1, said });
  };
  // Leaving the field must not copy the part, so that a reader can go on to the button or away.
  name.addEventListener('keydown', ({ key }) => {
    if (key === 'Enter') copy();
  });
  const [add, remove] = element.querySelectorAll('button');
  add?.addEventListener('click', copy);
  remove?.addEventListener('click', () =>
    make({
      change: partRemoved,
      step: -1,
      said: 'The part is out of the list; save the parts file to keep it so.',
    }),
  );
}

function formElement(): Element {
  const [element] =
    domNodes(html`<div><div class="control"><label for="parts-which">Change a part</label><select id="parts-which" autocomplete="off"></select></div>
<div class="part"></div>
<div class="control copy"><label for="parts-copy">Copy it under the name</label><input type="text" id="parts-copy" autocomplete="off" spellcheck="false"></div>
<p class="row"><button type="button">Add the copy</button> <button type="button">Remove this part</button></p>
<p class="told" role="status"></p></div>`);
  if (!(element instanceof Element)) throw new TypeError('the form is one element');
  return element;
}
