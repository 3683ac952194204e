import { blocksOf, figuresIn } from '../page/blocks/page.js';
import { tableCsv } from '../page/html/table-csv.js';
import { besideItsStart, type Case } from './case/case.js';
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
      const tables = blocksOf(cases().now.page).flatMap((block) => {
        if (block.kind === 'figure') return block.figure.id === id ? [block.figure.table] : [];
        return block.kind === 'table' && block.id === id ? [block.table] : [];
      });
      return tables.map(tableCsv).join('');
    };
    const svg = async (): Promise<SVGElement> => {
      const { now, start } = cases();
      const shown = figuresIn(now.page).find((one) => one.id === id);
      if (shown === undefined) throw new TypeError(`no figure ${id}`);
      return drawn.svg(besideItsStart(shown, start), 'wide');
    };
    const isFigure = place.parentElement?.localName === 'figure';
    figureTools(place, id, { csv, say, ...(isFigure ? { svg } : {}) });
  }
}
