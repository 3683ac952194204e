import { evaluateLoss } from '../flow/hole/inertial-loss.js';
import { momentumOfJet, recoilOfJet, straightJet } from '../flow/hole/jet-momentum.js';
import { ConvergenceError } from '../numeric/root-finding.js';
import { type StraightBuild, type StraightSizes, straightBuild } from './straight-build.js';

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
  forcesOfStraight(straightBuild(sizes, kinematicViscosity, density), speeds, forces);
}

/** {@link straightForces} of what is bound to its oil. */
export function forcesOfStraight(build: StraightBuild, speeds: Float64Array, forces: Float64Array): void {
  const { kinematicViscosity, density, holeDiameter, lengthRatio, growth, creepingSlope, rimDrag } = build;
  const { holeArea, boreArea, dampingArea, gapConductance } = build;
  const { slow, exit, development, contraction, bubbleGrowth, onset } = build.loss;
  const perOnset = 1 / onset;
  const half = 0.5 * density;
  const reynoldsPerSpeed = holeDiameter / kinematicViscosity;
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
