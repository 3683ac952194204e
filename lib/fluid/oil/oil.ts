import { requireRecord, requireWithin, requireWord } from '../../base/checks.js';
import { noWarnings, type Warning } from '../../base/warning.js';
import { requireShearThinning } from '../shear/thinning-viscosity.js';
import type { ViscosityLine } from '../viscosity/viscosity-line.js';
import { typicalDensityAt15Celsius } from './density.js';
import type { MeasuredThinning, OilBase, OilDefinition } from './oil-definition.js';
import { oilLines } from './oil-lines.js';

/**
 * An oil ready to compute with; plain data.
 *
 * @public
 */
export interface Oil {
  readonly base: OilBase;
  /** Viscosity at the low end of the interval. */
  readonly low: ViscosityLine;
  readonly typical: ViscosityLine;
  /** Viscosity at the high end of the interval; where nothing is an interval, low, typical and high are equal. */
  readonly high: ViscosityLine;
  /** Whether the definition is a label that stands for an interval. */
  readonly isInterval: boolean;
  /** Density at 15 °C [kg/m³]. */
  readonly densityAt15Celsius: number;
  /** Lowest temperature [K] that the definition supports; below, the viscosity is an extrapolation. */
  readonly lowestTemperature: number;
  /** Highest temperature [K] that the definition supports. */
  readonly highestTemperature: number;
  /** How it thins, where that was measured. */
  readonly shearThinning?: MeasuredThinning;
  /** What was taken for granted, one line each, for a person to read. */
  readonly assumptions: readonly string[];
  /** What is doubtful at every temperature. */
  readonly warnings: readonly Warning[];
}

/**
 * Builds an oil from what its owner knows of it.
 *
 * @param definition - chemical family, viscosity and density; see {@link OilDefinition}
 * @throws InputError on values out of range, on points that contradict each other, and on a definition that does not fit the base
 * @see ASTM D341, ASTM D2270, ASTM D4283, ISO 3448, Barry 1946, as named at each line
 * @example
 * ```ts
 * const oil = createOil({ base: 'silicone', viscosity: { kind: 'silicone', point: { temperature: 298.15, kinematicViscosity: 350e-6 } } });
 * fluidAt(oil, 298.15).kinematicViscosity; // 350e-6: the point as it was stated
 * ```
 * @public
 */
export function createOil(definition: OilDefinition): Oil {
  requireRecord(definition, 'definition');
  const { base, densityAt15Celsius, shearThinning } = definition;
  if (densityAt15Celsius !== undefined) {
    requireWithin(densityAt15Celsius, 600, 1300, 'densityAt15Celsius', 'kg/m³');
  }
  requireWord(base, Object.keys(typicalDensityAt15Celsius), 'base');
  if (shearThinning !== undefined) {
    requireRecord(shearThinning, 'shearThinning');
    requireWithin(shearThinning.temperature, 200, 600, 'shearThinning.temperature', 'K');
    requireShearThinning(shearThinning.thinning, 'shearThinning.thinning');
  }
  const {
    lines,
    temperatures,
    assumptions = [],
    warnings = noWarnings,
  } = oilLines(base, definition.viscosity);
  const isInterval = !('kind' in lines);
  const density = densityAt15Celsius ?? typicalDensityAt15Celsius[base];
  const assumedDensity = `Density ${Math.round(density)} kg/m³ at 15 °C, typical of ${base} oil.`;
  return {
    base,
    ...(isInterval ? lines : { low: lines, typical: lines, high: lines }),
    isInterval,
    densityAt15Celsius: density,
    lowestTemperature: Math.min(...temperatures),
    highestTemperature: Math.max(...temperatures),
    assumptions: densityAt15Celsius === undefined ? [...assumptions, assumedDensity] : assumptions,
    warnings,
    ...(shearThinning === undefined ? {} : { shearThinning }),
  };
}
