import { dot } from '../../numeric/vectors.js';
import { type DiscShape, sectorAngle } from './disc-shape.js';
import { discFilm } from './film.js';
import { type Disc, type FloatingDisc, floatDisc } from './floating-disc.js';
import { type BentDisc, bendByLoad, openingPressure, preparePlate } from './plate.js';

/** One balance of a disc. Lifts over its thickness, pressures over `D t/a⁴`, forces over `D t/a²`, flows over `D t⁴/(12 μ a⁴)`. */
export interface DiscState {
  /** Over the seat at the centre of a hole. */
  readonly lift: number;
  readonly pressure: number;
  readonly flow: number;
  /** Of the oil on the whole disc. */
  readonly load: number;
  /** Of the seat, where the disc touches it between the holes. */
  readonly contact: number;
  readonly rimMean: number;
  readonly rimAtHole: number;
  readonly rimBetween: number;
}

/** A disc from its first opening to its largest lift. */
export interface DiscTable {
  readonly shape: DiscShape;
  /** Pressure on the holes alone that bends it by its preload, over `D t/a⁴`: the seat is tight up to then. */
  readonly openingPressure: number;
  /** Balances at lifts that rise by one factor. */
  readonly states: readonly DiscState[];
}

/** Smallest and largest lift over the thickness; below, films are thinner than seats are flat. */
const leastLift = 0.05;
const leastLiftOfPreload = 0.15;
const mostLift = 6;

/** Largest factor between two lifts. */
const step = 2;

function rimLifts({ shape, modes }: Disc, lifted: Float64Array) {
  const at = (angle: number) => {
    const shapes = new Float64Array(modes.count);
    modes.write(1, angle, shapes, 0);
    return dot(shapes, 0, lifted, 0, modes.count);
  };
  const sector = sectorAngle(shape);
  const points = 2 * modes.waves.length;
  let mean = 0;
  for (let point = 0; point < points; point++) mean += at(((point + 0.5) * sector) / points) / points;
  return { rimMean: mean, rimAtHole: at(0), rimBetween: at(sector) };
}

function stateOf(disc: Disc, seat: Float64Array, lift: number, floating: FloatingDisc): DiscState {
  const { shape, film } = disc;
  const { pressure, solved, deflection, contact } = floating;
  const half = (Math.PI * shape.holeRadius ** 2) / 2;
  const area = half + dot(film.nodeAreas, 0, solved.pressure, 0, film.size);
  const halves = 2 * shape.holes;
  return {
    lift,
    pressure,
    flow: halves * pressure * solved.flow,
    load: halves * pressure * area,
    contact: halves * contact,
    ...rimLifts(
      disc,
      deflection.map((value, i) => value - seat[i]!),
    ),
  };
}

/** A guess at the next lift from the last two: the shape goes on changing as it did. */
function guess(seat: Float64Array, lift: number, last: Balance, before: Balance | undefined): BentDisc {
  const part = before === undefined ? 0 : Math.log(lift / last.lift) / Math.log(last.lift / before.lift);
  const deflection = seat.map((rest, i) => {
    const now = (last.floating.deflection[i]! - rest) / last.lift;
    const then = before === undefined ? now : (before.floating.deflection[i]! - rest) / before.lift;
    return rest + lift * (now + part * (now - then));
  });
  const rise = before === undefined ? 1 : last.floating.pressure / before.floating.pressure;
  return { deflection, pressure: last.floating.pressure * rise ** part };
}

interface Balance {
  readonly lift: number;
  readonly floating: FloatingDisc;
}

/** The balance at a lift from the last ones; where that is too far a leap, from one half way. */
function next(
  disc: Disc,
  seat: Float64Array,
  lift: number,
  found: readonly Balance[],
  halvings = 2,
): Balance | undefined {
  const last = found[found.length - 1]!;
  for (const before of [found.at(-2), undefined]) {
    const floating = floatDisc(disc, seat, guess(seat, lift, last, before), lift);
    if (floating !== undefined) return { lift, floating };
  }
  if (halvings === 0) return undefined;
  const halfWay = next(disc, seat, Math.sqrt(lift * last.lift), found, halvings - 1);
  return halfWay && next(disc, seat, lift, [halfWay], halvings - 1);
}

/** Balances from one lift on, by a factor each, until one is not found. */
function follow(disc: Disc, seat: Float64Array, first: Balance, factor: number, count: number): Balance[] {
  const found = [first];
  for (let index = 1; index <= count; index++) {
    const balance = next(disc, seat, first.lift * factor ** index, found);
    if (balance === undefined) break;
    found.push(balance);
  }
  return found;
}

/**
 * Tables a disc from its opening to a lift where the film is as high as the land is wide, to six thicknesses, or to its stop.
 *
 * @param shape - over outer radius and thickness
 * @param largestLift - of a stop, over the thickness
 */
export function tableDisc(shape: DiscShape, largestLift = Number.POSITIVE_INFINITY): DiscTable {
  const plate = preparePlate(shape);
  const disc = { ...plate, film: discFilm(shape, plate.modes) };
  const { preload, pitchRadius, holeRadius, holes, thickness } = shape;
  const land = (1 - pitchRadius - holeRadius) / thickness;
  const high = Math.min(largestLift, mostLift, land);
  const low = Math.min(Math.max(leastLift, leastLiftOfPreload * preload), high / step);
  const seat =
    preload > 0 ? bendByLoad(disc, disc.ring, preload).deflection : new Float64Array(disc.modes.count);
  const steps = Math.ceil(Math.log(high / low) / Math.log(step));
  const factor = (high / low) ** (1 / steps);
  // The first balance is sought from the middle, where disc and seat are well apart, starting from a disc lifted evenly all round.
  const order = Array.from({ length: steps + 1 }, (_, index) => index).sort(
    (a, b) => Math.abs(a - 0.6 * steps) - Math.abs(b - 0.6 * steps),
  );
  for (const index of order) {
    const lift = low * factor ** index;
    const ring = bendByLoad(disc, disc.ring, preload + lift);
    // The oil pushes on about four times the area of the holes.
    const pressure = (ring.pressure * pitchRadius) / (2 * holes * holeRadius ** 2);
    const floating = floatDisc(disc, seat, { deflection: ring.deflection, pressure }, lift);
    if (floating === undefined) continue;
    const first = { lift, floating };
    const up = follow(disc, seat, first, factor, steps - index);
    const down = follow(disc, seat, first, 1 / factor, index);
    const toState = (one: Balance) => stateOf(disc, seat, one.lift, one.floating);
    const [rising, falling] = [up.map(toState), down.map(toState)];
    // A balance of another kind than its neighbours ends the table.
    const kept = (states: readonly DiscState[], more: number) => {
      const end = states.findIndex(({ flow }, at) => at > 0 && more * (flow - states[at - 1]!.flow) <= 0);
      return end < 0 ? states : states.slice(0, end);
    };
    const states = [...kept(falling, -1)].reverse().concat(kept(rising, 1).slice(1));
    return { shape, openingPressure: openingPressure(plate), states };
  }
  return { shape, openingPressure: openingPressure(plate), states: [] };
}
