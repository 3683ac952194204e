import checks from './fluid-checks.json' with { type: 'json' };

/** One published or reference value of the fluid layer, as kept in fluid-checks.json. */
export interface FluidRow {
  readonly id: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: number | readonly number[];
  /** Relative tolerance, the printed precision; or an absolute one where the row has `atol`. */
  readonly rtol?: number;
  readonly atol?: number;
  readonly source: string;
  readonly obtained: string;
  readonly confidence: string;
}

export const fluidRows: readonly FluidRow[] = checks.checks as readonly FluidRow[];
const { datasets } = checks;

/** Rows of the table in ASTM D2270: viscosity at 100 °C, L and H, all in mm²/s. */
export const viscosityIndexTable = triples(datasets.d2270_table.rows);

/** A silicone of 10 mm²/s: temperature in °C, density in kg/m³, viscosity in mm²/s. */
export const siliconeOf10 = triples(datasets.pdms10.rows);

function triples(rows: readonly (readonly number[])[]): readonly (readonly [number, number, number])[] {
  return rows.map(([a = Number.NaN, b = Number.NaN, c = Number.NaN]) => [a, b, c]);
}

/** A number of a row; a row without it is a fault of the test. */
export function number(row: FluidRow, name: string): number {
  const value = row.inputs[name];
  if (typeof value !== 'number') throw new Error(`row ${row.id} has no number ${name}`);
  return value;
}

/** A list of numbers of a row. */
export function numbers(row: FluidRow, name: string): readonly number[] {
  const value = row.inputs[name];
  if (!Array.isArray(value)) throw new Error(`row ${row.id} has no list ${name}`);
  return value as readonly number[];
}

/** Largest distance of the values from what the row expects, in units of its tolerance: 1 or less passes. */
export function missOf(row: FluidRow, values: readonly number[]): number {
  const expected = typeof row.expected === 'number' ? [row.expected] : row.expected;
  if (values.length !== expected.length) throw new Error(`row ${row.id}: ${values.length} values`);
  const misses = expected.map((wanted, index) => {
    const difference = Math.abs((values[index] ?? Number.NaN) - wanted);
    return row.atol === undefined ? difference / Math.abs(wanted) / (row.rtol ?? 0) : difference / row.atol;
  });
  return Math.max(...misses);
}
