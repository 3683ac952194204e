import { type Html, html } from '../page/html/html.js';
import { indexTitle } from '../page/html/index-title.js';
import { pageBody } from '../page/html/page-body.js';
import type { Notebook } from '../page/notebook.js';
import { openBench } from './case/bench.js';
import type { Case } from './case/case.js';
import { readStart } from './case/start.js';
import { elementIn } from './document/element-in.js';
import { patchChildren } from './document/patch.js';
import { openFirst } from './first/first-page.js';
import { openKept } from './index/kept.js';
import { firstHead, firstLink, firstName, indexHead, pageEnd, pageHead } from './index/way.js';
import { openIndex } from './index-view.js';
import { type CompiledSpecs, narrowWindow } from './pictures/picture.js';
import { registerTransforms } from './pictures/vega-transforms.js';
import { openView, type View } from './view.js';

/** What a document can show at a time. */
interface Place {
  readonly view: Pick<View, 'main' | 'arrive'> & Partial<View>;
  readonly title: string;
  readonly head: () => Html;
  readonly end?: () => Html;
}

const firstTitle = 'Your first parts file';

/** Makes a document of all notebooks live: its index, and each page when it is first asked for. */
export function liveFile(notebooks: readonly Notebook[], specs: CompiledSpecs): void {
  registerTransforms();
  const start = readStart();
  const bench = openBench(
    start,
    notebooks.map(({ parameters }) => parameters),
  );
  const kept = openKept(start.fingerprint ?? '');
  kept.restore(bench);
  /** From the moment that all is to be forgotten, which a page at rest must not keep anew before the browser begins again. */
  let forgotten = false;
  const save = (): void => {
    if (!forgotten) kept.save(bench);
  };
  const keeping = {
    sentence: kept.possible
      ? 'What you choose and change is kept by this browser, on this device only, for this parts file: it is there when you open this file again.'
      : 'This browser keeps nothing for this file: what you choose and change lasts until you close or reload it. Save the parts file to keep your parts.',
    forget: kept.possible
      ? () => {
          kept.forget();
          forgotten = true;
          history.replaceState(null, '', location.href.split('?')[0]);
          location.reload();
        }
      : undefined,
  };

  const [header, end] = [elementIn(document.documentElement, 'header'), document.createElement('nav')];
  end.className = 'way end';
  end.setAttribute('aria-label', 'Next page');
  elementIn(document.documentElement, 'footer').before(end);
  let main: Element = elementIn(document.documentElement, 'main');
  const index = openIndex(main, notebooks, bench, { specs, keeping }, save);
  const pages = new Map<string, View>();
  const pageOf = (notebook: Notebook): View => {
    const opened =
      pages.get(notebook.name) ??
      openView(
        document.createElement('main'),
        notebook,
        bench,
        { specs, keeping, body: bodyWithWay },
        {
          rested(fragment) {
            if (forgotten) return;
            save();
            history.replaceState(null, '', `#${notebook.name}${fragment === '' ? '' : `?${fragment}`}`);
          },
        },
      );
    pages.set(notebook.name, opened);
    return opened;
  };

  const first = openFirst(bench, save);
  const indexPlace: Place = {
    view: index,
    title: indexTitle,
    head: () => indexHead(indexTitle, bench.file.parts.about),
  };
  const firstPlace: Place = { view: first, title: firstTitle, head: () => firstHead(firstTitle) };
  const placeOf = (name: string): Place => {
    if (name === firstName) return firstPlace;
    const at = notebooks.findIndex((one) => one.name === name);
    const [notebook, next] = [notebooks[at], notebooks[(at + 1) % notebooks.length]];
    if (notebook === undefined || next === undefined) return indexPlace;
    return {
      view: pageOf(notebook),
      title: notebook.title,
      head: () => pageHead(notebook, next),
      end: () => pageEnd(next),
    };
  };

  let shown: Place = indexPlace;
  const heights = new Map<Place['view'], number>();
  /** Whether the reader follows a link, and does not go back. */
  let onward = false;
  const go = (): void => {
    const [name = '', address] = location.hash.slice(1).split('?');
    heights.set(shown.view, scrollY);
    shown = placeOf(name);
    const { view, title } = shown;
    if (view.main !== main) main.replaceWith(view.main);
    main = view.main;
    patchChildren(header, shown.head().nodes);
    patchChildren(end, shown.end?.().nodes ?? []);
    document.title = title === indexTitle ? title : `${title} · ${indexTitle}`;
    view.arrive(address);
    scrollTo(0, onward ? 0 : (heights.get(view) ?? 0));
    if (onward) elementIn(header, 'h1#title').focus({ preventScroll: true });
    onward = false;
  };
  document.addEventListener('click', ({ target }) => {
    const link = target instanceof Element ? target.closest('a') : null;
    if (link?.getAttribute('href')?.startsWith('#') === true) onward = true;
  });
  addEventListener('hashchange', go);
  addEventListener('pagehide', save);
  narrowWindow.addEventListener('change', () => shown.view.follow?.());
  history.scrollRestoration = 'manual';
  document.documentElement.classList.add('live');
  go();
}

/** The middle of a page, with the way to a first parts file where the parts do not say enough. */
function bodyWithWay({ answered, body }: Case): Html {
  return answered ? pageBody(body) : html`${pageBody(body)}${firstLink}`;
}
