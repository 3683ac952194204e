import { type DiscCurve, discCurve } from '../disc/disc-curve.js';
import type { DiscShape } from '../disc/disc-shape.js';
import { type DiscTable, tableDisc } from '../disc/disc-table.js';
import { type CoveredHoles, type FilmDisc, pressureUnit, shapeOf } from './disc-units.js';

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
  const radius = outerDiameter / 2;
  const unit = pressureUnit(disc);
  return {
    curve: discCurve(table, stop),
    openingPressure: table.openingPressure * unit,
    pressureUnit: unit,
    forceUnit: unit * radius ** 2,
    viscousFlowUnit: (unit * thickness ** 3) / 12,
    liftUnit: thickness,
    edge: holes.count * Math.PI * holes.diameter,
  };
}
