import {
  requireCount,
  requireNotNegative,
  requirePositive,
  requireRecord,
  requireWithin,
} from '../../base/checks.js';
import type { DiscShape } from '../disc/disc-shape.js';
import type { DiscValve } from '../geometry/disc-valve.js';
import type { HoleGroup } from '../geometry/piston.js';
import { edgeWidening, throatArea } from '../hole/hole-shape.js';

/**
 * What of a disc makes its film.
 *
 * @public
 */
export type FilmDisc = Pick<
  DiscValve,
  | 'outerDiameter'
  | 'clampDiameter'
  | 'thickness'
  | 'count'
  | 'elasticModulus'
  | 'poissonRatio'
  | 'preload'
  | 'largestLift'
>;

/**
 * Holes under a disc, evenly spaced.
 *
 * @public
 */
export interface CoveredHoles {
  /** How many, 1 or more. */
  readonly count: number;
  /** Diameter of their mouths under the disc [m]. */
  readonly diameter: number;
  /** Diameter of the circle of their centres [m]. */
  readonly pitchDiameter: number;
}

/** Diameter of a hole's mouth at one face [m]; of a slot that of a round hole as large. */
function mouthDiameter(group: HoleGroup, face: DiscValve['face']): number {
  const { diameter, shape } = group;
  if (shape === undefined) return diameter;
  if (shape.kind === 'slot') return Math.sqrt((4 * throatArea(group)) / Math.PI);
  const atShaft = face === 'shaft-side';
  if (shape.kind === 'straight')
    return diameter + 2 * edgeWidening(atShaft ? shape.shaftEdge : shape.blindEdge);
  return atShaft ? shape.shaftSideDiameter : diameter;
}

/** The holes under a disc, unlike ones as so many of one size with the same area in all. */
export function coveredHoles(
  groups: readonly HoleGroup[],
  face: DiscValve['face'],
  pitchDiameter: number,
): CoveredHoles {
  const count = groups.reduce((sum, group) => sum + group.count, 0);
  const squares = groups.reduce((sum, group) => sum + group.count * mouthDiameter(group, face) ** 2, 0);
  return { count, diameter: Math.sqrt(squares / count), pitchDiameter };
}

/** Part of the room that a mouth may take, so that there is always some land left round it. */
const largestShare = 0.95;

/** A disc over its holes, without units. */
export function shapeOf(disc: FilmDisc, holes: CoveredHoles): DiscShape {
  const radius = disc.outerDiameter / 2;
  const clampRadius = disc.clampDiameter / disc.outerDiameter;
  const pitchRadius = holes.pitchDiameter / disc.outerDiameter;
  const toNext = holes.count > 1 ? pitchRadius * Math.sin(Math.PI / holes.count) : pitchRadius;
  // A wide mouth or a slot may reach beyond the land of a round hole.
  const room = largestShare * Math.min(toNext, 1 - pitchRadius, pitchRadius - clampRadius);
  return {
    holes: holes.count,
    clampRadius,
    pitchRadius,
    holeRadius: Math.min(holes.diameter / disc.outerDiameter, room),
    thickness: disc.thickness / radius,
    poissonRatio: disc.poissonRatio,
    preload: disc.preload / disc.thickness,
  };
}

/** Bending stiffness of a stack whose discs slide on each other [N·m]. */
function stackStiffness({ count, elasticModulus, thickness, poissonRatio }: FilmDisc): number {
  return (count * elasticModulus * thickness ** 3) / (12 * (1 - poissonRatio ** 2));
}

/** What a pressure of 1 without units stands for [Pa]: `D t/a⁴`. */
export function pressureUnit(disc: FilmDisc): number {
  return (stackStiffness(disc) * disc.thickness) / (disc.outerDiameter / 2) ** 4;
}

/** A hole under a disc is at least this wide [m]: the film of a narrower one is finer than the mesh that it is solved on. */
const narrowestCovered = 5e-5;

/** Throws unless a hole under a disc is so wide that its film can be solved. */
export function requireCoveredDiameter(diameter: number, field: string): void {
  requireWithin(diameter, narrowestCovered, 0.1, field, 'm');
}

/** Throws unless the sizes of a disc are those of a shim, so that its curve can be computed. */
export function requireDiscSizes(disc: FilmDisc, field: string): void {
  requireRecord(disc, field);
  // No bore is wider, so no disc is.
  requireWithin(disc.outerDiameter, 1e-4, 0.1, `${field}.outerDiameter`, 'm');
  requirePositive(disc.clampDiameter, `${field}.clampDiameter`, 'm');
  requirePositive(disc.thickness, `${field}.thickness`, 'm');
  requireWithin(disc.thickness, 1e-6, 0.01, `${field}.thickness`, 'm');
  requireCount(disc.count, `${field}.count`);
  requireWithin(disc.count, 1, 100, `${field}.count`, '');
  requirePositive(disc.elasticModulus, `${field}.elasticModulus`, 'Pa');
  requireWithin(disc.elasticModulus, 1e6, 1e13, `${field}.elasticModulus`, 'Pa');
  requireWithin(disc.poissonRatio, 0, 0.49, `${field}.poissonRatio`, '');
  requireNotNegative(disc.preload, `${field}.preload`, 'm');
  // Bent further, a disc leaves what its law was solved for.
  requireWithin(disc.preload, 0, Math.min(0.001, disc.thickness), `${field}.preload`, 'm');
  if (disc.largestLift !== undefined) requirePositive(disc.largestLift, `${field}.largestLift`, 'm');
  if (disc.largestLift !== undefined) requireWithin(disc.largestLift, 1e-6, 0.1, `${field}.largestLift`, 'm');
}
