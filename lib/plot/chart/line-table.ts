import type { LineChart } from './lines.js';
import { type Cell, type Column, likeColumn, type Table } from './table.js';

/** All points of a line chart: one row for each x, one column for each line and for the ends of its band. */
export function lineTable({ x, y, series }: LineChart): Table {
  const columns: Column[] = [likeColumn(x, x.label)];
  const cells: ReadonlyMap<number, Cell>[] = [];
  const add = (label: string, column: ReadonlyMap<number, number>): void => {
    columns.push(likeColumn(y, label));
    cells.push(column);
  };
  for (const { name, points } of series) {
    add(name, new Map(points.map((point) => [point.x, point.y])));
    const bands = points.flatMap(({ x: at, low, high }) =>
      low === undefined || high === undefined ? [] : [{ at, low, high }],
    );
    if (bands.length === 0) continue;
    add(`${name}, low`, new Map(bands.map(({ at, low }) => [at, low])));
    add(`${name}, high`, new Map(bands.map(({ at, high }) => [at, high])));
  }
  const places = [...new Set(series.flatMap(({ points }) => points.map((point) => point.x)))].sort(
    (a, b) => a - b,
  );
  return { columns, rows: places.map((at) => [at, ...cells.map((column) => column.get(at) ?? null)]) };
}
