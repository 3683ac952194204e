import { type Dimension, findUnit, type Unit, unitTable } from './unit-table.js';

/**
 * Says why a text is not a quantity of the wanted dimension.
 *
 * @public
 */
export class QuantityError extends Error {
  override readonly name = 'QuantityError';
}

const dimensionNames: Readonly<Record<Dimension, string>> = {
  length: 'a length',
  area: 'an area',
  volume: 'a volume',
  temperature: 'a temperature',
  kinematicViscosity: 'a kinematic viscosity',
  dynamicViscosity: 'a dynamic viscosity',
  density: 'a density',
  pressure: 'a pressure',
  force: 'a force',
  speed: 'a speed',
  springRate: 'a spring rate',
  mass: 'a mass',
  time: 'a time',
  angle: 'an angle',
  ratio: 'a plain number',
};

const exampleNumbers: Readonly<Partial<Record<Dimension, string>>> = {
  temperature: '20',
  kinematicViscosity: '350',
};

/** How a dimension is written, for an error or a help text: `a length such as "1.7 mm" (mm, µm, …)`. */
export function describeDimension(dimension: Dimension): string {
  const symbols = unitTable[dimension].map((unit) => unit.symbol).filter((symbol) => symbol !== '');
  const example = `${exampleNumbers[dimension] ?? '1.5'} ${unitTable[dimension][0]?.symbol ?? ''}`.trim();
  return `${dimensionNames[dimension]} such as "${example}"${symbols.length > 0 ? ` (${symbols.join(', ')})` : ''}`;
}

/**
 * Reads a number with its unit, such as `1.7 mm`, into SI.
 *
 * @param text - a number with a decimal point, a space (or none), and a unit on the list of the dimension
 * @param dimension - what the text must be
 * @returns the value in the SI unit of the dimension (kelvin for a temperature, radian for an angle)
 * @throws QuantityError where the text has no number, no unit, or a unit that is not on the list
 */
export function parseQuantity(text: string, dimension: Dimension): number {
  const match = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*(.*)$/u.exec(text.trim());
  const wanted = describeDimension(dimension);
  if (match === null) throw new QuantityError(`"${text}" is not ${wanted}`);
  const [, digits = '', symbol = ''] = match;
  // U+03BC (Greek mu) and U+00B5 (micro sign) look the same on every keyboard.
  const unit = findUnit(dimension, symbol.replace('μ', 'µ').replace(/\s+/gu, ' '));
  if (symbol.startsWith(','))
    throw new QuantityError(`"${text}" has a decimal comma; write a point, as in ${wanted}`);
  if (unit === undefined) {
    const fault =
      symbol === '' ? `"${text}" has no unit` : `the unit "${symbol}" in "${text}" is not accepted`;
    throw new QuantityError(`${fault}; write ${wanted}`);
  }
  const value = toSi(Number(digits), unit);
  if (!Number.isFinite(value)) throw new QuantityError(`"${text}" is too large a number for ${wanted}`);
  return value;
}

/** Converts a number in a unit to SI. */
export function toSi(value: number, unit: Unit): number {
  return value * unit.factor + (unit.offset ?? 0);
}

/** Converts an SI value to a unit. */
export function fromSi(value: number, unit: Unit): number {
  return (value - (unit.offset ?? 0)) / unit.factor;
}

/** Rounds to a count of significant digits, without an exponent and without trailing zeros. */
export function roundedText(value: number, significantDigits: number): string {
  if (value === 0) return '0';
  const rounded = Number(value.toPrecision(significantDigits));
  // A minus sign as typeset, so that "−2" lines up with "+2" and is not read as a hyphen.
  return rounded
    .toLocaleString('en-US', { useGrouping: false, maximumSignificantDigits: 15 })
    .replace('-', '−');
}

/**
 * Writes an SI value in a unit of the table, such as `1.7 mm`.
 *
 * @param value - in SI
 * @param dimension - its dimension
 * @param symbol - a unit on the list of the dimension
 * @param significantDigits - digits kept, 1 to 15
 * @throws QuantityError for a unit that is not on the list
 */
export function formatQuantity(
  value: number,
  dimension: Dimension,
  symbol: string,
  significantDigits = 3,
): string {
  const unit = findUnit(dimension, symbol);
  if (unit === undefined)
    throw new QuantityError(`the unit "${symbol}" is not ${describeDimension(dimension)}`);
  const digits = roundedText(fromSi(value, unit), significantDigits);
  return symbol === '' || symbol === '%' || symbol === '°' ? `${digits}${symbol}` : `${digits} ${symbol}`;
}
