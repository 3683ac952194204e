import { dsvFormat } from 'd3-dsv';
import { InputError } from '../../base/input-error.js';

/** A recorded file taken apart: the cells of its header, and of each row below. */
export interface RecordRows {
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Refuses fewer rows than say anything, and a row with more cells than the header has. */
  readonly requireRows: (fewest: number) => void;
  /** The number in a cell; rows are counted from 0 below the header. */
  readonly numberAt: (row: number, column: number, name: string) => number;
}

const delimiters = ['\t', ';', ','] as const;

/** The delimiter that the header has most of. */
function delimiterOf(header: string): string {
  const counts = delimiters.map((delimiter) => header.split(delimiter).length - 1);
  const most = Math.max(...counts);
  if (most === 0) {
    throw new InputError({
      field: 'header',
      value: header,
      accepted: 'two or more columns parted by tab, ; or ,',
    });
  }
  return delimiters[counts.indexOf(most)]!;
}

function numberOf(cell: string, name: string, row: number, delimiter: string): number {
  const text = cell.trim();
  const comma = text.includes(',');
  if (comma && delimiter === ',') throw decimalComma(row, text);
  const value = text === '' ? Number.NaN : Number(comma ? text.replace(',', '.') : text.replace('−', '-'));
  if (!Number.isFinite(value)) {
    throw new InputError({ field: name, value: JSON.stringify(cell), accepted: `a number in row ${row}` });
  }
  return value;
}

function decimalComma(row: number, value: string): InputError {
  const accepted = 'written with decimal points, or with ; between the columns';
  return new InputError({ field: `row ${row}`, value, accepted });
}

/**
 * Takes a recorded file apart: a header, then one row of numbers a sample. Columns are parted by tab, semicolon or comma; decimal commas are read unless commas part the
 * columns. Lines with `#` and blank lines are passed over.
 *
 * @throws InputError that names the row, counted from 1 below the header
 */
export function recordRows(text: string): RecordRows {
  const lines = text
    .replace(/^\uFEFF/u, '')
    .split(/\r?\n/u)
    .filter((line) => line.trim() !== '' && !line.startsWith('#'));
  const delimiter = delimiterOf(lines[0] ?? '');
  const [header = [], ...rows] = dsvFormat(delimiter).parseRows(lines.join('\n'));
  const requireRows = (fewest: number): void => {
    if (rows.length < fewest) {
      throw new InputError({ field: 'rows', value: rows.length, accepted: `${fewest} or more` });
    }
    rows.forEach((cells, index) => {
      if (cells.length <= header.length) return;
      if (delimiter === ',') throw decimalComma(index + 1, cells.join(','));
      throw new InputError({
        field: `row ${index + 1}`,
        value: cells.length,
        accepted: `${header.length} cells`,
      });
    });
  };
  const numberAt = (row: number, column: number, name: string) =>
    numberOf(rows[row]?.[column] ?? '', name, row + 1, delimiter);
  return { header, rows, requireRows, numberAt };
}

/** Refuses times that do not rise, by their row. */
export function requireRisingTime(time: readonly number[] | undefined): void {
  time?.forEach((value, index) => {
    const before = time[index - 1];
    if (before !== undefined && !(value > before)) {
      throw new InputError({
        field: 'time',
        value: `${value} s`,
        accepted: `above ${before} s, the time before it, in row ${index + 1}`,
      });
    }
  });
}
