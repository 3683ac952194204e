import { InputError } from '../../base/input-error.js';
import { type ColumnWord, type RecordColumn, recordColumns } from './record-columns.js';

/** What a column of a dyno file may hold. */
type ColumnName = 'time' | 'travel' | 'speed' | 'force';

/** Words for time and for the travel of a shaft. */
export const timeWord: ColumnWord = { dimension: 'time', pattern: /^(?:time|t)(?![a-z])/iu };
export const travelWord: ColumnWord = {
  dimension: 'length',
  pattern: /^(?:travel|position|displacement|stroke|x)(?![a-z])/iu,
};

const words: Readonly<Record<ColumnName, ColumnWord>> = {
  time: timeWord,
  travel: travelWord,
  speed: { dimension: 'speed', pattern: /^(?:speed|velocity|v)(?![a-z])/iu },
  force: { dimension: 'force', pattern: /^(?:force|load|f)(?![a-z])/iu },
};

/**
 * Reads the header of a dyno file: one column of force, and speed or both time and travel, each with its unit. Other columns are passed over.
 *
 * @throws InputError for a column without a unit, a missing or a doubled column
 */
export function dynoColumns(header: readonly string[]): readonly RecordColumn<ColumnName>[] {
  const columns = recordColumns(header, words);
  const names = columns.map(({ name }) => name);
  if (!names.includes('force')) {
    throw new InputError({
      field: 'force',
      value: header.join(' | '),
      accepted: 'a column such as "force (N)"',
    });
  }
  if (!names.includes('speed') && !(names.includes('time') && names.includes('travel'))) {
    const accepted = 'a column such as "speed (mm/s)", or both "time (s)" and "travel (mm)"';
    throw new InputError({ field: 'speed', value: header.join(' | '), accepted });
  }
  return columns;
}
