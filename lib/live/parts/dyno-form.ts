import { html } from '../../page/html/html.js';
import type { PartsFile } from '../../parts/parts-file.js';
import { fileText } from '../../parts/source/file-text.js';
import { elementIn } from '../document/element-in.js';
import { domNodes } from '../document/patch.js';
import { chosenFile } from './chosen-file.js';
import { dynoAdded } from './file-edits.js';

/** The form for a dyno file. */
export interface DynoForm {
  readonly element: Element;
  /** Shows the builds of a file. */
  show(file: PartsFile): void;
}

/**
 * Makes the form: of which build the record is, how warm the oil was, where the travel is 0, and the file itself.
 *
 * @param edited - told of a change, which is made where its faults are told
 */
export function dynoForm(edited: (change: () => PartsFile) => void): DynoForm {
  const element = formElement();
  const [build, file] = [elementIn(element, 'select'), elementIn(element, 'input#dyno-open')];
  const line = elementIn(element, '.told');
  let shown: PartsFile | undefined;
  let made: { readonly file: PartsFile; readonly said: string } | undefined;
  const written = (id: 'shock' | 'temperature' | 'zero'): string =>
    elementIn(element, `input#dyno-${id}`).value.trim();
  file.addEventListener('change', async () => {
    const before = shown;
    const chosen = await chosenFile(file);
    if (chosen === undefined || before === undefined) return;
    const [shock, zeroAt] = [written('shock'), written('zero')];
    const entry = {
      build: build.value,
      temperature: written('temperature'),
      ...(shock === '' ? {} : { shock }),
      ...(zeroAt === '' ? {} : { zeroAt }),
    };
    line.textContent = '';
    edited(() => {
      const next = dynoAdded(before, { ...entry, record: fileText(chosen.bytes, chosen.name) });
      const said = `${chosen.name} is the last of the measurements; choose its shock in the settings, and save the parts file to keep it.`;
      made = { file: next, said };
      return next;
    });
  });
  return {
    element,
    show(next) {
      shown = next;
      const { value } = build;
      build.replaceChildren(
        ...next.parts.builds.flatMap(({ name }) => domNodes(html`<option value="${name}">${name}</option>`)),
      );
      if (next.parts.builds.some(({ name }) => name === value)) build.value = value;
      line.textContent = made?.file === next ? made.said : '';
    },
  };
}

function formElement(): Element {
  const [element] =
    domNodes(html`<div class="dyno"><div class="control"><label for="dyno-build">A dyno file is of</label><select id="dyno-build" autocomplete="off"></select></div>
<div class="control text"><label for="dyno-shock">of its shock, if you name them</label><input type="text" id="dyno-shock" autocomplete="off" spellcheck="false"></div>
<div class="control text"><label for="dyno-temperature">with oil at</label><input type="text" id="dyno-temperature" value="20 °C" autocomplete="off" spellcheck="false"></div>
<div class="control text"><label for="dyno-zero">and the shaft in, where its travel is 0, by</label><input type="text" id="dyno-zero" placeholder="0 mm" autocomplete="off" spellcheck="false"></div>
<div class="control"><label for="dyno-open">Open the dyno file</label><input type="file" id="dyno-open" accept=".csv,.tsv,.txt"></div>
<p class="told" role="status"></p></div>`);
  if (!(element instanceof Element)) throw new TypeError('the form is one element');
  return element;
}
