import { requireShape } from '../../base/shape.js';
import {
  type Cell,
  type Column,
  columnHeading,
  displayNumber,
  type Table,
  tableShape,
} from '../../plot/chart/table.js';

/**
 * A table as comma-separated values (RFC 4180): one heading row, numbers in the unit of the heading, kept to six digits.
 *
 * @param table - the table
 * @returns CSV text
 *
 * @public
 */
export function tableCsv(table: Table): string {
  requireShape({ table }, { table: tableShape });
  const { columns, rows } = table;
  const lines = [
    columns.map((column) => csvText(columnHeading(column))),
    ...rows.map((row) => columns.map((column, index) => csvCell(column, row[index] ?? null))),
  ];
  return lines.map((line) => `${line.join(',')}\r\n`).join('');
}

/** A cell in the unit of its heading. */
export function plainCell(column: Column, cell: Cell): Cell {
  return typeof cell === 'number' ? displayNumber(column, cell) : cell;
}

function csvCell(column: Column, cell: Cell): string {
  const plain = plainCell(column, cell);
  return typeof plain === 'string' ? csvText(plain) : plain === null ? '' : String(plain);
}

/** A spreadsheet runs a text that starts like a formula; an apostrophe keeps it a text. */
function csvText(text: string): string {
  const harmless = /^[=+\-@\t\r]/u.test(text) ? `'${text}` : text;
  return /[",\r\n]/u.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
