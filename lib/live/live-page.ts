import { pageBody } from '../page/html/page-body.js';
import type { Notebook } from '../page/notebook.js';
import { actions } from './case/actions.js';
import { failureText } from './case/failure.js';
import { caseWanted, openSession, type Session } from './case/session.js';
import { patchChildren } from './document/patch.js';
import { afterPause, latest } from './latest.js';
import { type CompiledSpecs, narrowWindow } from './pictures/picture.js';
import { registerTransforms } from './pictures/vega-transforms.js';
import { type Screen, screen } from './screen.js';

/** Time without a change after which the rest follows [ms]. */
const pause = 250;

/** Makes the page of a notebook live: puts its controls in, and lets all that it shows follow them. */
export function livePage(notebook: Notebook, specs: CompiledSpecs): void {
  registerTransforms();
  const main = document.querySelector('main');
  if (main === null) throw new TypeError('the page has no middle');
  const session = openSession(notebook);
  // The page of a notebook that is being written comes empty.
  const empty = main.childElementCount === 0;
  if (empty) patchChildren(main, pageBody(session.first.body).nodes);

  const act = actions(
    session,
    () => follow(),
    (text) => shown.complain(text),
  );
  const shown = screen(main, session, specs, act);
  const rest = afterPause(shown.rest, pause);
  const follow = latest(async () => {
    await redraw(session, shown);
    rest();
  });
  addEventListener('hashchange', act.readAddress);
  narrowWindow.addEventListener('change', follow);
  document.documentElement.classList.add('live');
  if (location.hash.length > 1) act.readAddress();
  else if (empty) follow();
}

/** Shows what is asked for, or says why it cannot be; the time it takes is left as a measure for benchmarks. */
async function redraw(session: Session, shown: Screen): Promise<void> {
  const begun = performance.now();
  try {
    await shown.show(caseWanted(session));
    shown.complain('');
  } catch (error) {
    shown.complain(failureText(error));
    // What an address asks for in vain is forgotten; what a control asks for stays, until another control makes it possible.
    if (session.fromAddress) session.wanted = session.now;
  }
  session.fromAddress = false;
  performance.clearMeasures('redraw');
  performance.measure('redraw', { start: begun });
}
