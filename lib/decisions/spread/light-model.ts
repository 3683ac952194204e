import { requirePositive } from '../../base/checks.js';
import type { Damper } from '../../damper/damper.js';
import type { DamperModel } from '../../damper/damper-model.js';
import {
  annularGapConductance,
  annularGapDrag,
  gapCircumference,
  gapHeight,
} from '../../flow/gap/annular-gap.js';
import { holePath } from '../../flow/hole/hole-path.js';
import { sharpHoleLaw } from '../../flow/hole/sharp-hole.js';
import { newtonianRim } from '../../flow/piston/parallel-flow.js';
import { pressureDropOfOnePath } from '../../flow/piston/piston-pressure-drop.js';
import type { FluidState } from '../../fluid/oil/fluid-state.js';

const none: readonly never[] = [];

/** Whether {@link lightModel} can bind a damper: one size of hole, no valve, an oil that does not thin. */
export function isLight({ piston }: Damper, fluid: FluidState): boolean {
  return (
    piston.holes.length === 1 && (piston.valves ?? none).length === 0 && fluid.shearThinning === undefined
  );
}

/**
 * The same model as `damperModel`, to the last bit, of a damper whose sizes are slightly off those of one that was checked. It leaves out
 * the checks that the sizes fit each other: binding takes longer than computing where each build is used for a few speeds only.
 *
 * @param damper - see {@link isLight}
 * @param fluid - the oil
 * @param checked - the model of the damper with all sizes right
 * @throws InputError where a hole or the gap has no size left
 */
export function lightModel(damper: Damper, fluid: FluidState, checked: DamperModel): DamperModel {
  const { piston, bore } = damper;
  const [group] = piston.holes;
  if (group === undefined) throw new RangeError('a piston with one size of hole is needed');
  requirePositive(group.diameter, 'piston.holes[0].diameter', 'm');
  const { thickness, eccentricity } = piston;
  const gap = { bore, pistonDiameter: piston.diameter, length: thickness, eccentricity };
  const gapConductance = annularGapConductance(gap, fluid);
  const path = holePath(group, thickness, fluid, sharpHoleLaw);
  const halfGapArea = (gapCircumference(gap) * gapHeight(gap)) / 2;
  return {
    damper,
    fluid,
    pistonFlow: {
      paths: [path],
      valves: none,
      law: sharpHoleLaw,
      gap,
      gapConductance,
      ...newtonianRim(gapConductance),
      creepingConductance: gapConductance + path.area / path.resistance.creepingSlope,
      flow: (drop) => gapConductance * drop + path.area * path.resistance.meanSpeed(drop),
      pressureDrop: (flow) => pressureDropOfOnePath(path, gapConductance, flow),
    },
    dampingArea: (Math.PI / 4) * piston.diameter ** 2 + halfGapArea - checked.blindShare * checked.shaftArea,
    blindShare: checked.blindShare,
    shaftArea: checked.shaftArea,
    skirtDrag: annularGapDrag(gap, fluid),
  };
}
