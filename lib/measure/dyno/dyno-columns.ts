import { InputError } from '../../base/input-error.js';
import { toSi } from '../../units/quantity-text.js';
import { type Dimension, findUnit, type Unit, unitTable } from '../../units/unit-table.js';

/** What a column of a dyno file may hold. */
export type ColumnName = 'time' | 'travel' | 'speed' | 'force';

/** One column: what it holds, where it stands, and how a number of it becomes SI. */
export interface DynoColumn {
  readonly name: ColumnName;
  readonly index: number;
  readonly toSi: (value: number) => number;
}

const words: Readonly<Record<ColumnName, { readonly dimension: Dimension; readonly pattern: RegExp }>> = {
  time: { dimension: 'time', pattern: /^(?:time|t)(?![a-z])/iu },
  travel: { dimension: 'length', pattern: /^(?:travel|position|displacement|stroke|x)(?![a-z])/iu },
  speed: { dimension: 'speed', pattern: /^(?:speed|velocity|v)(?![a-z])/iu },
  force: { dimension: 'force', pattern: /^(?:force|load|f)(?![a-z])/iu },
};

/** The unit in what follows a column's word: `(mm/s)`, `[mm/s]`, `_mm_s` or ` mm/s`. */
function unitIn(rest: string, dimension: Dimension): Unit | undefined {
  const bare = rest.replace(/[()[\]_,:\s]+/gu, ' ').trim();
  return (
    findUnit(dimension, bare) ??
    findUnit(dimension, bare.replace(' ', '/')) ??
    findUnit(dimension, bare.replace(' per ', '/'))
  );
}

/**
 * Reads the header of a dyno file: one column of force, and speed or both time and travel, each with its unit. Other columns are passed over.
 *
 * @throws InputError for a column without a unit, a missing or a doubled column
 */
export function dynoColumns(header: readonly string[]): readonly DynoColumn[] {
  const columns = header.flatMap((cell, index): readonly DynoColumn[] => {
    const text = cell.trim();
    const found = (Object.keys(words) as ColumnName[]).find((name) => words[name].pattern.test(text));
    if (found === undefined) return [];
    const { dimension, pattern } = words[found];
    const unit = unitIn(text.replace(pattern, ''), dimension);
    if (unit === undefined) {
      const symbols = unitTable[dimension].map(({ symbol }) => symbol).join(', ');
      throw new InputError({ field: found, value: text, accepted: `headed with a unit (${symbols})` });
    }
    return [{ name: found, index, toSi: (value) => toSi(value, unit) }];
  });
  const names = columns.map(({ name }) => name);
  const twice = names.find((name, index) => names.indexOf(name) !== index);
  if (twice !== undefined)
    throw new InputError({ field: twice, value: header.join(' | '), accepted: 'one column' });
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
