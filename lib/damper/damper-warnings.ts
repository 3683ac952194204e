import { distinctWarnings, noWarnings, type Warning } from '../base/warning.js';
import { holePathWarnings } from '../flow/hole/shape-range.js';
import { shearThinningWarnings } from '../fluid/shear/shear-thinning.js';
import type { DamperModel } from './damper-model.js';

/** Part of the bore that the holes may fill: up to here the hole law was held against flow solutions of a whole piston. */
const largestHoleAreaRatio = 0.12;

/** What a force says of itself, as far as a warning needs it. */
interface Extremes {
  readonly holeReynoldsNumber: number;
  readonly wallShearRate: number;
  readonly cavitating: boolean;
  readonly gasPressure: number;
}

/** Every warning that one computed force carries. */
export function damperWarnings(model: DamperModel, extremes: Extremes): readonly Warning[] {
  let warnings = holeWarnings(model, extremes.holeReynoldsNumber);
  if (extremes.cavitating) {
    const { airReleasePressure } = model.damper.gas;
    warnings = [
      ...warnings,
      {
        code: 'cavitation',
        message:
          'A cavity opens behind the piston: the force starts lower and grows with travel, as the cavity squeezes the gas, and some of the next stroke is lost',
        value: extremes.gasPressure,
        limit: airReleasePressure,
      },
    ];
  }
  // A measured thinning curve is in the force already.
  const { shearThinning, relaxationTime = 0 } = model.fluid;
  if (shearThinning !== undefined) return warnings;
  const thinning = shearThinningWarnings(relaxationTime, extremes.wallShearRate);
  return thinning.length === 0 ? warnings : [...warnings, ...thinning];
}

function holeWarnings(model: DamperModel, reynoldsNumber: number): readonly Warning[] {
  const { paths, law } = model.pistonFlow;
  let warnings = noWarnings;
  let area = 0;
  for (const path of paths) {
    area += path.area;
    const outside = holePathWarnings(path, law, reynoldsNumber);
    if (outside.length > 0) warnings = distinctWarnings([...warnings, ...outside]);
  }
  const ratio = area / model.boreArea;
  if (ratio <= largestHoleAreaRatio) return warnings;
  return [
    ...warnings,
    {
      code: 'hole-area-ratio-high',
      message: `The holes fill ${Math.round(100 * ratio)} % of the bore; the hole law takes them as far apart, up to ${100 * largestHoleAreaRatio} %`,
      value: ratio,
      limit: largestHoleAreaRatio,
    },
  ];
}
