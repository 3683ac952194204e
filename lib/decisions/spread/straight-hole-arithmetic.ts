import type { Damper } from '../../damper/damper.js';
import type { DamperModel } from '../../damper/damper-model.js';
import { jetMomentum } from '../../damper/oil-force.js';
import { lookAtLoss, profileGrowth } from '../../flow/hole/inertial-loss.js';
import { sharpCreepingNumber, sharpLoss } from '../../flow/hole/sharp-hole.js';
import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { ConvergenceError } from '../../numeric/root-finding.js';
import { isLight } from './light-model.js';

/** Whether {@link straightForces} can compute a damper: one size of straight sharp holes, no valve, an oil that does not thin. */
export function isStraight(damper: Damper, fluid: FluidState): boolean {
  return isLight(damper, fluid) && damper.piston.holes[0]?.shape === undefined;
}

/** The sizes of a build with one size of straight sharp holes, as numbers that may be written over. */
export interface StraightSizes {
  readonly holeCount: number;
  /** [m], as the three below. */
  holeDiameter: number;
  thickness: number;
  bore: number;
  pistonDiameter: number;
  /** How much more an eccentric gap lets through, and how much more it drags, than a centred one. */
  readonly eccentricConductance: number;
  readonly eccentricDrag: number;
  /** Part of the shaft's area whose room the gas on the blind side makes [m²]. */
  readonly blindShaftArea: number;
}

/**
 * The sizes of a model that was checked.
 *
 * @throws RangeError where its piston has no holes
 */
export function straightSizes({ damper, blindShare, shaftArea }: DamperModel): StraightSizes {
  const { piston, bore } = damper;
  const [group] = piston.holes;
  if (group === undefined) throw new RangeError('a piston with one size of hole is needed');
  return {
    holeCount: group.count,
    holeDiameter: group.diameter,
    thickness: piston.thickness,
    bore,
    pistonDiameter: piston.diameter,
    eccentricConductance: 1 + 1.5 * piston.eccentricity ** 2,
    eccentricDrag: 1 / Math.sqrt(1 - piston.eccentricity ** 2),
    blindShaftArea: blindShare * shaftArea,
  };
}

const { exit, development, contraction } = sharpLoss;
const perOnset = 1 / sharpLoss.onset;

/** Loss coefficient and its slope, read at once and never handed out. */
const loss = new Float64Array(2);

/** Below this step against the speed, the pressure drop is a straight line to twelve digits. */
const straight = 1e-6;
const stepLimit = 60;

/**
 * Writes the force of the oil at each speed [N], without its sign: the arithmetic of `damperModel` and `oilForce` without their objects and
 * checks. All in one, since a record of the bound build would take as long as a force.
 *
 * @param sizes - of the build, all above 0
 * @param kinematicViscosity - [m²/s], above 0
 * @param density - [kg/m³], above 0
 * @param speeds - shaft speeds [m/s], above 0
 * @param largestDrops - pressure drops [Pa] at which the oil tears, and the drop is held
 * @param forces - where the forces go
 */
export function straightForces(
  sizes: StraightSizes,
  kinematicViscosity: number,
  density: number,
  speeds: Float64Array,
  largestDrops: Float64Array,
  forces: Float64Array,
): void {
  const { holeDiameter, thickness, bore, pistonDiameter } = sizes;
  const gapHeight = (bore - pistonDiameter) / 2;
  const dynamicViscosity = density * kinematicViscosity;
  const gapCircumference = Math.PI * (bore - gapHeight);
  const gapArea = gapCircumference * gapHeight;
  const centred = (gapArea * gapHeight * gapHeight) / (12 * dynamicViscosity * thickness);
  const gapConductance = centred * sizes.eccentricConductance;
  const skirtDrag = ((dynamicViscosity * gapCircumference * thickness) / gapHeight) * sizes.eccentricDrag;
  const lengthRatio = thickness / holeDiameter;
  const growth = profileGrowth(development, lengthRatio);
  const creepingSlope = (dynamicViscosity * sharpCreepingNumber(lengthRatio)) / holeDiameter;
  const half = 0.5 * density;
  const reynoldsPerSpeed = holeDiameter / kinematicViscosity;
  const holeArea = sizes.holeCount * (Math.PI / 4) * holeDiameter * holeDiameter;
  const boreArea = (Math.PI / 4) * bore * bore;
  const dampingArea = (Math.PI / 4) * pistonDiameter * pistonDiameter + gapArea / 2 - sizes.blindShaftArea;
  for (let place = 0; place < speeds.length; place++) {
    const speed = speeds[place] ?? 0;
    const most = largestDrops[place] ?? 0;
    const swept = dampingArea * speed;
    let holeSpeed = swept / holeArea;
    let drop = 0;
    // Holes and gap pass the flow; where the oil tears, the pressure drop alone is given. It is convex in the speed, so that Newton falls
    // onto both from above.
    let perSpeed = holeArea;
    let perDrop = gapConductance;
    let target = swept;
    for (let iteration = 0; ; iteration++) {
      if (iteration === stepLimit)
        throw new ConvergenceError('pressure drop of the piston', 0, swept / holeArea);
      const reynoldsNumber = reynoldsPerSpeed * holeSpeed;
      lookAtLoss(reynoldsNumber, lengthRatio, growth, exit, development, contraction, perOnset, 0, 1, loss);
      const coefficient = loss[0] ?? 0;
      const impulse = half * holeSpeed;
      const dropHere = holeSpeed * (creepingSlope + impulse * coefficient);
      const slope = creepingSlope + impulse * (2 * coefficient + reynoldsNumber * (loss[1] ?? 0));
      const step = (perSpeed * holeSpeed + perDrop * dropHere - target) / (perSpeed + perDrop * slope);
      holeSpeed -= step;
      drop = dropHere - step * slope;
      if (Math.abs(step) > straight * holeSpeed) continue;
      if (drop <= most || perSpeed === 0) break;
      perSpeed = 0;
      perDrop = 1;
      target = most;
    }
    const flow = perSpeed === 0 ? holeArea * holeSpeed + gapConductance * drop : swept;
    const recoil = density * holeArea * holeSpeed * Math.max(jetMomentum * holeSpeed - flow / boreArea, 0);
    forces[place] = dampingArea * drop - recoil + skirtDrag * speed;
  }
}
