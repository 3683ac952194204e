import { requireRecord, requireWord } from '../../base/checks.js';
import { type SiliconeLine, siliconeTemperature, siliconeViscosity } from './barry-silicone.js';
import { type WaltherLine, waltherTemperature, waltherViscosity } from './walther-line.js';

/**
 * How the viscosity of an oil changes with temperature.
 *
 * @public
 */
export type ViscosityLine = WaltherLine | SiliconeLine;

/**
 * Kinematic viscosity [m²/s] of a line.
 *
 * @param line - Walther line (ASTM D341) or silicone line (Barry 1946)
 * @param temperature - temperature [K], above 0
 * @throws InputError where the line has no value
 * @example
 * ```ts
 * const oil = createOil({ base: 'silicone', viscosity: { kind: 'silicone', point: { temperature: 298.15, kinematicViscosity: 350e-6 } } });
 * viscosityAt(oil.typical, 298.15); // 350e-6: the point as it was stated
 * ```
 * @public
 */
export function viscosityAt(line: ViscosityLine, temperature: number): number {
  requireLine(line);
  return line.kind === 'walther' ? waltherViscosity(line, temperature) : siliconeViscosity(line, temperature);
}

/**
 * Temperature [K] at which a line has a kinematic viscosity.
 *
 * @param line - Walther line (ASTM D341) or silicone line (Barry 1946)
 * @param kinematicViscosity - kinematic viscosity [m²/s], above 0
 * @throws InputError where the line has no such value
 * @public
 */
export function temperatureAt(line: ViscosityLine, kinematicViscosity: number): number {
  requireLine(line);
  return line.kind === 'walther'
    ? waltherTemperature(line, kinematicViscosity)
    : siliconeTemperature(line, kinematicViscosity);
}

function requireLine(line: ViscosityLine): void {
  requireRecord(line, 'line');
  requireWord(line.kind, ['walther', 'silicone'], 'kind');
}
