import { requirePositive, requireRecord, requireWithin } from '../../base/checks.js';
import { IntegrationError } from '../../numeric/integrator/integration-error.js';
import type { MovingOil } from './moving-shock.js';

/**
 * Volume of oil with air at an absolute pressure [Pa], over that at the reference pressure. Infinite at no pressure where there is air.
 *
 * @param oil - air fraction 0 to 0.999, pressures and bulk modulus above 0 Pa
 * @param pressure - absolute [Pa], any for oil without air, 0 or more with air
 * @see Cho, Lee & Oh, KSME Int. J. 16 (2002), and Wood's mixture before it (form from memory)
 * @public
 */
export function oilExpansion(oil: MovingOil, pressure: number): number {
  requireRecord(oil, 'oil');
  requirePositive(oil.volume, 'volume', 'm³');
  requirePositive(oil.referencePressure, 'referencePressure', 'Pa');
  requireWithin(oil.referencePressure, 0, 1e9, 'referencePressure', 'Pa');
  requireWithin(oil.bulkModulus, 1e7, 1e12, 'bulkModulus', 'Pa');
  requireWithin(oil.airFraction, 0, 1, 'airFraction', '');
  requireWithin(oil.airExponent, 1, 1.4, 'airExponent', '');
  requirePositive(pressure, 'pressure', 'Pa');
  requireWithin(pressure, 0, 1e9, 'pressure', 'Pa');
  return expansionOfOil(oil, pressure);
}

/** {@link oilExpansion} of what was checked before. */
export function expansionOfOil(oil: MovingOil, pressure: number): number {
  const { referencePressure, bulkModulus, airFraction, airExponent } = oil;
  const liquid = Math.exp((referencePressure - pressure) / bulkModulus);
  if (airFraction === 0) return liquid;
  return (1 - airFraction) * liquid + airFraction * (referencePressure / pressure) ** (1 / airExponent);
}

/** Its slope over the pressure [1/Pa], below 0. */
export function oilExpansionSlope(oil: MovingOil, pressure: number): number {
  const { referencePressure, bulkModulus, airFraction, airExponent } = oil;
  const liquid = Math.exp((referencePressure - pressure) / bulkModulus) / bulkModulus;
  if (airFraction === 0) return -liquid;
  const air = (referencePressure / pressure) ** (1 / airExponent) / (airExponent * pressure);
  return -(1 - airFraction) * liquid - airFraction * air;
}

/** Energy per volume at the reference pressure, `∫ v dp` from there [Pa]: what the oil loses of it in a hole turns to heat. */
export function oilEnthalpy(oil: MovingOil, pressure: number): number {
  const { referencePressure, bulkModulus, airFraction, airExponent } = oil;
  const liquid = -bulkModulus * Math.expm1((referencePressure - pressure) / bulkModulus);
  if (airFraction === 0) return liquid;
  const logRatio = Math.log(pressure / referencePressure);
  const power = 1 - 1 / airExponent;
  const air = referencePressure * (power < 1e-9 ? logRatio : Math.expm1(power * logRatio) / power);
  return (1 - airFraction) * liquid + airFraction * air;
}

const stepLimit = 60;

/**
 * Pressure [Pa] at which the oil has a volume, given as that volume over the one at the reference pressure, less 1. Without air this is
 * a logarithm and may be negative: the oil is pulled. With air it is Newton's method in the logarithm of the pressure.
 */
export function pressureAtExpansion(oil: MovingOil, excess: number): number {
  const { referencePressure, bulkModulus, airFraction, airExponent } = oil;
  if (airFraction === 0) return referencePressure - bulkModulus * Math.log1p(excess);
  if (!(excess > -1)) return Number.NaN;
  // The oil taken as a straight line and the air as isothermal, pressure is the root of a quadratic: a start close to the root.
  const liquid = 1 - airFraction;
  const a = liquid / bulkModulus;
  const b = 1 + excess - liquid * (1 + referencePressure / bulkModulus);
  const c = airFraction * referencePressure;
  const root = Math.sqrt(b * b + 4 * a * c);
  let logPressure = Math.log(b > 0 ? (2 * c) / (b + root) : (root - b) / (2 * a));
  const logReference = Math.log(referencePressure);
  for (let step = 0; step < stepLimit; step++) {
    const pressure = Math.exp(logPressure);
    const liquidPart = liquid * Math.exp((referencePressure - pressure) / bulkModulus);
    const airPart = airFraction * Math.exp((logReference - logPressure) / airExponent);
    const slope = (liquidPart * pressure) / bulkModulus + airPart / airExponent;
    const change = (liquidPart + airPart - 1 - excess) / slope;
    logPressure += Math.max(-3, Math.min(3, change));
    // Quadratic convergence: the next change would be below the last digit.
    if (Math.abs(change) < 1e-8) return Math.exp(logPressure);
  }
  throw new IntegrationError('no pressure at which oil with air has its volume', Number.NaN, [excess]);
}
