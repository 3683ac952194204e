import { type Cell, type Column, displayColumn, type Table } from '../../plot/chart/table.js';
import { type Html, html } from './html.js';
import { prose } from './prose.js';

/** A table that scrolls in its own box where the window is narrower. */
export function tableHtml({ columns, rows }: Table, caption: string): Html {
  const texts = columns.map((column, index) =>
    displayColumn(
      column,
      rows.map((row) => row[index] ?? null),
    ),
  );
  const body = rows.map((row, at) => {
    const cells = columns.map((_column, index) =>
      cellHtml(row[index] ?? null, texts[index]?.[at] ?? '', index),
    );
    return html`<tr>${cells}</tr>
`;
  });
  return html`<div class="table" role="group" aria-label="${caption}" tabindex="0"><table>
<caption>${prose(caption)}</caption>
<thead><tr>${columns.map(headingHtml)}</tr></thead>
<tbody>
${body}</tbody>
</table></div>`;
}

/** The rows of a long table that a reader can take in: every so-many-th, with the last. */
export function thinned(table: Table, most: number): Table {
  const step = Math.ceil((table.rows.length - 1) / (most - 1));
  if (step <= 1) return table;
  const last = table.rows.length - 1;
  return {
    columns: table.columns,
    rows: table.rows.filter((_row, index) => index % step === 0 || index === last),
  };
}

function headingHtml(column: Column): Html {
  const unit = column.unit === '' ? '' : html`, <span class="unit">${column.unit}</span>`;
  return html`<th scope="col">${prose(column.label)}${unit}</th>`;
}

function cellHtml(cell: Cell, text: string, index: number): Html {
  // Most cells are numbers, so that it is words that are marked.
  if (typeof cell === 'number') return html`<td>${text}</td>`;
  return index === 0
    ? html`<th scope="row">${prose(text)}</th>`
    : html`<td class="words">${prose(text)}</td>`;
}
