import { html } from '../../page/html/html.js';
import { optionName } from '../../page/parameters/parameter-text.js';
import type { Parameters } from '../../page/parameters/parameters.js';
import type { Parts } from '../../parts/parts.js';
import type { Settings } from '../case/settings.js';
import { domNodes } from '../document/patch.js';
import { type Control, control } from './control.js';

/** The panel of the settings, and the lines of the page for what happened. */
export interface Controls {
  /** Makes the controls anew for the parts of a file. */
  choose(parts: Parts): void;
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

/** Puts the controls of a notebook into their place, with the panel of the parts under them. */
export function controls(
  main: Element,
  declaration: Parameters,
  partsPanel: Element,
  { changed, reset }: Listeners,
): Controls {
  const place = main.querySelector('.controls');
  if (place === null) throw new TypeError('the page has no place for controls');
  const made = new Map<string, Control>();
  const none = Object.keys(declaration).length === 0;
  place.replaceChildren(
    ...domNodes(
      none
        ? html``
        : html`<details class="panel"><summary>Settings</summary><div class="fields"></div><p><button type="button">Back to the start</button></p></details>`,
    ),
    partsPanel,
    ...domNodes(html`<pre class="fault" role="alert"></pre><p class="status" role="status"></p>`),
  );
  // Beside the figures there is room for it; above them it would hide them.
  place.querySelector('details')?.toggleAttribute('open', matchMedia('(min-width:62rem)').matches && !none);
  place.querySelector('button')?.addEventListener('click', reset);
  const setText = (selector: string, text: string): void => {
    const line = place.querySelector(selector);
    if (line !== null && line.textContent !== text) line.textContent = text;
  };
  return {
    choose(parts) {
      for (const [name, parameter] of Object.entries(declaration)) {
        const option = optionName(name);
        made.set(
          option,
          control(name, parameter, parts, (setting) => changed(option, setting)),
        );
      }
      place.querySelector('.fields')?.replaceChildren(...[...made.values()].map(({ element }) => element));
    },
    show(settings) {
      for (const [name, one] of made) one.show(settings[name] ?? '');
    },
    say: (text) => setText('.status', text),
    complain: (text) => setText('.fault', text),
  };
}
