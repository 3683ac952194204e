import { html } from '../../page/html/html.js';
import type { CourseKey } from '../../parts/course-entry.js';
import type { PartsFile } from '../../parts/parts-file.js';
import type { MeasuredUse } from '../case/measured-use.js';
import { elementIn } from '../document/element-in.js';
import { saveFile } from '../document/leave.js';
import { domNodes } from '../document/patch.js';
import { chosenFile } from './chosen-file.js';
import { courseForm } from './course-form.js';
import { dynoForm } from './dyno-form.js';
import { measuredSwitch } from './measured-switch.js';
import { partForm } from './part-form.js';

/** The panel for the reader's own parts. */
export interface PartsPanel {
  readonly element: Element;
  /** Shows the parts of a file. */
  show(file: PartsFile): void;
  /** Shows how its measured builds are taken. */
  showUse(use: MeasuredUse): void;
}

/** What the panel tells of. */
export interface PartsListeners {
  /** A file was opened from disk. */
  readonly opened: (name: string, bytes: Uint8Array) => void;
  /** A part is to be changed, copied or removed; the change is made where its faults are told. */
  readonly edited: (change: () => PartsFile) => void;
  /** The reader wants the parts that the page came with. */
  readonly back: () => void;
  /** The measured builds are to be taken as measured, or as stated. */
  readonly used: (measured: boolean) => void;
}

/** Recorded files that a page takes. */
export interface FilesTaken {
  /** Whether it asks for measurements, to which a dyno file can be added. */
  readonly measures: boolean;
  /** Key of a recording that goes into the parts. */
  readonly takes?: CourseKey;
}

/** What is kept on the device. */
export interface Keeping {
  /** Says what is kept and where, or that nothing can be. */
  readonly sentence: string;
  /** Forgets all of it; where nothing can be kept there is nothing to forget. */
  readonly forget: (() => void) | undefined;
}

/**
 * Makes the panel: open a file, change its parts, save the file. Nothing leaves the device.
 *
 * @param listeners - told of what the reader does
 * @param keeping - what is kept on the device, where something may be
 * @param files - what else the page takes
 */
export function partsPanel(
  { opened, edited, back, used }: PartsListeners,
  keeping: Keeping | undefined,
  files: FilesTaken,
): PartsPanel {
  const element = panelElement(keeping);
  const form = partForm(edited);
  const more = [
    ...(files.measures ? [dynoForm(edited)] : []),
    ...(files.takes === undefined ? [] : [courseForm(files.takes, edited)]),
  ];
  elementIn(element, '.form').replaceWith(form.element, ...more.map((one) => one.element));
  const use = measuredSwitch(used);
  elementIn(element, '.use').replaceWith(use.element);
  let shown: PartsFile | undefined;
  // The form is made when the panel is opened: it needs the tree of the file.
  const showForm = (): void => {
    if (shown === undefined || !element.hasAttribute('open')) return;
    form.show(shown);
    for (const one of more) one.show(shown);
  };
  element.addEventListener('toggle', showForm);
  const file = elementIn(element, 'input#parts-open');
  file.addEventListener('change', async () => {
    const chosen = await chosenFile(file);
    if (chosen !== undefined) opened(chosen.name, chosen.bytes);
  });
  const [save, original, forget] = element.querySelectorAll('.file button');
  save?.addEventListener('click', () => {
    if (shown !== undefined) saveFile(shown.name, new Blob([shown.text], { type: 'text/plain' }));
  });
  original?.addEventListener('click', back);
  forget?.addEventListener('click', () => keeping?.forget?.());
  return {
    element,
    showUse: use.show,
    show(next) {
      shown = next;
      elementIn(element, 'b').textContent = next.name;
      showForm();
    },
  };
}

function panelElement(keeping: Keeping | undefined): Element {
  const kept = keeping === undefined ? html`` : html`<p class="kept">${keeping.sentence}</p>`;
  const forget =
    keeping?.forget === undefined ? html`` : html` <button type="button">Forget what is kept</button>`;
  const [element] = domNodes(html`<details class="panel parts"><summary>Parts</summary>
<p>From <b></b>; what you open or change stays on this device.</p>
<div class="control"><label for="parts-open">Open a parts file</label><input type="file" id="parts-open" accept=".yaml,.yml,.json"></div>
<div class="use"></div><div class="form"></div>
<p class="row file"><button type="button">Save parts file</button> <button type="button">Parts of this page</button>${forget}</p>${kept}</details>`);
  if (!(element instanceof Element)) throw new TypeError('the panel is one element');
  return element;
}
