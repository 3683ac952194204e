import { requireFinite, requirePositive, requireRecord, requireWithin } from '../base/checks.js';
import { pressureOfGas } from '../gas/gas-state.js';
import { bracketedMinimum } from '../numeric/minimum-finding.js';
import { bracketedRoot } from '../numeric/root-finding.js';
import { requireModel, requirePosition } from './damper.js';
import { wholeForce } from './damper-force.js';
import type { DamperModel } from './damper-model.js';
import type { DamperForce } from './force-point.js';
import { valveOpenings } from './valve-opening.js';

/** Speeds on each side of rest at which the curve is looked at, and the slowest of them [m/s]. */
const looks = 160;
const slowestLook = 1e-6;

/** Fastest speed that is searched [m/s]. */
const fastestSearched = 10;

/** A place of the curve: speed [m/s], and its force less the wanted one [N]. */
interface Place {
  readonly speed: number;
  readonly excess: number;
}

/**
 * Every shaft speed at which a damper pushes with a force: the inverse of `damperForce` at one position.
 *
 * There may be none, one or several. A disc valve that snaps open lets the force fall while the speed rises, and so does the friction of a seal that has broken
 * away, so that one force belongs to several speeds; they are all given, the most negative first. Where a valve snaps open the curve jumps, and the speed of the jump is no
 * answer. The curve is that of a stroke that gathers speed and of whole oil: an answer that is `cavitating` is near what a long stroke tends to, and one on the
 * way back past a preloaded valve may differ. Below 1 mm/s the friction of the seals is a smooth stand-in for sticking, and so are the speeds found there.
 *
 * @param model - from `damperModel`
 * @param wanted - force on the shaft [N], gas and seals included, positive outward; position [m], 0 to the stroke; fastest speed looked at, either way
 * [m/s], above 0 to 10
 * @returns the force at each speed found, as `damperForce` gives it
 * @throws InputError for a value outside its range
 * @example
 * ```ts
 * // model: of the example of damperModel
 * speedsAtForce(model, { force: 3.7473, position: 0.014, fastest: 0.06 }).map(({ speed }) => speed)[0]; // 0.02000: the inverse of damperForce
 * ```
 * @public
 */
export function speedsAtForce(
  model: DamperModel,
  wanted: { readonly force: number; readonly position: number; readonly fastest: number },
): readonly DamperForce[] {
  requireModel(model);
  requireRecord(wanted, 'wanted');
  const { force, position, fastest } = wanted;
  requireFinite(force, 'force', 'N');
  requirePosition(position, model.damper.stroke);
  requirePositive(fastest, 'fastest', 'm/s');
  requireWithin(fastest, 0, fastestSearched, 'fastest', 'm/s');
  const gas = pressureOfGas(model.gas, model.shaftArea * position);
  const excess = (speed: number): number => wholeForce(model, speed, gas).force - force;
  const places = withExtremes(
    excess,
    speedsLookedAt(model, fastest).map((speed) => ({ speed, excess: excess(speed) })),
  );
  const found = places.flatMap((place, index) => crossing(excess, place, places[index + 1]));
  return found.map((speed) => wholeForce(model, speed, gas));
}

/** Rising speeds, denser near rest, and both sides of where a valve lifts. */
function speedsLookedAt(model: DamperModel, fastest: number): readonly number[] {
  const ratio = fastest / Math.min(slowestLook, fastest / 2);
  const sizes = Array.from({ length: looks }, (_, index) => fastest * ratio ** (index / (looks - 1) - 1));
  const lifts = valveOpenings(model).flatMap(({ speed }) => [speed * (1 - 1e-12), speed * (1 + 1e-9)]);
  const all = [0, ...sizes.flatMap((size) => [-size, size]), ...lifts];
  return [...new Set(all.filter((speed) => Math.abs(speed) <= fastest))].sort((a, b) => a - b);
}

/** Puts each hump and dip between the places where it stands highest and lowest, so that no pair of crossings hides beside it. */
function withExtremes(excess: (speed: number) => number, places: readonly Place[]): readonly Place[] {
  const extremes = places.slice(1, -1).flatMap((place, index): readonly Place[] => {
    const [before, after] = [places[index] as Place, places[index + 2] as Place];
    const rise = Math.sign(place.excess - before.excess);
    if (rise === 0 || rise !== Math.sign(place.excess - after.excess)) return [];
    const width = 1e-10 * (after.speed - before.speed);
    const downward = (speed: number): number => -rise * excess(speed);
    const speed = bracketedMinimum(downward, before.speed, place.speed, after.speed, width);
    return [{ speed, excess: excess(speed) }];
  });
  return [...places, ...extremes].sort((a, b) => a.speed - b.speed);
}

/** The speed between two neighbours at which nothing is in excess; none where the curve only jumps past it. */
function crossing(
  excess: (speed: number) => number,
  place: Place,
  next: Place | undefined,
): readonly number[] {
  if (place.excess === 0) return [place.speed];
  if (next === undefined || Math.sign(place.excess) * Math.sign(next.excess) >= 0) return [];
  const { root, residual } = bracketedRoot(excess, place.speed, next.speed, 'speed at a force');
  const apart = Math.abs(next.excess - place.excess);
  return Math.abs(residual) <= 1e-6 * apart ? [root] : [];
}
