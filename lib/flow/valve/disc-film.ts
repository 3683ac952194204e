import { type DiscCurve, discCurve } from '../disc/disc-curve.js';
import type { DiscShape } from '../disc/disc-shape.js';
import { tableDisc } from '../disc/disc-table.js';
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

/** The last curves, so that a disc bound again, for another oil or bore, need not be tabled again; one shape always gives one curve. */
const curves = new Map<string, DiscCurve>();
const mostCurves = 64;

function curveOf(shape: DiscShape, largestLift: number): DiscCurve {
  const key = `${JSON.stringify(shape)} ${largestLift}`;
  const curve = curves.get(key) ?? discCurve(tableDisc(shape, largestLift), largestLift);
  // Set anew, it moves to the end: the first is the one not used for longest.
  curves.delete(key);
  curves.set(key, curve);
  const [oldest] = curves.keys();
  if (curves.size > mostCurves && oldest !== undefined) curves.delete(oldest);
  return curve;
}

/** Binds a disc to the holes under it: no oil yet. */
export function boundDisc(disc: FilmDisc, holes: CoveredHoles): BoundDisc {
  const { thickness, outerDiameter } = disc;
  const shape = shapeOf(disc, holes);
  const stop = disc.largestLift === undefined ? Number.POSITIVE_INFINITY : disc.largestLift / thickness;
  const curve = curveOf(shape, stop);
  const radius = outerDiameter / 2;
  const unit = pressureUnit(disc);
  return {
    curve,
    openingPressure: curve.table.openingPressure * unit,
    pressureUnit: unit,
    forceUnit: unit * radius ** 2,
    viscousFlowUnit: (unit * thickness ** 3) / 12,
    liftUnit: thickness,
    edge: holes.count * Math.PI * holes.diameter,
  };
}
