import { readFileSync } from 'node:fs';
import { expect } from 'vitest';

/** One check of motion in time, as kept in motion-checks.json. */
export interface MotionRow {
  readonly id: string;
  readonly inputs: Readonly<Record<string, number | readonly number[] | string>>;
  readonly expected: readonly (number | readonly number[])[];
  readonly rtol: number;
  readonly source: string;
  readonly case?: string;
}

export const motionRows: readonly MotionRow[] = JSON.parse(
  readFileSync(new URL('motion-checks.json', import.meta.url), 'utf8'),
);

export function motionRow(id: string): MotionRow {
  const row = motionRows.find((each) => each.id === id);
  if (row === undefined) throw new Error(`no row ${id}`);
  return row;
}

/** An input of a row that is one number. */
export function number(row: MotionRow, name: string): number {
  const value = row.inputs[name];
  if (typeof value !== 'number') throw new Error(`row ${row.id} has no number ${name}`);
  return value;
}

/** An input of a row that is a list. */
export function list(row: MotionRow, name: string): readonly number[] {
  const value = row.inputs[name];
  if (!Array.isArray(value)) throw new Error(`row ${row.id} has no list ${name}`);
  return value as readonly number[];
}

/** Fails unless each value is within the row's own tolerance. */
export function expectRow(row: MotionRow, values: readonly number[], rtol = row.rtol): void {
  const expected = row.expected.flat();
  expect(values).toHaveLength(expected.length);
  expected.forEach((value, i) => {
    const error = Math.abs((values[i] ?? Number.NaN) - value) / Math.abs(value);
    expect(error, `${row.id}[${i}]: ${values[i]} against ${value}`).toBeLessThan(rtol);
  });
}
