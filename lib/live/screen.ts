import { blocksOfPiece } from '../page/blocks/later.js';
import { figuresIn } from '../page/blocks/page.js';
import type { Html } from '../page/html/html.js';
import { pageBody } from '../page/html/page-body.js';
import type { Figure } from '../plot/chart/figure.js';
import type { Actions } from './case/actions.js';
import { besideItsStart, type Case, caseInSight } from './case/case.js';
import { measuredUse } from './case/measured-use.js';
import type { Session } from './case/session.js';
import { controls } from './controls/controls.js';
import { blocksInWindow } from './document/in-window.js';
import { patchChildren, patchWhenOpened } from './document/patch.js';
import { nextTask } from './latest.js';
import { pageTools } from './page-tools.js';
import { type Keeping, partsPanel } from './parts/parts-panel.js';
import { motionPlayers } from './pictures/motion-player.js';
import type { CompiledSpecs } from './pictures/picture.js';
import { pictures } from './pictures/pictures.js';

/** What the reader sees of a session. */
export interface Screen {
  /** Shows a case: controls, texts, tables, and the pictures in sight. */
  show(next: Case): Promise<void>;
  /**
   * What can wait until the reader pauses: what is out of sight, the status line.
   *
   * @returns whether it came to its end: it leaves off where the reader goes on meanwhile
   * @throws InputError, ConvergenceError where some of it is not possible; the page is then again as it was when it was last whole
   */
  rest(): Promise<boolean>;
  say(text: string): void;
  complain(text: string): void;
}

/** What a screen is made with. */
export interface ScreenParts {
  readonly specs: CompiledSpecs;
  readonly keeping: Keeping | undefined;
  /** The middle of the page for a case; that of a notebook unless given. */
  readonly body?: (shown: Case) => Html;
}

/** The parameter of pages that work on the measurements of the file. */
const whichParameter = 'which';

/** Puts the controls into the page of a session. */
export function screen(
  main: Element,
  session: Session,
  { specs, keeping, body = bodyOf }: ScreenParts,
  act: Actions,
): Screen {
  const { parameters, takes } = session.notebook;
  // The page of a notebook that is being written comes empty, and so does each page of the one file.
  if (main.childElementCount === 0) patchChildren(main, body(session.now).nodes);
  const drawn = pictures(main, specs);
  const { bench } = session;
  const listeners = { opened: act.openFile, edited: act.editFile, back: act.back, used: act.use };
  const parts = partsPanel(listeners, keeping, {
    measures: whichParameter in parameters,
    ...(takes === undefined ? {} : { takes }),
  });
  const panel = controls(main, parameters, parts.element, { changed: act.change, reset: act.reset });
  const showControls = (next: Case, before?: Case): void => {
    if (next.file !== before?.file) {
      panel.choose(next.file.parts);
      parts.show(bench.file);
    }
    // A single page of the measurements themselves begins at the parts as stated, whatever is wanted.
    if (keeping !== undefined || !(whichParameter in parameters)) parts.showUse(measuredUse(bench));
    panel.show(next.settings);
  };
  const addTools = (): void => pageTools(main, () => session, drawn, panel.say);
  const players = motionPlayers(main);
  patchWhenOpened(main);
  showControls(session.now);
  addTools();
  players(session.now.page);
  const asDrawn = (figure: Figure): Figure => besideItsStart(figure, session.start);
  /** The case on the screen, where some of it may be older than the rest, and the last one that was on it whole. */
  let [shown, whole] = [session.now, session.now];
  const put = (next: Case): void => {
    shown = next;
    patchChildren(main, body(next).nodes);
    addTools();
    players(next.page);
  };
  return {
    async show(next) {
      const inSight = caseInSight(next, shown, blocksInWindow(main));
      showControls(next, session.now);
      session.now = next;
      put(inSight);
      await drawn.drawSeen(figuresIn(shown.page), asDrawn);
    },
    async rest() {
      const { now } = session;
      try {
        // A piece at a time, so that what the reader does meanwhile comes first.
        for (const piece of now.page.pieces ?? []) {
          if (piece.kind !== 'later' || piece.made) continue;
          blocksOfPiece(piece);
          await nextTask();
          if (session.now !== now) return false;
        }
      } catch (error) {
        // What is asked for cannot be had whole, so none of it stays.
        session.now = whole;
        put(whole);
        void drawn.drawAll(figuresIn(whole.page), asDrawn);
        throw error;
      }
      whole = now;
      put(now);
      panel.say(now.page.answer);
      await drawn.drawAll(figuresIn(now.page), asDrawn);
      return true;
    },
    say: panel.say,
    complain: panel.complain,
  };
}

function bodyOf({ body }: Case): Html {
  return pageBody(body);
}
