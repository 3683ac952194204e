import { evaluateLoss, profileGrowth } from '../flow/hole/inertial-loss.js';
import { momentumOfJet, recoilOfJet, straightJet } from '../flow/hole/jet-momentum.js';
import { sharpCreepingNumber, sharpHoleLaw, sharpLoss } from '../flow/hole/sharp-hole.js';
import { ConvergenceError } from '../numeric/root-finding.js';
import type { DamperModel } from './damper-model.js';

/** Whether {@link straightForces} can compute a model: one size of straight sharp holes, no valve, an oil that does not thin, gas on one side. */
export function isStraight({ damper, fluid, pistonFlow, blindShare }: DamperModel): boolean {
  const { holes, valves } = damper.piston;
  return (
    holes.length === 1 &&
    holes[0]?.shape === undefined &&
    (valves === undefined || valves.length === 0) &&
    fluid.shearThinning === undefined &&
    pistonFlow.law === sharpHoleLaw &&
    blindShare !== 0.5
  );
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
 * The sizes of a model that {@link isStraight}.
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

/** Loss coefficient and its slope, read at once and never handed out. */
const loss = new Float64Array(2);

/** Below this step against the speed, the pressure drop is a straight line to twelve digits. */
const straight = 1e-6;
const stepLimit = 60;

/**
 * Writes the force of whole oil at each speed [N], with its sign: the arithmetic of `damperModel` and `oilForce` without their objects and
 * checks. The second place where that physics stands, for many builds or speeds at once; a test holds the two together.
 *
 * @param sizes - of the build, all above 0
 * @param kinematicViscosity - [m²/s], above 0
 * @param density - [kg/m³], above 0
 * @param speeds - shaft speeds [m/s], either sign
 * @param forces - where the forces go
 */
export function straightForces(
  sizes: StraightSizes,
  kinematicViscosity: number,
  density: number,
  speeds: Float64Array,
  forces: Float64Array,
): void {
  const { holeDiameter, thickness, bore, pistonDiameter } = sizes;
  const gapHeight = (bore - pistonDiameter) / 2;
  const dynamicViscosity = density * kinematicViscosity;
  const gapCircumference = Math.PI * (bore - gapHeight);
  const gapArea = gapCircumference * gapHeight;
  const centred = (gapArea * gapHeight * gapHeight) / (12 * dynamicViscosity * thickness);
  const gapConductance = centred * sizes.eccentricConductance;
  const rimDrag = ((dynamicViscosity * gapCircumference * thickness) / gapHeight) * sizes.eccentricDrag;
  const lengthRatio = thickness / holeDiameter;
  const creepingSlope = (dynamicViscosity * sharpCreepingNumber(lengthRatio)) / holeDiameter;
  const half = 0.5 * density;
  const reynoldsPerSpeed = holeDiameter / kinematicViscosity;
  const holeArea = sizes.holeCount * (Math.PI / 4) * holeDiameter * holeDiameter;
  const boreArea = (Math.PI / 4) * bore * bore;
  const { slow, exit, development, contraction, bubbleGrowth, onset } = sharpLoss(holeArea / boreArea);
  const growth = profileGrowth(development, lengthRatio);
  const perOnset = 1 / onset;
  const dampingArea = (Math.PI / 4) * pistonDiameter * pistonDiameter + gapArea / 2 - sizes.blindShaftArea;
  const perHoleArea = 1 / holeArea;
  const perBoreArea = 1 / boreArea;
  for (let place = 0; place < speeds.length; place++) {
    const signed = speeds[place] as number;
    const speed = Math.abs(signed);
    const swept = dampingArea * speed;
    let holeSpeed = swept * perHoleArea;
    let drop = 0;
    // Convex in the speed in the holes, so that Newton falls onto the root from above.
    for (let iteration = 0; speed > 0; iteration++) {
      if (iteration === stepLimit)
        throw new ConvergenceError('pressure drop of the piston', 0, swept / holeArea);
      const reynoldsNumber = reynoldsPerSpeed * holeSpeed;
      evaluateLoss(
        reynoldsNumber,
        lengthRatio,
        growth,
        slow,
        exit,
        development,
        contraction,
        bubbleGrowth,
        perOnset,
        0,
        0,
        loss,
      );
      const coefficient = loss[0] as number;
      const impulse = half * holeSpeed;
      const dropHere = holeSpeed * (creepingSlope + impulse * coefficient);
      const slope = creepingSlope + impulse * (2 * coefficient + reynoldsNumber * (loss[1] as number));
      const step =
        (holeArea * holeSpeed + gapConductance * dropHere - swept) / (holeArea + gapConductance * slope);
      holeSpeed -= step;
      drop = dropHere - step * slope;
      if (Math.abs(step) <= straight * holeSpeed) break;
    }
    const momentumFlow = momentumOfJet(straightJet, holeSpeed, holeDiameter, kinematicViscosity);
    const recoil = density * holeArea * recoilOfJet(momentumFlow, holeSpeed, swept * perBoreArea);
    const force = dampingArea * drop - recoil + rimDrag * speed;
    forces[place] = signed < 0 ? -force : force;
  }
}
