import { evaluateBoundHole } from '../flow/hole/bound-hole.js';
import { creepingMomentum, momentumOfJet, recoilOfJet, straightJet } from '../flow/hole/jet-momentum.js';
import { ConvergenceError } from '../numeric/root-finding.js';
import type { StraightBuild } from './straight-build.js';

/** After a step of this part of the speed the next one would be lost in rounding: each is a hundredth of the one before, or its square. */
const smallestStep = 1e-9;
const stepLimit = 60;

/**
 * Writes the shaft speed at each damping force [m/s]: `straightForces` the other way round. The speed in the holes is the unknown, of which pressure drop, flow and
 * force are plain functions, so that no pressure drop has to be looked for inside the search for the speed.
 *
 * @param build - straight holes in an oil
 * @param forces - sizes of forces of whole oil [N], 0 or more; near to each other they cost least
 * @param speeds - where the speeds go, 0 or more
 * @throws ConvergenceError where no speed is found
 */
export function straightSpeeds(build: StraightBuild, forces: Float64Array, speeds: Float64Array): void {
  const { kinematicViscosity, density, holeDiameter, hole, rimDrag } = build;
  const { holeArea, boreArea, dampingArea, gapConductance } = build;
  const { creepingSlope, reynoldsPerSpeed } = hole;
  const viscousSpeed = kinematicViscosity / holeDiameter;
  const perDampingArea = 1 / dampingArea;
  const perBoreArea = 1 / boreArea;
  const jetMass = density * holeArea;
  const creepingJet = creepingMomentum(straightJet, holeDiameter, kinematicViscosity);
  /** Force over speed in the holes, as that tends to zero: the fastest that a force can drive the oil. */
  const creepingForce =
    dampingArea * creepingSlope +
    rimDrag * (holeArea + gapConductance * creepingSlope) * perDampingArea -
    jetMass * creepingJet;
  // What inertia alone lets through at most, with a velocity head lost: in thin oil the creeping limit is far above it.
  const headForce = dampingArea * hole.halfDensity;
  let holeSpeed = 0;
  let forceBefore = 0;
  for (let place = 0; place < forces.length; place++) {
    const force = forces[place] as number;
    holeSpeed =
      forceBefore > 0
        ? holeSpeed * (force / forceBefore)
        : Math.min(force / creepingForce, Math.sqrt(force / headForce));
    forceBefore = force;
    let swept = 0;
    for (let iteration = 0; force > 0; iteration++) {
      if (iteration === stepLimit) throw new ConvergenceError('speed of the shaft', 0, force / creepingForce);
      const { drop, slope: dropSlope } = evaluateBoundHole(hole, holeSpeed);
      const sweptHere = holeArea * holeSpeed + gapConductance * drop;
      const sweptSlope = holeArea + gapConductance * dropSlope;
      const momentumFlow = momentumOfJet(straightJet, holeSpeed, reynoldsPerSpeed, viscousSpeed);
      const boreSpeed = sweptHere * perBoreArea;
      const excess =
        dampingArea * drop -
        jetMass * recoilOfJet(momentumFlow, holeSpeed, boreSpeed) +
        rimDrag * sweptHere * perDampingArea -
        force;
      // The jet's share of its momentum is taken as still: it changes slowly, and the recoil is a small part of the force.
      const recoilSlope = (2 * momentumFlow) / holeSpeed - creepingJet - boreSpeed;
      const slope = dampingArea * dropSlope - jetMass * recoilSlope + rimDrag * sweptSlope * perDampingArea;
      const step = excess / slope;
      holeSpeed -= step;
      swept = sweptHere - step * sweptSlope;
      if (Math.abs(step) <= smallestStep * holeSpeed) break;
    }
    speeds[place] = swept * perDampingArea;
  }
}
