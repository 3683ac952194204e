import type { Notebook } from '../page/notebook.js';
import { pageBody } from '../page/page-body.js';
import { type Case, caseOf, figuresOf, type PartsFile, partsFile } from './case.js';
import { controls } from './controls.js';
import { failureText } from './failure.js';
import { afterPause, latest } from './latest.js';
import { pageTools } from './page-tools.js';
import { partsPanel } from './parts-panel.js';
import { patchChildren, patchWhenOpened } from './patch.js';
import type { CompiledSpecs } from './picture.js';
import { pictures } from './pictures.js';
import { fragmentOf, type Settings, settingsFor, settingsFrom } from './settings.js';
import { readStart } from './start.js';
import { registerTransforms } from './vega-transforms.js';

/** Time without a change after which the rest follows: pictures out of sight, the status line, the address [ms]. */
const pause = 250;

/** Makes the page of a notebook live: puts its controls in, and lets all that it shows follow them. */
export function livePage(notebook: Notebook, specs: CompiledSpecs): void {
  registerTransforms();
  const main = required('main');
  const given = readStart();
  const first = caseOf(notebook, partsFile(given.partsName, given.partsText), given.given);
  // A page that is being written comes empty.
  const empty = main.childElementCount === 0;
  if (empty) patchChildren(main, pageBody(first.body).nodes);
  const drawn = pictures(specs);
  let start: Case = first;
  let now: Case = first;
  let wanted: Pick<Case, 'file' | 'settings'> = first;
  let fromAddress = false;

  const parts = partsPanel({
    opened: (name, text) => readFile(name, text, openFile),
    edited: (name, text) =>
      readFile(name, text, (file) => {
        ask(file, settingsFor(file.parts, notebook.parameters, wanted.settings));
      }),
    back: () => goTo(first),
  });
  const panel = controls(required('.controls'), notebook.parameters, parts.element, {
    changed: (name, setting) => ask(wanted.file, { ...wanted.settings, [name]: setting }),
    reset: () => ask(wanted.file, settingsFor(wanted.file.parts, notebook.parameters, start.settings)),
  });

  const follow = latest(async () => {
    const begun = performance.now();
    try {
      await show(caseWanted());
      panel.complain('');
    } catch (error) {
      panel.complain(failureText(error));
      // What an address asks for in vain is forgotten; what a control asks for stays, until another control makes it possible.
      if (fromAddress) wanted = now;
    }
    fromAddress = false;
    performance.clearMeasures('redraw');
    performance.measure('redraw', { start: begun });
    settle();
  });
  const settle = afterPause(() => {
    history.replaceState(null, '', `#${fragmentOf(now.settings, start.settings)}`);
    panel.say(now.page.answer);
    void drawn.drawAll(figuresOf(now, start));
  }, pause);

  function caseWanted(): Case {
    const same = wanted.file === start.file && fragmentOf(wanted.settings, start.settings) === '';
    return same ? start : caseOf(notebook, wanted.file, wanted.settings);
  }

  function ask(file: PartsFile, settings: Settings): void {
    wanted = { file, settings };
    follow();
  }

  /** Begins anew with a case: it is what later ones are compared with. */
  function goTo(next: Case): void {
    start = next;
    ask(next.file, next.settings);
  }

  function readFile(name: string, text: string, use: (file: PartsFile) => void): void {
    try {
      use(partsFile(name, text));
    } catch (error) {
      panel.complain(failureText(error));
    }
  }

  function openFile(file: PartsFile): void {
    goTo(caseOf(notebook, file, settingsFor(file.parts, notebook.parameters, wanted.settings)));
  }

  async function show(next: Case): Promise<void> {
    showControls(next, now);
    now = next;
    patchChildren(main, pageBody(now.body).nodes);
    pageTools(() => ({ now, start }), drawn, panel.say);
    await drawn.drawSeen(figuresOf(now, start));
  }

  function showControls(next: Case, before?: Case): void {
    if (next.file !== before?.file) {
      panel.choose(next.file.parts);
      parts.show(next.file);
    }
    panel.show(next.settings);
  }

  const readAddress = (): void => {
    fromAddress = true;
    ask(wanted.file, settingsFrom(location.hash, notebook.parameters, start.settings));
  };
  patchWhenOpened(main);
  addEventListener('hashchange', readAddress);
  matchMedia('(max-width:560px)').addEventListener('change', follow);
  document.documentElement.classList.add('live');
  showControls(first);
  pageTools(() => ({ now, start }), drawn, panel.say);
  if (location.hash.length > 1) readAddress();
  else if (empty) follow();
}

function required(selector: string): Element {
  const element = document.querySelector(selector);
  if (element === null) throw new TypeError(`the page has no ${selector}`);
  return element;
}
