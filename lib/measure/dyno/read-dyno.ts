import { listOf, optional, requireShape, type Shape, someText } from '../../base/shape.js';
import { dynoColumns } from './dyno-columns.js';
import { recordRows, requireRisingTime } from './record-rows.js';

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

/** Rows that a record needs to say anything. */
const fewestRows = 4;

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
  const { header, rows, requireRows, numberAt } = recordRows(text);
  const columns = dynoColumns(header);
  requireRows(fewestRows);
  const values = columns.map(
    ({ name, index, toSi }) => [name, rows.map((_, row) => toSi(numberAt(row, index, name)))] as const,
  );
  const found: DynoRecord = { force: [], ...Object.fromEntries(values) };
  requireRisingTime(found.time);
  return found;
}
