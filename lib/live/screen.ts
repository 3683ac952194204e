import { pageBody } from '../page/html/page-body.js';
import type { Actions } from './case/actions.js';
import { type Case, figuresOf } from './case/case.js';
import type { Session } from './case/session.js';
import { fragmentOf } from './case/settings.js';
import { controls } from './controls/controls.js';
import { patchChildren, patchWhenOpened } from './document/patch.js';
import { pageTools } from './page-tools.js';
import { partsPanel } from './parts/parts-panel.js';
import type { CompiledSpecs } from './pictures/picture.js';
import { pictures } from './pictures/pictures.js';

/** What the reader sees of a session. */
export interface Screen {
  /** Shows a case: controls, texts, tables, and the pictures in sight. */
  show(next: Case): Promise<void>;
  /** What can wait until the reader pauses: pictures out of sight, the status line, the address. */
  rest(): void;
  complain(text: string): void;
}

/** Puts the controls into the page of a session. */
export function screen(main: Element, session: Session, specs: CompiledSpecs, act: Actions): Screen {
  const { parameters } = session.notebook;
  const drawn = pictures(specs);
  const parts = partsPanel({ opened: act.openFile, edited: act.editFile, back: act.back });
  const panel = controls(main, parameters, parts.element, { changed: act.change, reset: act.reset });
  const showControls = (next: Case, before?: Case): void => {
    if (next.file !== before?.file) {
      panel.choose(next.file.parts);
      parts.show(next.file);
    }
    panel.show(next.settings);
  };
  const addTools = (): void => pageTools(() => session, drawn, panel.say);
  patchWhenOpened(main);
  showControls(session.now);
  addTools();
  return {
    async show(next) {
      showControls(next, session.now);
      session.now = next;
      patchChildren(main, pageBody(next.body).nodes);
      addTools();
      await drawn.drawSeen(figuresOf(next, session.start));
    },
    rest() {
      const { now, start } = session;
      history.replaceState(null, '', `#${fragmentOf(now.settings, start.settings)}`);
      panel.say(now.page.answer);
      void drawn.drawAll(figuresOf(now, start));
    },
    complain: panel.complain,
  };
}
