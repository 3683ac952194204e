import { requirePositive, requireRecord, requireWithin, requireWord } from '../../base/checks.js';
import type { ViscosityPoint } from './viscosity-point.js';

/**
 * The line of a plain silicone (polydimethylsiloxane),
 * `log₁₀(ν / ν₂₅) = slope · (1/T − 1/298.15 K)`: straight over the inverse of the temperature.
 *
 * @public
 */
export interface SiliconeLine {
  readonly kind: 'silicone';
  /** Kinematic viscosity at 25 °C [m²/s], above 0. */
  readonly viscosityAt25Celsius: number;
  /** Slope over the inverse temperature [K], above 0; 763.1 K by Barry's law. */
  readonly slope: number;
}

const referenceTemperature = 298.15;

/** Temperatures [K] far outside of any liquid silicone, so that no viscosity runs out of numbers. */
const lowestTemperature = 100;
const highestTemperature = 1000;

/** Slope of Barry's law [K]. Barry, J. Appl. Phys. 17 (1946) 1020; form read in public code, the 763.1 from memory. */
const barrySlope = 763.1;

/** What Barry's law is stated for: temperatures [K], and viscosity at 25 °C [m²/s] or more. */
export const barryRange = {
  lowestTemperature: 298.15,
  highestTemperature: 523.15,
  lowestViscosity: 100e-6,
} as const;

/** Temperatures [K] of ASTM D4283: 100 °F and 210 °F. */
export const coefficientTemperatures = { cold: (100 + 459.67) / 1.8, hot: (210 + 459.67) / 1.8 } as const;

/**
 * Barry's line of a plain silicone through one point.
 *
 * Normalised to 1 at 25 °C: the printed constant 2.559 is 0.1 % off there.
 *
 * @param point - temperature [K], 100 to 1000, and kinematic viscosity [m²/s], above 0
 * @throws InputError outside these
 * @see Barry, J. Appl. Phys. 17 (1946) 1020; stated for 25 to 250 °C and 100 mm²/s or more at 25 °C
 * @public
 */
export function barryLine(point: ViscosityPoint): SiliconeLine {
  return siliconeLineThrough(point, barrySlope);
}

/**
 * Line of a silicone through one point, with the slope of its viscosity-temperature coefficient
 * `1 − ν(210 °F) / ν(100 °F)`.
 *
 * @param point - temperature [K], 100 to 1000, and kinematic viscosity [m²/s], above 0
 * @param coefficient - viscosity-temperature coefficient, 0.05 to 0.95; plain silicones have 0.56 to 0.62
 * @throws InputError outside these
 * @see ASTM D4283 (definition of the coefficient)
 * @public
 */
export function siliconeLineFromCoefficient(point: ViscosityPoint, coefficient: number): SiliconeLine {
  requireWithin(coefficient, 0.05, 0.95, 'coefficient', '');
  const { cold, hot } = coefficientTemperatures;
  return siliconeLineThrough(point, -Math.log10(1 - coefficient) / (1 / cold - 1 / hot));
}

/**
 * Viscosity-temperature coefficient of a silicone line, `1 − ν(210 °F) / ν(100 °F)`; 0.605 by Barry's law.
 *
 * @param line - the line
 * @see ASTM D4283
 * @public
 */
export function viscosityTemperatureCoefficient(line: SiliconeLine): number {
  requireRecord(line, 'line');
  requireWord(line.kind, ['silicone'], 'kind');
  const { cold, hot } = coefficientTemperatures;
  return 1 - siliconeViscosity(line, hot) / siliconeViscosity(line, cold);
}

/**
 * Kinematic viscosity [m²/s] of a silicone line.
 *
 * @param line - the line
 * @param temperature - temperature [K], 100 to 1000
 * @throws InputError outside that range
 * @see Barry, J. Appl. Phys. 17 (1946) 1020
 */
export function siliconeViscosity(line: SiliconeLine, temperature: number): number {
  requirePositive(line.viscosityAt25Celsius, 'viscosityAt25Celsius', 'm²/s');
  requireWithin(line.slope, 0, 4000, 'slope', 'K');
  requireWithin(temperature, lowestTemperature, highestTemperature, 'temperature', 'K');
  return line.viscosityAt25Celsius * ratioTo25Celsius(line.slope, temperature);
}

/**
 * Temperature [K] at which a silicone line has a kinematic viscosity.
 *
 * @param line - the line
 * @param kinematicViscosity - kinematic viscosity [m²/s], one that the line has between 100 and 1000 K
 * @throws InputError outside that range
 * @see Barry, J. Appl. Phys. 17 (1946) 1020
 */
export function siliconeTemperature(line: SiliconeLine, kinematicViscosity: number): number {
  const hottest = siliconeViscosity(line, highestTemperature);
  const coldest = siliconeViscosity(line, lowestTemperature);
  requireWithin(kinematicViscosity, hottest, coldest, 'kinematicViscosity', 'm²/s');
  const ratio = kinematicViscosity / line.viscosityAt25Celsius;
  return 1 / (1 / referenceTemperature + Math.log10(ratio) / line.slope);
}

function ratioTo25Celsius(slope: number, temperature: number): number {
  // A power of 10 takes twice as long, and many builds at many temperatures ask for it.
  return Math.exp(Math.LN10 * slope * (1 / temperature - 1 / referenceTemperature));
}

function siliconeLineThrough(point: ViscosityPoint, slope: number): SiliconeLine {
  requireRecord(point, 'point');
  requireWithin(point.temperature, lowestTemperature, highestTemperature, 'point.temperature', 'K');
  requirePositive(point.kinematicViscosity, 'point.kinematicViscosity', 'm²/s');
  const viscosityAt25Celsius = point.kinematicViscosity / ratioTo25Celsius(slope, point.temperature);
  return { kind: 'silicone', viscosityAt25Celsius, slope };
}
