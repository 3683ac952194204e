import { besideGap, type HolesBesideGap, solveBesideGap } from '../flow/hole/bound-hole.js';
import { momentumOfJet, recoilOfJet, straightJet } from '../flow/hole/jet-momentum.js';
import {
  type StraightBuild,
  type StraightHole,
  type StraightSizes,
  straightBuild,
} from './straight-build.js';

/** So many forces at a time. */
const block = 256;

/** Filled and read within one call and never handed out. */
const holeSpeeds = new Float64Array(block);
const drops = new Float64Array(block);

/**
 * Writes the force of whole oil at each speed [N], with its sign: the arithmetic of `damperModel` and `oilForce` without their objects and
 * checks. The second place where that physics stands, for many builds or speeds at once; a test holds the two together.
 *
 * @param sizes - of the build, all above 0
 * @param kinematicViscosity - [m²/s], above 0
 * @param density - [kg/m³], above 0
 * @param speeds - shaft speeds [m/s], either sign
 * @param forces - where the forces go
 * @param hole - that of the sizes, where many oils are bound to them
 */
export function straightForces(
  sizes: StraightSizes,
  kinematicViscosity: number,
  density: number,
  speeds: Float64Array,
  forces: Float64Array,
  hole?: StraightHole,
): void {
  forcesOfStraight(straightBuild(sizes, kinematicViscosity, density, hole), speeds, forces);
}

/** {@link straightForces} of what is bound to its oil. */
export function forcesOfStraight(build: StraightBuild, speeds: Float64Array, forces: Float64Array): void {
  const holes = besideGap(build.hole, build.holeArea, build.gapConductance);
  for (let start = 0; start < speeds.length; start += block) {
    const count = Math.min(block, speeds.length - start);
    solveBlock(holes, build.dampingArea, speeds, start, count);
    forcesOfBlock(build, speeds, start, count, forces);
  }
}

/** Two loops in two functions: V8 puts what one calls into it up to a length, and the two together are longer. */
function solveBlock(
  holes: HolesBesideGap,
  dampingArea: number,
  speeds: Float64Array,
  start: number,
  count: number,
): void {
  for (let place = 0; place < count; place++) {
    const { speed, drop } = solveBesideGap(holes, dampingArea * Math.abs(speeds[start + place] as number));
    holeSpeeds[place] = speed;
    drops[place] = drop;
  }
}

function forcesOfBlock(
  { density, hole, holeArea, boreArea, dampingArea, rimDrag }: StraightBuild,
  speeds: Float64Array,
  start: number,
  count: number,
  forces: Float64Array,
): void {
  const { reynoldsPerSpeed } = hole;
  const viscousSpeed = 1 / reynoldsPerSpeed;
  const jetMass = density * holeArea;
  const boreSpeedPerSpeed = dampingArea / boreArea;
  for (let place = 0; place < count; place++) {
    const shaftSpeed = speeds[start + place] as number;
    const speed = holeSpeeds[place] as number;
    const momentumFlow = momentumOfJet(straightJet, speed, reynoldsPerSpeed, viscousSpeed);
    const recoil = jetMass * recoilOfJet(momentumFlow, speed, boreSpeedPerSpeed * Math.abs(shaftSpeed));
    const pressed = dampingArea * (drops[place] as number) - recoil;
    forces[start + place] = (shaftSpeed < 0 ? -pressed : pressed) + rimDrag * shaftSpeed;
  }
}
