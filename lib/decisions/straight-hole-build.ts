import { ConvergenceError } from '../base/root-finding.js';
import type { DamperModel } from '../damper/damper-model.js';
import { jetMomentum } from '../damper/oil-force.js';
import { lookAtLoss, profileGrowth } from '../flow/inertial-loss.js';
import { sharpCreepingNumber, sharpLoss } from '../flow/sharp-hole.js';

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

/** One build bound to its oil, in numbers alone. One record serves all builds: making one takes as long as a force. */
export interface BoundBuild {
  lengthRatio: number;
  growth: number;
  /** Of all holes [m²]. */
  holeArea: number;
  boreArea: number;
  dampingArea: number;
  /** Flow per pressure drop of the gap [m³/(s·Pa)]. */
  gapConductance: number;
  /** Pressure drop per speed in the creeping limit [Pa·s/m]. */
  creepingSlope: number;
  density: number;
  reynoldsPerSpeed: number;
  /** Drag of the rim per speed [N·s/m]. */
  skirtDrag: number;
}

/** A record to copy and bind. */
export const unbound: BoundBuild = {
  lengthRatio: 0,
  growth: 0,
  holeArea: 0,
  boreArea: 0,
  dampingArea: 0,
  gapConductance: 0,
  creepingSlope: 0,
  density: 0,
  reynoldsPerSpeed: 0,
  skirtDrag: 0,
};

const { exit, development, contraction } = sharpLoss;
const perOnset = 1 / sharpLoss.onset;

/** Writes what sizes and oil make: the arithmetic of `damperModel` without its objects and checks. */
export function bindStraight(
  sizes: StraightSizes,
  kinematicViscosity: number,
  density: number,
  build: BoundBuild,
): void {
  const { holeCount, holeDiameter, thickness, bore, pistonDiameter } = sizes;
  const gapHeight = (bore - pistonDiameter) / 2;
  const dynamicViscosity = density * kinematicViscosity;
  const gapCircumference = Math.PI * (bore - gapHeight);
  const gapArea = gapCircumference * gapHeight;
  const lengthRatio = thickness / holeDiameter;
  build.lengthRatio = lengthRatio;
  build.growth = profileGrowth(development, lengthRatio);
  build.holeArea = holeCount * (Math.PI / 4) * holeDiameter * holeDiameter;
  build.boreArea = (Math.PI / 4) * bore * bore;
  build.dampingArea = (Math.PI / 4) * pistonDiameter * pistonDiameter + gapArea / 2 - sizes.blindShaftArea;
  build.gapConductance =
    ((gapArea * gapHeight * gapHeight) / (12 * dynamicViscosity * thickness)) * sizes.eccentricConductance;
  build.creepingSlope = (dynamicViscosity * sharpCreepingNumber(lengthRatio)) / holeDiameter;
  build.density = density;
  build.reynoldsPerSpeed = holeDiameter / kinematicViscosity;
  build.skirtDrag = ((dynamicViscosity * gapCircumference * thickness) / gapHeight) * sizes.eccentricDrag;
}

/** Loss coefficient and its slope; then speed in the holes [m/s] and pressure drop [Pa], without sign. Read at once, never handed out. */
const loss = new Float64Array(2);
const state = new Float64Array(2);

/** Below this step against the speed, the pressure drop is a straight line to twelve digits. */
const straight = 1e-6;
const stepLimit = 60;

/**
 * Finds the state where holes and gap pass a flow (`perSpeed` the area of the holes, `perDrop` the conductance of the gap), or where the
 * pressure drop has a value (0 and 1). The pressure drop is convex in the speed, so that Newton's first step leads above the answer from any
 * start, and all others fall onto it.
 */
function solve(build: BoundBuild, start: number, perSpeed: number, perDrop: number, target: number): void {
  const { lengthRatio, growth, creepingSlope, density, reynoldsPerSpeed } = build;
  let speed = start;
  for (let iteration = 0; iteration < stepLimit; iteration++) {
    const reynoldsNumber = reynoldsPerSpeed * speed;
    lookAtLoss(reynoldsNumber, lengthRatio, growth, exit, development, contraction, perOnset, 0, 1, loss);
    const coefficient = loss[0] ?? 0;
    const impulse = 0.5 * density * speed;
    const drop = speed * (creepingSlope + impulse * coefficient);
    const slope = creepingSlope + impulse * (2 * coefficient + reynoldsNumber * (loss[1] ?? 0));
    const step = (perSpeed * speed + perDrop * drop - target) / (perSpeed + perDrop * slope);
    speed -= step;
    if (Math.abs(step) <= straight * speed) {
      state[0] = speed;
      state[1] = drop - step * slope;
      return;
    }
  }
  throw new ConvergenceError('pressure drop of the piston', 0, start);
}

/**
 * Force of the oil [N] without its sign.
 *
 * @param build - bound by {@link bindStraight}
 * @param speed - shaft speed [m/s], above 0
 * @param largestDrop - pressure drop [Pa] at which the oil tears, and the drop is held
 */
export function straightForce(build: BoundBuild, speed: number, largestDrop: number): number {
  const { holeArea, boreArea, dampingArea, gapConductance, density, skirtDrag } = build;
  const swept = dampingArea * speed;
  let flow = swept;
  solve(build, swept / holeArea, holeArea, gapConductance, swept);
  if ((state[1] ?? 0) > largestDrop) {
    solve(build, state[0] ?? 0, 0, 1, largestDrop);
    flow = holeArea * (state[0] ?? 0) + gapConductance * largestDrop;
  }
  const holeSpeed = state[0] ?? 0;
  const recoil = density * holeArea * holeSpeed * Math.max(jetMomentum * holeSpeed - flow / boreArea, 0);
  return dampingArea * (state[1] ?? 0) - recoil + skirtDrag * speed;
}
