import { refuse, requireCount, requirePositive, requireRecord } from '../../base/checks.js';
import { bracketedRoot } from '../../numeric/root-finding.js';
import type { DiscState } from '../disc/disc-table.js';
import { boundDisc } from './disc-film.js';
import { type CoveredHoles, type FilmDisc, requireCoveredDiameter, requireDiscSizes } from './disc-units.js';

/**
 * A disc afloat on the oil that leaves under it.
 *
 * @public
 */
export interface DiscAtFlow {
  /** Pressure in the holes under the disc, over that behind it [Pa]: drop of the film and its ends, without that of the holes. */
  readonly pressure: number;
  /** Lift over its seat at the centre of the holes [m]. */
  readonly lift: number;
  /** Lift of its rim [m]: mean, in line with a hole, half way between two. */
  readonly rimLift: number;
  readonly rimLiftAtHole: number;
  readonly rimLiftBetween: number;
  /** Force of the oil on the disc [N]. */
  readonly load: number;
  /** Force of the seat [N], where the disc touches it between the holes; a soft seat also counts a little next to the clamp. */
  readonly contactForce: number;
  /** Pressure on the holes alone that lifts it from its seat [Pa]. */
  readonly openingPressure: number;
}

/** Throws unless the disc covers its holes and leaves room for its clamp. */
function requireDisc(disc: FilmDisc, holes: CoveredHoles): void {
  requireDiscSizes(disc, 'disc');
  requireRecord(holes, 'holes');
  requireCount(holes.count, 'holes.count');
  requireCoveredDiameter(holes.diameter, 'holes.diameter');
  const { pitchDiameter, diameter } = holes;
  requirePositive(pitchDiameter, 'holes.pitchDiameter', 'm');
  if (pitchDiameter - diameter <= disc.clampDiameter || pitchDiameter + diameter >= disc.outerDiameter) {
    refuse(
      pitchDiameter,
      'holes.pitchDiameter',
      'm',
      `such that the holes lie between clamp and rim, above ${disc.clampDiameter + diameter} and below ${disc.outerDiameter - diameter}`,
    );
  }
}

/**
 * Pressure, lift and load of an open disc valve at a flow: Reynolds' equation for the film in two dimensions with its ends, coupled to a thin
 * plate that bends round the holes, stretches, and may touch its seat. The film alone, without the inertia that a valve in a piston adds.
 *
 * @param disc - outer diameter 0.1 to 100 mm, other sizes above 0 m, preload 0 m or more, modulus above 0 Pa, Poisson's ratio 0 to 0.49, one disc or a stack of equal ones
 * @param holes - 0.05 to 100 mm wide, evenly spaced on one circle between clamp and rim
 * @param flow - through all of them [m³/s], above 0
 * @param dynamicViscosity - [Pa·s], above 0
 * @throws InputError for a size outside its range
 * @see Reynolds' lubrication equation; von Kármán's plate: Timoshenko & Woinowsky-Krieger, 2nd ed. 1959, sec. 101 (from memory)
 * @example
 * ```ts
 * const disc = { outerDiameter: 0.0105, clampDiameter: 0.005, thickness: 1e-4, count: 1, elasticModulus: 2e11, poissonRatio: 0.3, preload: 0 };
 * const holes = { count: 4, diameter: 0.0015, pitchDiameter: 0.007 };
 * discAtFlow(disc, holes, 1e-6, 0.34).openingPressure; // 0: without preload nothing holds it down
 * discAtFlow(disc, holes, 2e-6, 0.34).lift > discAtFlow(disc, holes, 1e-6, 0.34).lift; // true: more oil lifts it further
 * discAtFlow(disc, holes, 2e-6, 0.34).pressure < 2 * discAtFlow(disc, holes, 1e-6, 0.34).pressure; // true: and then passes more easily
 * ```
 * @public
 */
export function discAtFlow(
  disc: FilmDisc,
  holes: CoveredHoles,
  flow: number,
  dynamicViscosity: number,
): DiscAtFlow {
  requireDisc(disc, holes);
  requirePositive(flow, 'flow', 'm³/s');
  requirePositive(dynamicViscosity, 'dynamicViscosity', 'Pa·s');
  const bound = boundDisc(disc, holes);
  const { curve, liftUnit, forceUnit, pressureUnit, viscousFlowUnit } = bound;
  const target = Math.log((flow * dynamicViscosity) / viscousFlowUnit);
  const point = { pressure: 0, pressureSlope: 0, flow: 0, flowSlope: 0 };
  const excess = (logLift: number) => {
    curve.write(Math.exp(logLift), point);
    return Math.log(point.flow) - target;
  };
  let [low, high] = [Math.log(curve.firstLift), Math.log(curve.lastLift)];
  while (excess(low) >= 0) low -= 1;
  while (excess(high) <= 0) high += 1;
  const lift = Math.exp(bracketedRoot(excess, low, high, 'lift of a disc').root);
  curve.write(lift, point);
  // A held disc keeps its shape, and the forces on it grow with the pressure.
  const held = Math.min(lift, curve.largestLift);
  const force = (of: (state: DiscState) => number) => forceUnit * (lift / held) * curve.at(held, of);
  const height = (of: (state: DiscState) => number) => liftUnit * curve.at(held, of);
  return {
    pressure: pressureUnit * point.pressure,
    lift: liftUnit * held,
    rimLift: height(({ rimMean }) => rimMean),
    rimLiftAtHole: height(({ rimAtHole }) => rimAtHole),
    rimLiftBetween: height(({ rimBetween }) => rimBetween),
    load: force(({ load }) => load),
    contactForce: force(({ contact }) => contact),
    openingPressure: bound.openingPressure,
  };
}
