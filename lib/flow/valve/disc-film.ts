import { type DiscCurve, discCurve } from '../disc/disc-curve.js';
import type { DiscShape } from '../disc/disc-shape.js';
import { type DiscTable, tableDisc } from '../disc/disc-table.js';
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

/** A disc over its holes, in SI units but for the oil. */
export interface BoundDisc {
  readonly curve: DiscCurve;
  /** Pressure on the holes alone that lifts it [Pa]. */
  readonly openingPressure: number;
  /** Units of its table: pressure [Pa], force [N], flow times dynamic viscosity [Pa·m³], lift [m]. */
  readonly pressureUnit: number;
  readonly forceUnit: number;
  readonly viscousFlowUnit: number;
  readonly liftUnit: number;
  /** Length of all edges of holes [m]. */
  readonly edge: number;
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

function shapeOf(disc: FilmDisc, holes: CoveredHoles): DiscShape {
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

/** The last tables, so that a disc bound again, for another oil or bore, need not be tabled again; one shape always gives one table. */
const tables = new Map<string, DiscTable>();
const mostTables = 64;

function tableOf(shape: DiscShape, largestLift: number): DiscTable {
  const key = `${JSON.stringify(shape)} ${largestLift}`;
  const table = tables.get(key) ?? tableDisc(shape, largestLift);
  // Set anew, it moves to the end: the first is the one not used for longest.
  tables.delete(key);
  tables.set(key, table);
  const [oldest] = tables.keys();
  if (tables.size > mostTables && oldest !== undefined) tables.delete(oldest);
  return table;
}

/** Binds a disc to the holes under it: no oil yet. */
export function boundDisc(disc: FilmDisc, holes: CoveredHoles): BoundDisc {
  const { thickness, outerDiameter } = disc;
  const shape = shapeOf(disc, holes);
  const stop = disc.largestLift === undefined ? Number.POSITIVE_INFINITY : disc.largestLift / thickness;
  const table = tableOf(shape, stop);
  const stiffness = stackStiffness(disc);
  const radius = outerDiameter / 2;
  const pressureUnit = (stiffness * thickness) / radius ** 4;
  return {
    curve: discCurve(table, stop),
    openingPressure: table.openingPressure * pressureUnit,
    pressureUnit,
    forceUnit: pressureUnit * radius ** 2,
    viscousFlowUnit: (pressureUnit * thickness ** 3) / 12,
    liftUnit: thickness,
    edge: holes.count * Math.PI * holes.diameter,
  };
}
