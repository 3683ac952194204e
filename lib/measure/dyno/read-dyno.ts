import { dsvFormat } from 'd3-dsv';
import { InputError } from '../../base/input-error.js';
import { listOf, optional, requireShape, type Shape, someText } from '../../base/shape.js';
import { type ColumnName, type DynoColumn, dynoColumns } from './dyno-columns.js';

/**
 * What a dyno recorded, in SI: force, with speed, or with time and travel, or with all.
 *
 * @public
 */
export interface DynoRecord {
  /** [s], rising. */
  readonly time?: readonly number[];
  /** [m]. */
  readonly travel?: readonly number[];
  /** [m/s]. */
  readonly speed?: readonly number[];
  /** [N]. */
  readonly force: readonly number[];
}

/** Form of {@link DynoRecord}. */
export const dynoRecordShape: Shape = {
  time: optional(listOf('s')),
  travel: optional(listOf('m')),
  speed: optional(listOf('m/s')),
  force: listOf('N'),
};

const delimiters = ['\t', ';', ','] as const;
/** Rows that a record needs to say anything. */
const fewestRows = 4;

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
  return delimiters[counts.indexOf(most)] ?? ',';
}

function numberOf(cell: string, name: ColumnName, row: number, delimiter: string): number {
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
 * Reads a dyno file: a header that names each column with its unit, then one row of numbers a sample. Columns are parted by tab, semicolon or comma;
 * decimal commas are read unless commas part the columns. Rows are counted from 1 below the header.
 *
 * @param text - of the file
 * @returns the columns known by name, in SI
 * @throws InputError that names the column or row: no unit, a missing column, an empty cell, a decimal comma that cannot be told from a separator, time
 * that runs back
 * @public
 */
export function readDynoFile(text: string): DynoRecord {
  requireShape({ text }, { text: someText });
  const lines = text
    .replace(/^\uFEFF/u, '')
    .split(/\r?\n/u)
    .filter((line) => line.trim() !== '' && !line.startsWith('#'));
  const [header = ''] = lines;
  const delimiter = delimiterOf(header);
  const [names = [], ...rows] = dsvFormat(delimiter).parseRows(lines.join('\n'));
  const columns = dynoColumns(names);
  if (rows.length < fewestRows) {
    throw new InputError({ field: 'rows', value: rows.length, accepted: `${fewestRows} or more` });
  }
  rows.forEach((cells, index) => {
    if (cells.length <= names.length) return;
    if (delimiter === ',') throw decimalComma(index + 1, cells.join(','));
    throw new InputError({
      field: `row ${index + 1}`,
      value: cells.length,
      accepted: `${names.length} cells`,
    });
  });
  const values = ({ name, index, toSi }: DynoColumn): readonly number[] =>
    rows.map((cells, row) => toSi(numberOf(cells[index] ?? '', name, row + 1, delimiter)));
  const record = Object.fromEntries(columns.map((column) => [column.name, values(column)]));
  const found: DynoRecord = { force: [], ...record };
  requireRisingTime(found.time);
  return found;
}

function requireRisingTime(time: readonly number[] | undefined): void {
  time?.forEach((value, index) => {
    const before = time[index - 1];
    if (before !== undefined && !(value > before)) {
      throw new InputError({
        field: 'time',
        value,
        unit: 's',
        accepted: `above ${before} in row ${index + 1}`,
      });
    }
  });
}
