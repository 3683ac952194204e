import { changeset } from 'vega-dataflow';
import type { View } from 'vega-view';
import type { DataRow } from '../../plot/chart/drawing.js';

/**
 * Gives a data set of a picture new rows. Where as many rows of the same kind are there already, only what differs is changed, so
 * that Vega keeps its marks; that is about twice as fast as new rows.
 */
export function setRows(
  view: View,
  name: string,
  rows: readonly DataRow[],
  before: readonly DataRow[],
): void {
  if (rows === before || (rows.length === 0 && before.length === 0)) return;
  if (rows.length !== before.length || !rows.every((row, index) => sameKind(row, before[index]))) {
    // Vega writes its own marks into the rows it is given.
    view.data(
      name,
      rows.map((row) => ({ ...row })),
    );
    return;
  }
  const changes = changeset();
  let changed = false;
  const tuples: readonly object[] = view.data(name);
  for (const [index, row] of rows.entries()) {
    const old = before[index];
    for (const field of Object.keys(row)) {
      const value = row[field];
      if (value === old?.[field] || (typeof value === 'object' && String(value) === String(old?.[field])))
        continue;
      changes.modify(tuples[index], field, value);
      changed = true;
    }
  }
  if (changed) view.change(name, changes);
}

function sameKind(row: DataRow, before: DataRow | undefined): boolean {
  if (before === undefined) return false;
  const [names, others] = [Object.keys(row), Object.keys(before)];
  return names.length === others.length && names.every((name) => name in before);
}
