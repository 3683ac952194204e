import { type BoundHole, bindHole, type ResistingHole } from '../flow/hole/bound-hole.js';
import { type BoundLoss, bindLoss } from '../flow/hole/bound-loss.js';
import { sharpCreepingNumber, sharpHoleLaw, sharpLoss } from '../flow/hole/sharp-hole.js';
import type { DamperModel } from './damper-model.js';

/** Whether `straightForces` can compute a model: one size of straight sharp holes, no valve, an oil that does not thin, gas on one side. */
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

/** What the arithmetic of such a build in one oil needs, all of it above 0 but the areas' difference. */
export interface StraightBuild {
  readonly kinematicViscosity: number;
  readonly density: number;
  readonly holeDiameter: number;
  readonly hole: BoundHole;
  /** Areas [m²]: of all holes, of the bore, and with which the piston displaces oil. */
  readonly holeArea: number;
  readonly boreArea: number;
  readonly dampingArea: number;
  /** Flow per pressure drop of the rim gap [m³/(s·Pa)], and its drag per speed [N·s/m]. */
  readonly gapConductance: number;
  readonly rimDrag: number;
}

/** A straight hole in any oil, its numbers worked out once. */
export interface StraightHole extends ResistingHole {
  readonly bound: BoundLoss;
}

/** The hole of straight sizes, all above 0. */
export function straightHole({ holeCount, holeDiameter, thickness, bore }: StraightSizes): StraightHole {
  const lengthRatio = thickness / holeDiameter;
  const areaRatio = (holeCount * (Math.PI / 4) * holeDiameter * holeDiameter) / ((Math.PI / 4) * bore * bore);
  const { slow, exit, development, contraction, bubbleGrowth, onset } = sharpLoss(areaRatio);
  // Named one by one: spreads took most of the time of a search.
  const shares = { lengthRatio, slow, exit, development, contraction, bubbleGrowth, onset };
  const bound = bindLoss(shares);
  return {
    lengthRatio,
    slow,
    exit,
    development,
    contraction,
    bubbleGrowth,
    onset,
    diameter: holeDiameter,
    creepingNumber: sharpCreepingNumber(lengthRatio),
    bound,
  };
}

/**
 * Binds straight sizes to an oil.
 *
 * @param sizes - all above 0
 * @param kinematicViscosity - [m²/s], above 0
 * @param density - [kg/m³], above 0
 * @param hole - theirs, where many oils are bound to them
 */
export function straightBuild(
  sizes: StraightSizes,
  kinematicViscosity: number,
  density: number,
  hole = straightHole(sizes),
): StraightBuild {
  const { holeDiameter, thickness, bore, pistonDiameter } = sizes;
  const gapHeight = (bore - pistonDiameter) / 2;
  const dynamicViscosity = density * kinematicViscosity;
  const gapCircumference = Math.PI * (bore - gapHeight);
  const gapArea = gapCircumference * gapHeight;
  const centred = (gapArea * gapHeight * gapHeight) / (12 * dynamicViscosity * thickness);
  return {
    kinematicViscosity,
    density,
    holeDiameter,
    hole: bindHole(hole, { density, kinematicViscosity }, hole.bound),
    holeArea: sizes.holeCount * (Math.PI / 4) * holeDiameter * holeDiameter,
    boreArea: (Math.PI / 4) * bore * bore,
    dampingArea: (Math.PI / 4) * pistonDiameter * pistonDiameter + gapArea / 2 - sizes.blindShaftArea,
    gapConductance: centred * sizes.eccentricConductance,
    rimDrag: ((dynamicViscosity * gapCircumference * thickness) / gapHeight) * sizes.eccentricDrag,
  };
}

/** The arithmetic of a model that {@link isStraight}, as its piston was bound. */
export function straightBuildOf({
  fluid,
  pistonFlow,
  boreArea,
  dampingArea,
  rimDrag,
}: DamperModel): StraightBuild | undefined {
  const [path] = pistonFlow.paths;
  const hole = path?.resistance.bound?.towardsShaft;
  if (path === undefined || hole === undefined) return undefined;
  return {
    kinematicViscosity: fluid.kinematicViscosity,
    density: fluid.density,
    holeDiameter: path.diameter,
    hole,
    holeArea: path.area,
    boreArea,
    dampingArea,
    gapConductance: pistonFlow.gapConductance,
    rimDrag,
  };
}
