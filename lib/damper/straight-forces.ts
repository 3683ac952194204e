import { speedsBesideGap } from '../flow/hole/bound-hole.js';
import { momentumOfJet, recoilOfJet, straightJet } from '../flow/hole/jet-momentum.js';
import { type StraightBuild, type StraightSizes, straightBuild } from './straight-build.js';

/** So many forces at a time. */
const block = 256;

/** Filled and read within one call and never handed out. */
const flows = new Float64Array(block);
const holeSpeeds = new Float64Array(block);
const drops = new Float64Array(block);
const recoils = new Float64Array(block);

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
  const { density, hole, holeArea, boreArea, dampingArea, gapConductance, rimDrag } = build;
  const holes = { hole, area: holeArea, gapConductance };
  for (let start = 0; start < speeds.length; start += block) {
    const count = Math.min(block, speeds.length - start);
    for (let place = 0; place < count; place++) {
      flows[place] = dampingArea * Math.abs(speeds[start + place] as number);
    }
    speedsBesideGap(holes, flows, holeSpeeds, drops, count);
    recoilOfStraightJets(hole.reynoldsPerSpeed, 1 / boreArea, count);
    for (let place = 0; place < count; place++) {
      const speed = speeds[start + place] as number;
      const recoil = density * holeArea * (recoils[place] as number);
      const pressed = dampingArea * (drops[place] as number) - recoil;
      forces[start + place] = (speed < 0 ? -pressed : pressed) + rimDrag * speed;
    }
  }
}

/** Writes the recoil per density and area of each flow that was solved [m²/s²]. By itself, so that V8 compiles it and the solver as they are. */
function recoilOfStraightJets(reynoldsPerSpeed: number, perBoreArea: number, count: number): void {
  const viscousSpeed = 1 / reynoldsPerSpeed;
  for (let place = 0; place < count; place++) {
    const speed = holeSpeeds[place] as number;
    const momentumFlow = momentumOfJet(straightJet, speed, reynoldsPerSpeed, viscousSpeed);
    recoils[place] = recoilOfJet(momentumFlow, speed, (flows[place] as number) * perBoreArea);
  }
}
