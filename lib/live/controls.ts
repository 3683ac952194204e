import { html } from '../page/html.js';
import { optionName } from '../page/parameter-text.js';
import type { Parameters } from '../page/parameters.js';
import type { Parts } from '../parts/parts.js';
import { type Control, control } from './control.js';
import { domNodes } from './patch.js';
import type { Settings } from './settings.js';

/** All controls of a page, and its lines for what happened. */
export interface Controls {
  show(settings: Settings): void;
  /** Says something to those who do not see the page change. */
  say(text: string): void;
  /** Says what is wrong; an empty text takes it away. */
  complain(text: string): void;
}

/** What the controls tell of. */
export interface Listeners {
  readonly changed: (name: string, setting: string | readonly string[]) => void;
  readonly reset: () => void;
}

/** Puts the controls of a notebook into their place. */
export function controls(
  place: Element,
  declaration: Parameters,
  parts: Parts,
  listeners: Listeners,
): Controls {
  const made = new Map<string, Control>();
  for (const [name, parameter] of Object.entries(declaration)) {
    const option = optionName(name);
    const told = (setting: string | readonly string[]): void => listeners.changed(option, setting);
    made.set(option, control(name, parameter, parts, told));
  }
  place.replaceChildren(
    ...domNodes(
      html`<details class="panel" open=""><summary>Settings</summary><div class="fields"></div><p><button type="button">Back to the start</button></p></details><pre class="fault" role="alert"></pre><p class="status" role="status"></p>`,
    ),
  );
  place.querySelector('.fields')?.append(...[...made.values()].map(({ element }) => element));
  place.querySelector('button')?.addEventListener('click', listeners.reset);
  const setText = (selector: string, text: string): void => {
    const line = place.querySelector(selector);
    if (line !== null && line.textContent !== text) line.textContent = text;
  };
  return {
    show(settings) {
      for (const [name, one] of made) one.show(settings[name] ?? '');
    },
    say: (text) => setText('.status', text),
    complain: (text) => setText('.fault', text),
  };
}
