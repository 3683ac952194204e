import { figuresIn } from '../page/blocks/page.js';
import { pageTables, tableCsv } from '../page/html/export.js';
import { type Case, figuresOf } from './case/case.js';
import { figureTools } from './pictures/figure-tools.js';
import type { Pictures } from './pictures/pictures.js';

/** Puts buttons under the figures and tables that have none yet. The cases are asked for when a button is pressed. */
export function pageTools(
  main: Element,
  cases: () => { readonly now: Case; readonly start: Case },
  drawn: Pictures,
  say: (text: string) => void,
): void {
  for (const place of main.querySelectorAll('.tools:empty')) {
    const id = place.parentElement?.id ?? '';
    const csv = (): string => {
      const table = pageTables(cases().now.page).get(id);
      return table === undefined ? '' : tableCsv(table);
    };
    const svg = async (): Promise<SVGElement> => {
      const { now, start } = cases();
      const shown = figuresOf(now, start).find((one) => one.id === id);
      if (shown === undefined) throw new TypeError(`no figure ${id}`);
      return drawn.svg(shown, 'wide');
    };
    const isFigure = figuresIn(cases().now.page).some((one) => one.id === id);
    figureTools(place, id, { csv, say, ...(isFigure ? { svg } : {}) });
  }
}
