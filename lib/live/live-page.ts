import type { Notebook } from '../page/notebook.js';
import { openBench } from './case/bench.js';
import { readStart } from './case/start.js';
import { elementIn } from './document/element-in.js';
import { type CompiledSpecs, narrowWindow } from './pictures/picture.js';
import { registerTransforms } from './pictures/vega-transforms.js';
import { openView } from './view.js';

/** Makes the document of one notebook live. */
export function livePage(notebook: Notebook, specs: CompiledSpecs): void {
  registerTransforms();
  const main = elementIn(document.documentElement, 'main');
  const empty = main.childElementCount === 0;
  const bench = openBench(readStart(), [notebook.parameters]);
  const view = openView(
    main,
    notebook,
    bench,
    { specs, keeping: undefined },
    { rested: (fragment) => history.replaceState(null, '', `#${fragment}`) },
  );
  const readAddress = (): void => view.arrive(location.hash.slice(1));
  addEventListener('hashchange', readAddress);
  narrowWindow.addEventListener('change', view.follow);
  document.documentElement.classList.add('live');
  if (location.hash.length > 1) readAddress();
  else if (empty) view.follow();
}
