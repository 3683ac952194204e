import { requireWithin } from '../../base/checks.js';
import { requireShape } from '../../base/shape.js';
import { bracketedRoot } from '../../numeric/root-finding.js';
import { fromSquareMillimetres, toSquareMillimetres } from './square-millimetres.js';

/** 100 °F in kelvin, the temperature for which the conversion is stated. */
const referenceTemperature = (100 + 459.67) / 1.8;

/** Thinnest oil [m²/s] of the conversion, and a bound beyond any oil. */
const lowest = 1.81e-6;
const highest = 1;

/**
 * Saybolt Universal time [s] of a kinematic viscosity, with ν in mm²/s at 100 °F
 * `4.6324 ν + (1 + 0.03264 ν) / ((3930.2 + 262.7 ν + 23.97 ν² + 1.646 ν³) 10⁻⁵)`, times `1 + 0.000061 (t − 100)` with t in °F.
 *
 * @param kinematicViscosity - kinematic viscosity [m²/s], 1.81e-6 to 1
 * @param temperature - temperature of the measurement [K], 233.15 to 473.15; 100 °F by default
 * @throws InputError outside these
 * @see ASTM D2161, equations 1 and 2, as in the API Technical Data Book; the temperature factor is from memory
 * @public
 */
export function sayboltUniversalSeconds(
  kinematicViscosity: number,
  temperature: number = referenceTemperature,
): number {
  requireShape({ temperature }, { temperature: 'K' });
  requireWithin(kinematicViscosity, lowest, highest, 'kinematicViscosity', 'm²/s');
  return secondsAt100Fahrenheit(toSquareMillimetres(kinematicViscosity)) * temperatureFactor(temperature);
}

/**
 * Kinematic viscosity [m²/s] of a Saybolt Universal time: the inverse of {@link sayboltUniversalSeconds}.
 *
 * @param seconds - Saybolt Universal time [s], 32 to 4.6e6
 * @param temperature - temperature of the measurement [K], 233.15 to 473.15; 100 °F by default
 * @throws InputError outside these
 * @see ASTM D2161, equations 1 and 2, solved backwards
 * @public
 */
export function kinematicViscosityOfSayboltUniversal(
  seconds: number,
  temperature: number = referenceTemperature,
): number {
  requireShape({ seconds, temperature }, { seconds: 's', temperature: 'K' });
  const wanted = seconds / temperatureFactor(temperature);
  const low = toSquareMillimetres(lowest);
  const high = toSquareMillimetres(highest);
  requireWithin(wanted, secondsAt100Fahrenheit(low), secondsAt100Fahrenheit(high), 'seconds at 100 °F', 's');
  const { root } = bracketedRoot((x) => secondsAt100Fahrenheit(x) - wanted, low, high, 'Saybolt Universal');
  return fromSquareMillimetres(root);
}

function secondsAt100Fahrenheit(x: number): number {
  const denominator = 3930.2 + x * (262.7 + x * (23.97 + x * 1.646));
  return 4.6324 * x + ((1 + 0.032_64 * x) * 1e5) / denominator;
}

function temperatureFactor(temperature: number): number {
  requireWithin(temperature, 233.15, 473.15, 'temperature', 'K');
  return 1 + 0.000_061 * 1.8 * (temperature - referenceTemperature);
}
