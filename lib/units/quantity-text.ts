import { requireCount, requireFinite, requireKind, requireWithin } from '../base/checks.js';
import { DashpotError } from '../base/dashpot-error.js';
import { groupedNumberFault } from './comma-number.js';
import { type Dimension, findUnit, requireDimension, type Unit, unitTable } from './unit-table.js';

/**
 * Says why a text is not a quantity of the wanted dimension.
 *
 * @public
 */
export class QuantityError extends DashpotError {
  override readonly name = 'QuantityError';
}

const dimensionNames: Readonly<Record<Dimension, string>> = {
  length: 'a length',
  area: 'an area',
  volume: 'a volume',
  temperature: 'a temperature',
  temperatureDifference: 'a difference of temperatures',
  kinematicViscosity: 'a kinematic viscosity',
  dynamicViscosity: 'a dynamic viscosity',
  density: 'a density',
  pressure: 'a pressure',
  force: 'a force',
  speed: 'a speed',
  springRate: 'a spring rate',
  volumeStiffness: 'a pressure per volume',
  mass: 'a mass',
  time: 'a time',
  frequency: 'a frequency',
  angle: 'an angle',
  ratio: 'a plain number',
};

const exampleNumbers: Readonly<Partial<Record<Dimension, string>>> = {
  temperature: '20',
  temperatureDifference: '3',
  kinematicViscosity: '350',
  density: '970',
};

/** The longest text that can be a quantity; longer ones are refused before any pattern runs on them. */
const longestText = 40;

const number = '[+\\-−]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+\\-−]?\\d+)?';
const numberThenSymbol = new RegExp(`^(${number})\\s*(.*)$`, 'su');

/** Signs that look alike on paper, and the one that the table uses: U+03BC for the micro sign, and so on. */
const lookalikes: Readonly<Record<string, string>> = { μ: 'µ', º: '°', '˚': '°', '℃': '°C', '℉': '°F' };

function tableSymbol(written: string): string {
  return written.replace(/[μº˚℃℉]/gu, (sign) => lookalikes[sign] ?? sign).replace(/\s+/gu, ' ');
}

/**
 * How a dimension is written, for an error or a help text: `a length such as "1.7 mm" (mm, µm, …)`.
 *
 * @param dimension - for example `length`
 * @throws InputError for a dimension that does not exist
 * @public
 */
export function describeDimension(dimension: Dimension): string {
  requireDimension(dimension);
  const symbols = unitTable[dimension].map((unit) => unit.symbol).filter((symbol) => symbol !== '');
  const example = `${exampleNumbers[dimension] ?? '1.5'} ${unitTable[dimension][0]?.symbol ?? ''}`.trim();
  return `${dimensionNames[dimension]} such as "${example}"${symbols.length > 0 ? ` (${symbols.join(', ')})` : ''}`;
}

/** Source of a regular expression, of the kind a JSON Schema takes, for the texts of one dimension. */
export function quantityPattern(dimension: Dimension): string {
  const symbols = unitTable[dimension].map((unit) => unit.symbol.replace('µ', '[µμ]'));
  return `^\\s*${number}\\s*(?:${symbols.join('|')})\\s*$`;
}

function quoted(text: string): string {
  return JSON.stringify(text.length > longestText ? `${text.slice(0, longestText)}…` : text);
}

function unitFault(text: string, symbol: string): string {
  if (symbol === '') return `${quoted(text)} has no unit`;
  if (symbol.startsWith(',')) return `${quoted(text)} has a decimal comma where a point is needed`;
  if (/^\d/u.test(symbol)) return `${quoted(text)} has a space inside the number`;
  const other = (Object.keys(unitTable) as Dimension[]).find((dimension) => findUnit(dimension, symbol));
  if (other !== undefined) return `${quoted(text)} is ${dimensionNames[other]}`;
  return `the unit "${symbol}" in ${quoted(text)} is not accepted`;
}

/**
 * Reads a number with its unit, such as `1.7 mm`, into SI.
 *
 * @param text - a number with a decimal point, a space (or none), and a unit on the list of the dimension
 * @param dimension - what the text must be
 * @returns the value in the SI unit of the dimension (kelvin for a temperature, radian for an angle)
 * @throws QuantityError where the text has no number, no unit, or a unit that is not on the list; InputError for what is no text
 * @example
 * ```ts
 * parseQuantity('1.7 mm', 'length'); // 0.0017: in metres
 * ```
 * @public
 */
export function parseQuantity(text: string, dimension: Dimension): number {
  requireKind(text, 'string', 'text');
  const wanted = describeDimension(dimension);
  const match = text.length <= longestText ? numberThenSymbol.exec(text.trim()) : null;
  if (match === null) throw new QuantityError(`${quoted(text)} is not ${wanted}`);
  const [, digits = '', written = ''] = match;
  const symbol = tableSymbol(written);
  const unit = findUnit(dimension, symbol);
  if (unit === undefined) {
    const grouped = groupedNumberFault(text);
    throw new QuantityError(
      grouped === undefined ? `${unitFault(text, symbol)}; write ${wanted}` : `${quoted(text)} ${grouped}`,
    );
  }
  const value = toSi(Number(digits.replaceAll('−', '-')), unit);
  if (!Number.isFinite(value)) throw new QuantityError(`${quoted(text)} is too large a number for ${wanted}`);
  return value;
}

/** Converts a number in a unit to SI. */
export function toSi(value: number, unit: Unit): number {
  return (value * unit.factor) / (unit.divisor ?? 1) + (unit.offset ?? 0);
}

/** Converts an SI value to a unit. */
export function fromSi(value: number, unit: Unit): number {
  return ((value - (unit.offset ?? 0)) * (unit.divisor ?? 1)) / unit.factor;
}

const plainDigits = new Intl.NumberFormat('en-US', { useGrouping: false, maximumSignificantDigits: 15 });

/**
 * Rounds to a count of significant digits, without an exponent and without trailing zeros; a minus is the typeset sign.
 *
 * @param value - any finite number
 * @param significantDigits - digits kept, 1 to 15
 * @throws InputError for a value that is not finite, or another count of digits
 * @public
 */
export function roundedText(value: number, significantDigits: number): string {
  requireFinite(value, 'value', '');
  requireCount(significantDigits, 'significantDigits');
  requireWithin(significantDigits, 1, 15, 'significantDigits', '');
  if (value === 0) return '0';
  // A minus sign as typeset, so that "−2" lines up with "+2" and is not read as a hyphen.
  return plainDigits.format(Number(value.toPrecision(significantDigits))).replace('-', '−');
}

/**
 * Writes an SI value in a unit of the table, such as `1.7 mm`.
 *
 * @param value - in SI
 * @param dimension - its dimension
 * @param symbol - a unit on the list of the dimension
 * @param significantDigits - digits kept, 1 to 15
 * @throws QuantityError for a unit that is not on the list; InputError for a value that is not finite, or another count of digits
 * @public
 */
export function formatQuantity(
  value: number,
  dimension: Dimension,
  symbol: string,
  significantDigits = 3,
): string {
  requireDimension(dimension);
  requireKind(symbol, 'string', 'symbol');
  const unit = findUnit(dimension, symbol);
  if (unit === undefined)
    throw new QuantityError(`the unit "${symbol}" is not ${describeDimension(dimension)}`);
  requireFinite(value, 'value', '');
  const digits = roundedText(fromSi(value, unit), significantDigits);
  return symbol === '' || symbol === '%' || symbol === '°' ? `${digits}${symbol}` : `${digits} ${symbol}`;
}
