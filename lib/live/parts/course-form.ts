import { html } from '../../page/html/html.js';
import type { CourseKey } from '../../parts/course-entry.js';
import type { PartsFile } from '../../parts/parts-file.js';
import { fileText } from '../../parts/source/file-text.js';
import { elementIn } from '../document/element-in.js';
import { domNodes } from '../document/patch.js';
import { chosenFile } from './chosen-file.js';
import { courseAdded } from './file-edits.js';

/** The form for a recording of travel or of the ground. */
export interface CourseForm {
  readonly element: Element;
  /** Takes the file that a recording goes into. */
  show(file: PartsFile): void;
}

const labels: Readonly<Record<CourseKey, string>> = {
  'recorded-stroke': 'Open a recording of shaft travel',
  'recorded-ground': 'Open a recording of the ground',
};

/**
 * Makes the form: the file, and for a stroke where its travel is 0.
 *
 * @param edited - told of a change, which is made where its faults are told
 */
export function courseForm(key: CourseKey, edited: (change: () => PartsFile) => void): CourseForm {
  const element = formElement(key);
  const file = elementIn(element, 'input#course-open');
  const zero = key === 'recorded-stroke' ? elementIn(element, 'input#course-zero') : undefined;
  const told = elementIn(element, '.told');
  let shown: PartsFile | undefined;
  let made: { readonly file: PartsFile; readonly said: string } | undefined;
  file.addEventListener('change', async () => {
    const before = shown;
    const chosen = await chosenFile(file);
    if (chosen === undefined || before === undefined) return;
    const zeroAt = zero?.value.trim() ?? '';
    told.textContent = '';
    edited(() => {
      const record = fileText(chosen.bytes, chosen.name);
      const next = courseAdded(before, key, { record, ...(zeroAt === '' ? {} : { zeroAt }) });
      made = {
        file: next,
        said: `${chosen.name} is part of the parts now; save the parts file to keep it.`,
      };
      return next;
    });
  });
  return {
    element,
    show(next) {
      shown = next;
      told.textContent = made?.file === next ? made.said : '';
    },
  };
}

function formElement(key: CourseKey): Element {
  const zero =
    key === 'recorded-stroke'
      ? html`<div class="control text"><label for="course-zero">The shaft in, where its travel is 0, by</label><input type="text" id="course-zero" placeholder="0 mm" autocomplete="off" spellcheck="false"></div>
`
      : html``;
  const [element] =
    domNodes(html`<div class="course">${zero}<div class="control"><label for="course-open">${labels[key]}</label><input type="file" id="course-open" accept=".csv,.tsv,.txt"></div>
<p class="told" role="status"></p></div>`);
  if (!(element instanceof Element)) throw new TypeError('the form is one element');
  return element;
}
