import { refuse, requireRecord, requireWithin } from '../../base/checks.js';
import { bracketedRoot } from '../../numeric/root-finding.js';
import { viscosityAt40Celsius, viscosityIndexRange, viscosityIndexTemperatures } from './viscosity-index.js';
import type { ViscosityPoint } from './viscosity-point.js';
import { doubleLogarithm, fitWaltherLine, type WaltherLine } from './walther-line.js';

/**
 * Walther line of an oil known by one point and its viscosity index.
 *
 * A viscosity at 100 °C and the index give the one at 40 °C, and so a line; of all these lines it finds the one that passes the
 * point. The point may be at any temperature.
 *
 * @param point - temperature [K] 233.15 to 473.15, kinematic viscosity [m²/s] 0.21e-6 to 20
 * @param index - viscosity index, -200 to 500
 * @throws InputError outside these, and where the oil would leave 2e-6 to 2e-3 m²/s at 100 °C (no index is defined there)
 * @see ASTM D2270-10 solved backwards, then ASTM D341-20
 * @public
 */
export function waltherLineFromViscosityIndex(point: ViscosityPoint, index: number): WaltherLine {
  requireRecord(point, 'point');
  const { temperature, kinematicViscosity } = point;
  requireWithin(temperature, 233.15, 473.15, 'point.temperature', 'K');
  const wanted = doubleLogarithm(kinematicViscosity, 'point.kinematicViscosity');
  const distance = (viscosityAt100Celsius: number): number => {
    const line = lineThrough(viscosityAt100Celsius, index);
    return line.intercept - line.slope * Math.log10(temperature) - wanted;
  };
  const { lowest, highest } = viscosityIndexRange;
  if (!(distance(lowest) <= 0 && distance(highest) >= 0)) {
    refuse(
      `${kinematicViscosity} m²/s`,
      'point.kinematicViscosity',
      '',
      `of an oil with ${lowest} to ${highest} m²/s at 100 °C, where the viscosity index is defined`,
    );
  }
  return lineThrough(bracketedRoot(distance, lowest, highest, 'viscosity index').root, index);
}

function lineThrough(viscosityAt100Celsius: number, index: number): WaltherLine {
  const { cold, hot } = viscosityIndexTemperatures;
  return fitWaltherLine([
    { temperature: cold, kinematicViscosity: viscosityAt40Celsius(index, viscosityAt100Celsius) },
    { temperature: hot, kinematicViscosity: viscosityAt100Celsius },
  ]).line;
}
