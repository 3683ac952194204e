import type { Notebook } from '../page/notebook.js';
import { pageBody } from '../page/page-body.js';
import { type Case, caseOf, figuresOf, partsFile } from './case.js';
import { controls } from './controls.js';
import { failureText } from './failure.js';
import { afterPause, latest } from './latest.js';
import { pageTools } from './page-tools.js';
import { patchChildren, patchWhenOpened } from './patch.js';
import type { CompiledSpecs } from './picture.js';
import { pictures } from './pictures.js';
import { fragmentOf, type Settings, settingsFrom } from './settings.js';
import { readStart } from './start.js';
import { registerTransforms } from './vega-transforms.js';

/** Time without a change after which the rest follows: the other width, the status line, the address [ms]. */
const pause = 250;

/** Makes the page of a notebook live: puts its controls in, and lets all that it shows follow them. */
export function livePage(notebook: Notebook, specs: CompiledSpecs): void {
  registerTransforms();
  const main = required('main');
  const given = readStart();
  const start = caseOf(notebook, partsFile(given.partsName, given.partsText), given.given);
  const drawn = pictures(specs);
  let now: Case = start;
  let wanted: Settings = start.settings;
  let fromAddress = false;

  const panel = controls(required('.controls'), notebook.parameters, start.file.parts, {
    changed: (name, setting) => ask({ ...wanted, [name]: setting }),
    reset: () => ask(start.settings),
  });
  const follow = latest(async () => {
    const begun = performance.now();
    try {
      const next = fragmentOf(wanted, start.settings) === '' ? start : caseOf(notebook, start.file, wanted);
      await show(next);
      panel.complain('');
    } catch (error) {
      panel.complain(failureText(error));
      // What an address asks for in vain is forgotten; what a control asks for stays, until another control makes it possible.
      if (fromAddress) wanted = now.settings;
    }
    fromAddress = false;
    performance.clearMeasures('redraw');
    performance.measure('redraw', { start: begun });
    settle();
  });
  const settle = afterPause(() => {
    history.replaceState(null, '', `#${fragmentOf(now.settings, start.settings)}`);
    panel.say(now.page.answer);
    void drawn.drawHidden(figuresOf(now, start));
  }, pause);

  function ask(settings: Settings): void {
    wanted = settings;
    follow();
  }

  async function show(next: Case): Promise<void> {
    now = next;
    panel.show(now.settings);
    patchChildren(main, pageBody(now.body).nodes);
    pageTools(() => ({ now, start }), drawn, panel.say);
    await drawn.drawShown(figuresOf(now, start));
  }

  patchWhenOpened(main);
  const readAddress = (): void => {
    fromAddress = true;
    ask(settingsFrom(location.hash, notebook.parameters, start.settings));
  };
  addEventListener('hashchange', readAddress);
  matchMedia('(max-width:560px)').addEventListener('change', follow);
  document.documentElement.classList.add('live');
  panel.show(start.settings);
  pageTools(() => ({ now, start }), drawn, panel.say);
  if (location.hash.length > 1) readAddress();
}

function required(selector: string): Element {
  const element = document.querySelector(selector);
  if (element === null) throw new TypeError(`the page has no ${selector}`);
  return element;
}
