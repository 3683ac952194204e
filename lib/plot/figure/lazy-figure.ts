import type { Drawing, LayoutName } from '../chart/drawing.js';
import type { Chart, Figure } from '../chart/figure.js';
import type { Table } from '../chart/table.js';

/**
 * A figure whose drawings and numbers are made when they are first asked for: a page shows one width of the two, and nobody looks at the
 * numbers while a slider moves.
 */
export function lazyFigure(
  chart: Chart,
  draw: (layout: LayoutName) => Drawing,
  numbers: () => Table,
): Figure {
  const { id, title, alt } = chart.shows;
  const drawn: Partial<Record<LayoutName, Drawing>> = {};
  const drawing = (layout: LayoutName): Drawing => {
    drawn[layout] ??= draw(layout);
    return drawn[layout];
  };
  let table: Table | undefined;
  return {
    id,
    title,
    alt,
    drawings: {
      get wide() {
        return drawing('wide');
      },
      get narrow() {
        return drawing('narrow');
      },
    },
    get table() {
      table ??= numbers();
      return table;
    },
    chart,
  };
}
