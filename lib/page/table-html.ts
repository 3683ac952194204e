import { type Cell, type Column, displayCell, type Table } from '../plot/table.js';
import { type Html, html } from './html.js';

/** A table that scrolls in its own box where the window is narrower. */
export function tableHtml(table: Table, caption: string): Html {
  return html`<div class="table" role="region" aria-label="${caption}" tabindex="0"><table>
<caption>${caption}</caption>
<thead><tr>${table.columns.map(headingHtml)}</tr></thead>
<tbody>
${table.rows.map(
  (row) => html`<tr>${table.columns.map((column, index) => cellHtml(column, row[index] ?? null, index))}</tr>
`,
)}</tbody>
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
  const unit = column.unit === '' ? '' : html`<span class="unit">${column.unit}</span>`;
  return html`<th scope="col">${column.label}${unit === '' ? '' : ', '}${unit}</th>`;
}

function cellHtml(column: Column, cell: Cell, index: number): Html {
  const text = displayCell(column, cell);
  if (typeof cell === 'number') return html`<td class="number">${text}</td>`;
  return index === 0 ? html`<th scope="row">${text}</th>` : html`<td>${text}</td>`;
}
