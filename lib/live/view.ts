import type { Notebook } from '../page/notebook.js';
import { type Actions, actions } from './case/actions.js';
import type { Bench } from './case/bench.js';
import { fragmentOf } from './case/choices.js';
import { failureText } from './case/failure.js';
import { caseWanted, keepAddress, openSession, type Session } from './case/session.js';
import { afterPause, latest } from './latest.js';
import { type Screen, type ScreenParts, screen } from './screen.js';

/** Time without a change after which the rest follows [ms]. */
const pause = 250;

/** The page of a notebook in a document. */
export interface View {
  readonly main: Element;
  /** Comes to the page, with the choices of an address or those made before. */
  readonly arrive: Actions['arrive'];
  /** Draws it again, as for a window of another width. */
  follow(): void;
  complain(text: string): void;
}

/** What a view tells of. */
export interface ViewListeners {
  /** The reader pauses; the choices that the page shows, as a fragment of an address. */
  readonly rested: (fragment: string) => void;
}

/** Makes the page of a notebook live: puts its controls in, and lets all that it shows follow them. */
export function openView(
  main: Element,
  notebook: Notebook,
  bench: Bench,
  parts: ScreenParts,
  { rested }: ViewListeners,
): View {
  const session = openSession(notebook, bench);
  const act = actions(
    session,
    () => follow(),
    (text) => shown.complain(text),
  );
  const shown = screen(main, session, parts, act);
  const rest = afterPause(() => {
    // A reader who has gone on to another page does not see this one.
    if (!main.isConnected) return;
    void makeWhole(shown);
    rested(fragmentOf(notebook.parameters, bench.choices));
  }, pause);
  const follow = latest(async () => {
    await redraw(session, shown);
    rest();
  });
  return { main, arrive: act.arrive, follow, complain: shown.complain };
}

/** Shows what is asked for, or says why it cannot be; the time it takes is left as a measure for benchmarks. */
async function redraw(session: Session, shown: Screen): Promise<void> {
  const begun = performance.now();
  try {
    await shown.show(caseWanted(session));
    keepAddress(session);
    shown.complain(leftOut(session));
  } catch (error) {
    shown.complain(failureText(error));
    // What an address asks for in vain is forgotten; what a control asks for stays, until another control makes it possible.
    session.address = undefined;
  }
  leaveMeasure('redraw', begun);
}

/** Shows the rest of the page, or says why it cannot be; the time it takes is left as a measure, as that of a redraw. */
async function makeWhole(shown: Screen): Promise<void> {
  const begun = performance.now();
  try {
    if (!(await shown.rest())) return;
  } catch (error) {
    shown.complain(failureText(error));
  }
  leaveMeasure('whole', begun);
}

function leaveMeasure(name: string, start: number): void {
  performance.clearMeasures(name);
  performance.measure(name, { start });
}

function leftOut({ without }: Session): string {
  if (without.size === 0) return '';
  return `What you chose elsewhere does not fit this page, which goes without it.\n${[...without.values()].join('\n')}`;
}
