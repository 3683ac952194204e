import { noWarnings, type Warning } from '../../base/warning.js';
import { barryRange, type SiliconeLine } from '../viscosity/barry-silicone.js';
import {
  viscosityIndex,
  viscosityIndexRange,
  viscosityIndexTemperatures,
} from '../viscosity/viscosity-index.js';
import { waltherRange } from '../viscosity/walther-function.js';
import {
  type WaltherFit,
  type WaltherLine,
  waltherTemperature,
  waltherViscosity,
} from '../viscosity/walther-line.js';
import type { OilBase } from './oil-definition.js';

/** Above this index an oil holds polymers that bend its line in the cold; our own choice. */
const highestPlainIndex = 200;

/** Distance of a point from its line that no good viscometer explains; our own choice. */
const largestResidual = 0.05;

/** What is doubtful about a line through points. */
export function waltherWarnings(base: OilBase, { line, residuals }: WaltherFit): readonly Warning[] {
  const warnings = base === 'petroleum' ? petroleumLineWarnings(line) : noWarnings;
  const residual = Math.max(...residuals.map(Math.abs));
  if (!(residual > largestResidual)) return warnings;
  return [
    ...warnings,
    {
      code: 'walther-residual-high',
      message: `A point lies ${Math.round(100 * residual)} % off the line: check the points`,
      value: residual,
      limit: largestResidual,
    },
  ];
}

/** Warns of an index so high that the line may not hold in the cold. */
export function viscosityIndexWarnings(base: OilBase, index: number): readonly Warning[] {
  if (!(index > highestPlainIndex)) return noWarnings;
  const why =
    base === 'petroleum'
      ? 'an improver makes the oil thicker in the cold than its line'
      : 'for silicone it means little, a viscosity-temperature coefficient is better';
  return [
    {
      code: 'viscosity-index-high',
      message: `The viscosity index is ${Math.round(index)}: ${why}`,
      value: index,
      limit: highestPlainIndex,
    },
  ];
}

/** Warns of a silicone thinner than Barry's law is stated for. */
export function barryWarnings({ viscosityAt25Celsius }: SiliconeLine): readonly Warning[] {
  const limit = barryRange.lowestViscosity;
  // A point given at another temperature may come back one digit below the limit.
  if (viscosityAt25Celsius > limit * (1 - 1e-9)) return noWarnings;
  return [
    {
      code: 'barry-viscosity-low',
      message: "Thinner than 100 mm²/s at 25 °C, a silicone changes less with temperature than Barry's law",
      value: viscosityAt25Celsius,
      limit,
    },
  ];
}

function petroleumLineWarnings(line: WaltherLine): readonly Warning[] {
  const { cold, hot } = viscosityIndexTemperatures;
  const { lowest, highest } = viscosityIndexRange;
  // Asked by temperature, since the line may have no viscosity at all at 40 or 100 °C.
  const isDefined =
    waltherTemperature(line, waltherRange.highest) < cold &&
    waltherTemperature(line, lowest * 1.001) > hot &&
    waltherTemperature(line, highest) < hot;
  if (!isDefined) return noWarnings;
  const index = viscosityIndex(waltherViscosity(line, cold), waltherViscosity(line, hot));
  return viscosityIndexWarnings('petroleum', index);
}
