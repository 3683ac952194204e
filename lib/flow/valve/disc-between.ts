import type { CurvePoint, DiscCurve } from '../disc/disc-curve.js';
import { type BoundDisc, boundDisc } from './disc-film.js';
import type { CoveredHoles, FilmDisc } from './disc-units.js';

/** Binds a disc to the holes under it. */
export type DiscBinder = (disc: FilmDisc, holes: CoveredHoles) => BoundDisc;

/** A curve between those of two hole diameters, straight at each lift. */
function curveBetween(low: DiscCurve, high: DiscCurve, part: number): DiscCurve {
  const above: CurvePoint = { pressure: 0, pressureSlope: 0, flow: 0, flowSlope: 0 };
  const between = (a: number, b: number): number => a + part * (b - a);
  return {
    ...low,
    // What a join or an end bends stays on its far side for both.
    firstLift: Math.max(low.firstLift, high.firstLift),
    lastLift: Math.max(low.lastLift, high.lastLift),
    largestLift: Math.max(low.largestLift, high.largestLift),
    write: (lift, out) => {
      low.write(lift, out);
      high.write(lift, above);
      out.pressure = between(out.pressure, above.pressure);
      out.pressureSlope = between(out.pressureSlope, above.pressureSlope);
      out.flow = between(out.flow, above.flow);
      out.flowSlope = between(out.flowSlope, above.flowSlope);
    },
  };
}

/**
 * Binds one disc to holes of many diameters that are close together, as those of builds within a tolerance: tabled at multiples of `step` alone, straight between, since each
 * table takes as long as a thousand forces. Steps of 3 % of the hole miss the force by less than 0.1 %. Holes under one disc are to differ in their diameter alone.
 *
 * @param step - between the diameters that are tabled [m], above 0
 */
export function discsBetween(step: number): DiscBinder {
  const known = new WeakMap<FilmDisc, Map<number, BoundDisc>>();
  const tabled = (disc: FilmDisc, holes: CoveredHoles, steps: number): BoundDisc => {
    const ofDisc = known.get(disc) ?? new Map<number, BoundDisc>();
    const bound = ofDisc.get(steps) ?? boundDisc(disc, { ...holes, diameter: steps * step });
    known.set(disc, ofDisc.set(steps, bound));
    return bound;
  };
  return (disc, holes) => {
    const below = Math.floor(holes.diameter / step);
    // Beside a step as wide as the hole there is nothing to go between.
    if (below < 1) return boundDisc(disc, holes);
    const part = holes.diameter / step - below;
    const low = tabled(disc, holes, below);
    const high = tabled(disc, holes, below + 1);
    return {
      ...low,
      edge: holes.count * Math.PI * holes.diameter,
      openingPressure: low.openingPressure + part * (high.openingPressure - low.openingPressure),
      curve: curveBetween(low.curve, high.curve, part),
    };
  };
}
