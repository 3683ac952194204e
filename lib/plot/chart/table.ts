import { requireFinite, requireKind, requireWithin } from '../../base/checks.js';
import { anything, listOf, oneOf, optional, requireShape, type Shape, someText } from '../../base/shape.js';
import { type Dimension, QuantityError, roundedText } from '../../units/index.js';
import { fromSi } from '../../units/quantity-text.js';
import { findUnit } from '../../units/unit-table.js';

/**
 * One column of a table, or one axis of a chart.
 *
 * @public
 */
export interface Column {
  /** What the numbers are, for example `Shaft speed`. */
  readonly label: string;
  /** Unit shown to the reader; empty for a text or a plain number. */
  readonly unit: string;
  /**
   * Dimension of the numbers. Where it is given they are in SI and are shown converted to `unit`; where it is
   * left out they are in `unit` already (money, N·s/m and whatever else no parts file holds).
   */
  readonly dimension?: Dimension;
  /** Significant digits shown, 1 to 6; 3 where left out. */
  readonly digits?: number;
}

/** Form of {@link Column}. */
export const columnShape: Shape = {
  label: someText,
  unit: someText,
  dimension: optional(
    oneOf(
      'temperature',
      'kinematicViscosity',
      'density',
      'force',
      'springRate',
      'length',
      'area',
      'volume',
      'temperatureDifference',
      'dynamicViscosity',
      'pressure',
      'speed',
      'volumeStiffness',
      'frequency',
      'mass',
      'time',
      'angle',
      'ratio',
    ),
  ),
  digits: optional((value, field) => requireWithin(value as number, 1, 6, field, '')),
};

/**
 * One cell: a number in the unit that its column says, a text, or nothing.
 *
 * @public
 */
export type Cell = string | number | null;

/**
 * A table as plain data.
 *
 * @public
 */
export interface Table {
  readonly columns: readonly Column[];
  /** Each row has one cell for each column. */
  readonly rows: readonly (readonly Cell[])[];
}

/** A number, a text, or nothing. */
const cell = (value: unknown, field: string): void => {
  if (typeof value === 'number') requireFinite(value, field, '');
  else if (value !== null) requireKind(value, 'string', field);
};

/** Form of {@link Table}. */
export const tableShape: Shape = { columns: listOf(columnShape), rows: listOf(listOf(cell)) };

/**
 * Heading of a column or axis, `Shaft speed, mm/s`.
 *
 * @public
 */
export function columnHeading(column: Column): string {
  requireShape({ column }, { column: columnShape });
  return column.unit === '' ? column.label : `${column.label}, ${column.unit}`;
}

/**
 * A number of a column in the unit shown, kept to 6 significant digits: the last bits of `Math.exp` differ
 * between processors, and no file of ours may.
 *
 * @param column - the column
 * @param value - in SI where the column has a dimension, otherwise in the unit of the column
 * @throws QuantityError where the unit does not belong to the dimension
 * @example
 * ```ts
 * displayNumber({ label: 'Speed', dimension: 'speed', unit: 'mm/s' }, 0.5); // 500: 0.5 m/s in mm/s
 * ```
 * @public
 */
export function displayNumber(column: Column, value: number): number {
  requireShape({ column, value }, { column: columnShape, value: '' });
  return displayNumbers(column)(value);
}

/** Shows numbers of a column one after the other: the unit is looked up once. */
export function displayNumbers(column: Column): (value: number) => number {
  const inUnit = numbersInUnit(column);
  return (value) => sixDigits(inUnit(value));
}

/** Like {@link displayNumbers} with all digits: for pictures, whose pixels are rounded. */
export function numbersInUnit({ dimension, unit, label }: Column): (value: number) => number {
  if (dimension === undefined) return (value) => value;
  const known = findUnit(dimension, unit);
  if (known === undefined) throw new QuantityError(`the unit "${unit}" of "${label}" is not a ${dimension}`);
  return (value) => fromSi(value, known);
}

/**
 * The cells of a column as a reader sees them: all whole numbers, or all with the same significant digits.
 *
 * @param column - the column
 * @param cells - its cells, from top to bottom
 *
 * @public
 */
export function displayColumn(column: Column, cells: readonly Cell[]): readonly string[] {
  requireShape({ column, cells }, { column: columnShape, cells: listOf(anything) });
  const digits = column.digits ?? 3;
  const inUnit = displayNumbers(column);
  const rounded = cells.map((cell) =>
    typeof cell === 'number' ? Number(inUnit(cell).toPrecision(digits)) : cell,
  );
  const whole = rounded.every((cell) => typeof cell !== 'number' || Number.isInteger(cell));
  return rounded.map((cell) => {
    if (typeof cell !== 'number') return cell ?? '';
    return whole || cell === 0 ? roundedText(cell, 15) : significantText(cell, digits);
  });
}

/** A number with all its significant digits, `1.10`, and no exponent. */
function significantText(value: number, digits: number): string {
  const decimals = Math.min(12, Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(value)))));
  return value.toFixed(decimals).replace('-', '−');
}

/** A column with the unit, dimension and digits of another (or of an axis) under a label of its own. */
export function likeColumn({ unit, dimension, digits }: Column, label: string): Column {
  return {
    label,
    unit,
    ...(dimension === undefined ? {} : { dimension }),
    ...(digits === undefined ? {} : { digits }),
  };
}

function sixDigits(value: number): number {
  return Number(value.toPrecision(6));
}
