import { distinctWarnings, noWarnings, type Warning } from '../base/warning.js';
import { shearThinningWarnings } from '../fluid/shear/shear-thinning.js';
import type { DamperModel } from './damper-model.js';

/** Part of the bore that the holes may fill before their ends disturb each other in the creeping limit by 1 %. */
const largestHoleAreaRatio = 0.16;

interface Extremes {
  readonly holeReynoldsNumber: number;
  readonly wallShearRate: number;
  readonly cavitating: boolean;
  /** Pressure drop at which the oil tears [Pa]. */
  readonly largestDrop: number;
}

/** Every warning that one computed force carries. Most forces carry none, and cost no list. */
export function damperWarnings(model: DamperModel, extremes: Extremes): readonly Warning[] {
  let warnings = holeWarnings(model, extremes.holeReynoldsNumber);
  if (extremes.cavitating) {
    warnings = [
      ...warnings,
      {
        code: 'cavitation',
        message:
          'The oil behind the piston tears: neither speed nor thicker oil raises its pressure, and some of the next stroke is lost',
        value: extremes.largestDrop,
        limit: extremes.largestDrop,
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
  const { bore } = model.damper;
  let area = 0;
  for (const path of paths) {
    area += path.area;
    const outside = law.rangeWarnings(path.lengthRatio, reynoldsNumber);
    if (outside.length > 0) warnings = distinctWarnings([...warnings, ...outside]);
  }
  const ratio = area / ((Math.PI / 4) * bore * bore);
  if (ratio <= largestHoleAreaRatio) return warnings;
  return [
    ...warnings,
    {
      code: 'hole-area-ratio-high',
      message: `The holes fill ${Math.round(100 * ratio)} % of the bore; the hole law takes them as far apart, up to 16 %`,
      value: ratio,
      limit: largestHoleAreaRatio,
    },
  ];
}
