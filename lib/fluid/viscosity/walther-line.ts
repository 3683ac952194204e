import {
  refuse,
  requireEach,
  requireFinite,
  requirePositive,
  requireRecord,
  requireWithin,
} from '../../base/checks.js';
import type { ViscosityPoint } from './viscosity-point.js';
import { kinematicViscosityOfZ, waltherRange, waltherZ, waltherZRange } from './walther-function.js';

/**
 * A straight line in the coordinates of ASTM D341, `log₁₀ log₁₀ Z = intercept − slope · log₁₀ T`, with Z in full form.
 *
 * @public
 */
export interface WaltherLine {
  readonly kind: 'walther';
  /** Constant A of the standard. */
  readonly intercept: number;
  /** Constant B of the standard, above 0: 3.3 to 3.9 for mineral oil, 0.6 to 1.5 for silicone. */
  readonly slope: number;
}

/**
 * A Walther line with its distance from the points that it was drawn through.
 *
 * @public
 */
export interface WaltherFit {
  readonly line: WaltherLine;
  /** Viscosity of the line over viscosity of the point, minus 1, for each point in the order given. */
  readonly residuals: readonly number[];
}

/**
 * Line through two points, or the least-squares line in `log₁₀ log₁₀ Z` through more, with its residuals.
 *
 * @param points - two or more points at two or more temperatures [K] above 0, viscosities [m²/s] 0.21e-6 to 20
 * @throws InputError on fewer points, on values out of range, and where the viscosity does not fall with temperature
 * @see ASTM D341-20, section 5; the least squares are our own choice of fit
 * @public
 */
export function fitWaltherLine(points: readonly ViscosityPoint[]): WaltherFit {
  const coordinates: { readonly x: number; readonly y: number }[] = [];
  requireEach(points, 'points', (point, field) => {
    requireRecord(point, field);
    requirePositive(point.temperature, `${field}.temperature`, 'K');
    const y = doubleLogarithm(point.kinematicViscosity, `${field}.kinematicViscosity`);
    coordinates.push({ x: Math.log10(point.temperature), y });
  });
  const meanX = mean(coordinates.map(({ x }) => x));
  const meanY = mean(coordinates.map(({ y }) => y));
  let sumXX = 0;
  let sumXY = 0;
  for (const { x, y } of coordinates) {
    sumXX += (x - meanX) ** 2;
    sumXY += (x - meanX) * (y - meanY);
  }
  const slope = -sumXY / sumXX;
  // Temperatures less than a millikelvin apart count as one.
  if (!(sumXX > 1e-12 && slope > 0)) {
    refuse(
      JSON.stringify(points),
      'points',
      '',
      'two or more, at different temperatures, with a viscosity that falls with temperature',
    );
  }
  const line: WaltherLine = { kind: 'walther', intercept: meanY + slope * meanX, slope };
  const residuals = points.map(
    (point) => waltherViscosity(line, point.temperature) / point.kinematicViscosity - 1,
  );
  return { line, residuals };
}

/**
 * Kinematic viscosity [m²/s] of a Walther line.
 *
 * @param line - the line
 * @param temperature - temperature [K], above 0
 * @throws InputError where the line leaves 0.21e-6 to 20 m²/s
 * @see ASTM D341-20, section 5
 */
export function waltherViscosity(line: WaltherLine, temperature: number): number {
  requirePositive(temperature, 'temperature', 'K');
  requireFinite(line.intercept, 'intercept', '');
  requirePositive(line.slope, 'slope', '');
  const z = 10 ** (10 ** (line.intercept - line.slope * Math.log10(temperature)));
  if (!(z >= waltherZRange.lowest && z <= waltherZRange.highest)) {
    refuse(
      `${temperature} K`,
      'temperature',
      '',
      `one at which this oil has ${waltherRange.lowest} to ${waltherRange.highest} m²/s`,
    );
  }
  return kinematicViscosityOfZ(z);
}

/**
 * Temperature [K] at which a Walther line has a kinematic viscosity.
 *
 * @param line - the line
 * @param kinematicViscosity - kinematic viscosity [m²/s], 0.21e-6 to 20
 * @throws InputError outside that range
 * @see ASTM D341-20, section 5
 */
export function waltherTemperature(line: WaltherLine, kinematicViscosity: number): number {
  requireFinite(line.intercept, 'intercept', '');
  requirePositive(line.slope, 'slope', '');
  return 10 ** ((line.intercept - doubleLogarithm(kinematicViscosity, 'kinematicViscosity')) / line.slope);
}

/** Ordinate of ASTM D341, `log₁₀ log₁₀ Z`. */
export function doubleLogarithm(kinematicViscosity: number, field: string): number {
  requireWithin(kinematicViscosity, waltherRange.lowest, waltherRange.highest, field, 'm²/s');
  return Math.log10(Math.log10(waltherZ(kinematicViscosity)));
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
