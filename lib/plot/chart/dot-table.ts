import type { Dot, DotChart } from './dots.js';
import { type Cell, type Column, likeColumn, type Table } from './table.js';

/** All values of a dot chart: one row for each category, one column for each series and the ends of its interval. */
export function dotTable({ category, categories, value, series }: DotChart): Table {
  const columns: Column[] = [{ label: category, unit: '' }];
  const cells: ((category: string) => Cell)[] = [];
  for (const { name, dots } of series) {
    const byCategory = new Map<string, Dot>(dots.map((dot) => [dot.category, dot]));
    columns.push(likeColumn(value, name));
    cells.push((row) => byCategory.get(row)?.value ?? null);
    if (!dots.some(({ low, high }) => low !== undefined && high !== undefined)) continue;
    columns.push(likeColumn(value, `${name}, low`), likeColumn(value, `${name}, high`));
    cells.push(
      (row) => byCategory.get(row)?.low ?? null,
      (row) => byCategory.get(row)?.high ?? null,
    );
  }
  return { columns, rows: categories.map((row) => [row, ...cells.map((cell) => cell(row))]) };
}
