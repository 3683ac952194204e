import { noWarnings, type Warning } from '../base/warning.js';
import type { DamperModel } from './damper-model.js';

/** Shear rate times relaxation time from which a polymer oil is likely to thin (Cross model, exponent 0.7: by about 10 %). */
const shearThinningLimit = 0.05;

/** Part of the bore that the holes may fill before their ends disturb each other in the creeping limit by 1 %. */
const largestHoleAreaRatio = 0.16;

interface Extremes {
  readonly holeReynoldsNumber: number;
  readonly wallShearRate: number;
  readonly lowestPressure: number;
}

/** Every warning that one computed force carries. */
export function damperWarnings(model: DamperModel, extremes: Extremes): readonly Warning[] {
  const warnings = [...holeWarnings(model, extremes.holeReynoldsNumber)];
  if (extremes.lowestPressure < 0) {
    warnings.push({
      code: 'cavitation',
      message:
        'The oil on the shaft side would fall below absolute zero pressure: real oil tears first, and the true force is smaller',
      value: extremes.lowestPressure,
      limit: 0,
    });
  }
  const shear = extremes.wallShearRate * (model.fluid.relaxationTime ?? 0);
  if (shear > shearThinningLimit) {
    warnings.push({
      code: 'shear-thinning',
      message:
        'The oil is sheared so fast in the holes that it is likely to thin: the true force may be smaller',
      value: extremes.wallShearRate,
      limit: shearThinningLimit / (model.fluid.relaxationTime ?? Number.POSITIVE_INFINITY),
    });
  }
  return warnings.length === 0 ? noWarnings : warnings;
}

function holeWarnings(model: DamperModel, reynoldsNumber: number): readonly Warning[] {
  const { paths, law } = model.pistonFlow;
  const warnings: Warning[] = [];
  let area = 0;
  for (const path of paths) {
    area += path.area;
    for (const warning of law.rangeWarnings(path.lengthRatio, reynoldsNumber)) {
      if (!warnings.some(({ code }) => code === warning.code)) warnings.push(warning);
    }
  }
  const ratio = area / ((Math.PI / 4) * model.damper.bore ** 2);
  if (ratio > largestHoleAreaRatio) {
    warnings.push({
      code: 'hole-area-ratio-high',
      message: `The holes fill ${Math.round(100 * ratio)} % of the bore; the hole law takes them as far apart, up to 16 %`,
      value: ratio,
      limit: largestHoleAreaRatio,
    });
  }
  return warnings;
}
