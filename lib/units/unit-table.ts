import { requireWord } from '../base/checks.js';

/**
 * The units that a user may write, by dimension. The table is an allow-list on purpose: a general unit parser
 * reads "fl oz" as a mass times a volume, and a wrong bottle size must never pass.
 * A value in SI is `value * factor / divisor + offset`: 0.001 is no binary number, so that multiplying by it
 * rounds twice and dividing by 1000 once. Every factor is exact by definition (SI brochure, 9th ed.; NIST
 * SP 811 appendix B for inch, pound-force, psi) and is compared with mathjs in the tests.
 */
export interface Unit {
  readonly symbol: string;
  readonly factor: number;
  /** 1 where it is left out. */
  readonly divisor?: number;
  /** SI value of zero in this unit; 0 where it is left out. */
  readonly offset?: number;
}

/**
 * A dimension that a user may write.
 *
 * @public
 */
export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'temperature'
  | 'temperatureDifference'
  | 'kinematicViscosity'
  | 'dynamicViscosity'
  | 'density'
  | 'pressure'
  | 'force'
  | 'speed'
  | 'springRate'
  | 'volumeStiffness'
  | 'mass'
  | 'time'
  | 'frequency'
  | 'angle'
  | 'ratio';

const inch = 0.0254;
const pound = 0.453_592_37;
const poundForce = pound * 9.806_65;

/** Units accepted per dimension; the first is the one shown by default. */
export const unitTable: Readonly<Record<Dimension, readonly Unit[]>> = {
  length: [
    { symbol: 'mm', factor: 1, divisor: 1e3 },
    { symbol: 'µm', factor: 1, divisor: 1e6 },
    { symbol: 'um', factor: 1, divisor: 1e6 },
    { symbol: 'cm', factor: 1, divisor: 1e2 },
    { symbol: 'm', factor: 1 },
    { symbol: 'in', factor: inch },
  ],
  area: [
    { symbol: 'mm²', factor: 1, divisor: 1e6 },
    { symbol: 'mm2', factor: 1, divisor: 1e6 },
    { symbol: 'm²', factor: 1 },
  ],
  volume: [
    { symbol: 'ml', factor: 1, divisor: 1e6 },
    { symbol: 'mL', factor: 1, divisor: 1e6 },
    { symbol: 'l', factor: 1, divisor: 1e3 },
    { symbol: 'L', factor: 1, divisor: 1e3 },
    { symbol: 'mm³', factor: 1, divisor: 1e9 },
    { symbol: 'mm3', factor: 1, divisor: 1e9 },
    { symbol: 'cm³', factor: 1, divisor: 1e6 },
    { symbol: 'cm3', factor: 1, divisor: 1e6 },
    { symbol: 'm³', factor: 1 },
  ],
  temperature: [
    { symbol: '°C', factor: 1, offset: 273.15 },
    { symbol: 'C', factor: 1, offset: 273.15 },
    { symbol: '°F', factor: 5, divisor: 9, offset: (459.67 * 5) / 9 },
    { symbol: 'F', factor: 5, divisor: 9, offset: (459.67 * 5) / 9 },
    { symbol: 'K', factor: 1 },
  ],
  temperatureDifference: [
    { symbol: 'K', factor: 1 },
    { symbol: '°C', factor: 1 },
    { symbol: 'C', factor: 1 },
    { symbol: '°F', factor: 5, divisor: 9 },
    { symbol: 'F', factor: 5, divisor: 9 },
  ],
  kinematicViscosity: [
    { symbol: 'cSt', factor: 1, divisor: 1e6 },
    { symbol: 'mm²/s', factor: 1, divisor: 1e6 },
    { symbol: 'mm2/s', factor: 1, divisor: 1e6 },
    { symbol: 'St', factor: 1, divisor: 1e4 },
    { symbol: 'm²/s', factor: 1 },
  ],
  dynamicViscosity: [
    { symbol: 'mPa·s', factor: 1, divisor: 1e3 },
    { symbol: 'mPa s', factor: 1, divisor: 1e3 },
    { symbol: 'Pa·s', factor: 1 },
    { symbol: 'Pa s', factor: 1 },
    { symbol: 'cP', factor: 1, divisor: 1e3 },
  ],
  density: [
    { symbol: 'kg/m³', factor: 1 },
    { symbol: 'kg/m3', factor: 1 },
    { symbol: 'g/cm³', factor: 1e3 },
    { symbol: 'g/cm3', factor: 1e3 },
    { symbol: 'g/ml', factor: 1e3 },
  ],
  pressure: [
    { symbol: 'bar', factor: 1e5 },
    { symbol: 'mbar', factor: 1e2 },
    { symbol: 'Pa', factor: 1 },
    { symbol: 'kPa', factor: 1e3 },
    { symbol: 'MPa', factor: 1e6 },
    { symbol: 'GPa', factor: 1e9 },
    { symbol: 'atm', factor: 101_325 },
    { symbol: 'psi', factor: poundForce / (inch * inch) },
  ],
  force: [
    { symbol: 'N', factor: 1 },
    { symbol: 'mN', factor: 1, divisor: 1e3 },
    { symbol: 'lbf', factor: poundForce },
  ],
  speed: [
    { symbol: 'm/s', factor: 1 },
    { symbol: 'mm/s', factor: 1, divisor: 1e3 },
  ],
  springRate: [
    { symbol: 'N/mm', factor: 1e3 },
    { symbol: 'N/m', factor: 1 },
    { symbol: 'lbf/in', factor: poundForce / inch },
  ],
  volumeStiffness: [
    { symbol: 'kPa/ml', factor: 1e9 },
    { symbol: 'bar/ml', factor: 1e11 },
    { symbol: 'Pa/m³', factor: 1 },
  ],
  mass: [
    { symbol: 'g', factor: 1, divisor: 1e3 },
    { symbol: 'kg', factor: 1 },
    { symbol: 'lb', factor: pound },
  ],
  time: [
    { symbol: 's', factor: 1 },
    { symbol: 'ms', factor: 1, divisor: 1e3 },
    { symbol: 'µs', factor: 1, divisor: 1e6 },
    { symbol: 'min', factor: 60 },
    { symbol: 'h', factor: 3600 },
  ],
  frequency: [{ symbol: 'Hz', factor: 1 }],
  angle: [
    { symbol: '°', factor: Math.PI, divisor: 180 },
    { symbol: 'deg', factor: Math.PI, divisor: 180 },
    { symbol: 'rad', factor: 1 },
  ],
  ratio: [
    { symbol: '', factor: 1 },
    { symbol: '%', factor: 1, divisor: 1e2 },
  ],
};

/** The unit of a dimension with this symbol, if it is on the list. */
export function findUnit(dimension: Dimension, symbol: string): Unit | undefined {
  return unitTable[dimension].find((unit) => unit.symbol === symbol);
}

/**
 * The units of a dimension that a user may write; the first is the one shown by default.
 *
 * @param dimension - for example `length`
 * @throws InputError for a dimension that does not exist
 * @public
 */
export function unitsOf(dimension: Dimension): readonly string[] {
  requireDimension(dimension);
  return unitTable[dimension].map(({ symbol }) => symbol);
}

/** Throws unless it is one of the dimensions. */
export function requireDimension(dimension: Dimension): void {
  requireWord(dimension, Object.keys(unitTable), 'dimension');
}
