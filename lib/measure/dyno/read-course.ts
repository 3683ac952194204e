import { InputError } from '../../base/input-error.js';
import { timeWord, travelWord } from './dyno-columns.js';
import { type ColumnWord, type RecordColumn, recordColumns } from './record-columns.js';
import { recordRows, requireRisingTime } from './record-rows.js';

/** What was recorded against time: travel of a shaft, or height of the ground. */
export type CourseKind = 'travel' | 'height';

/**
 * A length against time as recorded, in SI.
 *
 * @public
 */
export interface RecordedCourse {
  /** Time of each row [s], from 0 on, rising. */
  readonly times: readonly number[];
  /** Length in each row [m]. */
  readonly values: readonly number[];
}

const words: Readonly<Record<CourseKind, ColumnWord>> = {
  travel: travelWord,
  height: { dimension: 'length', pattern: /^(?:height|ground|z)(?![a-z])/iu },
};

/** Each row is a step of the integration at least, three times over. */
const mostRows = 5000;
const fewestRows = 3;
/** As long as a motion is followed [s]. */
const longest = 60;

/**
 * Reads a recording: a header that names the columns of time and of travel or height, each with its unit, then one row a sample. The time of the first row becomes 0.
 *
 * @throws InputError that names the column or row: no unit, a missing column, an empty cell, a decimal comma that cannot be told from a separator, time that runs back, too many rows, too long
 */
export function readCourse(text: string, kind: CourseKind): RecordedCourse {
  const { header, rows, requireRows, numberAt } = recordRows(text);
  const columns = recordColumns(header, { time: timeWord, [kind]: words[kind] });
  const columnOf = (wanted: string, example: string): RecordColumn<string> => {
    const column = columns.find(({ name }) => name === wanted);
    if (column === undefined) {
      throw new InputError({
        field: wanted,
        value: header.join(' | '),
        accepted: `a column such as "${example}"`,
      });
    }
    return column;
  };
  const [timeColumn, valueColumn] = [columnOf('time', 'time (s)'), columnOf(kind, `${kind} (mm)`)];
  requireRows(fewestRows);
  if (rows.length > mostRows) {
    throw new InputError({
      field: 'rows',
      value: rows.length,
      accepted: `at most ${mostRows}; cut a piece out, or leave out every other row`,
    });
  }
  const read = ({ name, index, toSi }: RecordColumn<string>): readonly number[] =>
    rows.map((_, row) => toSi(numberAt(row, index, name)));
  const time = read(timeColumn);
  const values = read(valueColumn);
  requireRisingTime(time);
  const [start = 0] = time;
  const length = time[time.length - 1]! - start;
  if (length > longest) {
    throw new InputError({
      field: 'time',
      value: `${Number(length.toPrecision(4))} s from the first row to the last`,
      accepted: `at most ${longest} s; cut a piece out`,
    });
  }
  return { times: time.map((one) => one - start), values };
}
