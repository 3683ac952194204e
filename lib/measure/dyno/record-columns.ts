import { InputError } from '../../base/input-error.js';
import { toSi } from '../../units/quantity-text.js';
import { type Dimension, findUnit, type Unit, unitTable } from '../../units/unit-table.js';

/** What a column may be headed with, and what it measures. */
export interface ColumnWord {
  readonly dimension: Dimension;
  readonly pattern: RegExp;
}

/** One column: what it holds, where it stands, and how a number of it becomes SI. */
export interface RecordColumn<Name extends string> {
  readonly name: Name;
  readonly index: number;
  readonly toSi: (value: number) => number;
}

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
 * The columns of a header that are known by name, each with its unit. Other columns are passed over.
 *
 * @throws InputError for a known column without a unit, or twice
 */
export function recordColumns<Name extends string>(
  header: readonly string[],
  words: Readonly<Record<Name, ColumnWord>>,
): readonly RecordColumn<Name>[] {
  const columns = header.flatMap((cell, index): readonly RecordColumn<Name>[] => {
    const text = cell.trim();
    const found = (Object.keys(words) as Name[]).find((name) => words[name].pattern.test(text));
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
  return columns;
}
