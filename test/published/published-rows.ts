/** One published or reference value, as kept in the JSON files of this folder. */
export interface PublishedRow {
  readonly id: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly expected: number;
  readonly rtol: number;
  readonly source: string;
}

/** An input of a row; a row without it is a fault of the test. */
export function input(row: PublishedRow, name: string): number {
  const value = row.inputs[name];
  if (value === undefined) throw new Error(`row ${row.id} has no input ${name}`);
  return value;
}

/** Relative distance of a value from what a row expects. */
export function relativeError(value: number, expected: number): number {
  return Math.abs(value - expected) / Math.abs(expected);
}
