import { refuse } from '../../base/checks.js';
import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { monotoneRoot } from '../../numeric/monotone-root.js';
import type { DiscValve } from '../geometry/disc-valve.js';
import type { HolePath } from '../hole/hole-path.js';
import type { BoundDisc } from './disc-film.js';
import { filmPoint } from './film-point.js';
import { holesUnderDisc } from './holes-in-row.js';

/**
 * A disc valve at one lift, all in the opening direction.
 *
 * @public
 */
export interface ValvePoint {
  /** Lift at the centre of the holes [m]; where a stop holds it, pressure over that at which it was reached, times the lift. */
  readonly opening: number;
  /** Lift at the centre of the holes [m]. */
  readonly lift: number;
  /** Pressure drop over holes and disc [Pa]. */
  readonly drop: number;
  /** Its slope over the logarithm of the opening [Pa]. */
  readonly dropSlope: number;
  /** Pressure under the disc [Pa]. */
  readonly pressureUnderDisc: number;
  /** Flow [m³/s]. */
  readonly flow: number;
  /** Its slope over the logarithm of the opening [m³/s]. */
  readonly flowSlope: number;
}

/**
 * A disc valve over its holes, bound to a fluid. An open disc carries oil on more than its holes, so that a bent seat holds more pressure shut than
 * open: between `leastOpenDrop` and `openingPressure` a preloaded valve may be either.
 *
 * @public
 */
export interface ValvePath {
  readonly valve: DiscValve;
  readonly holes: readonly HolePath[];
  /** Sign of the pressure drop that opens it. */
  readonly opens: 1 | -1;
  /** Pressure drop at which the shut disc begins to lift [Pa]. */
  readonly openingPressure: number;
  /** Pressure drop below which the open disc falls shut [Pa], at most the opening pressure, and the lift there [m]. */
  readonly leastOpenDrop: number;
  readonly leastOpenLift: number;
  /** Everything at an opening above 0 [m]. */
  readonly evaluate: (opening: number) => ValvePoint;
  /** An opening for a start [m], at about this pressure drop [Pa], through which no more flows than this [m³/s]. */
  readonly openingNear: (drop: number, flow: number) => number;
  /** The open valve at a pressure drop over holes and disc [Pa], in the opening direction; nothing below `leastOpenDrop`. */
  readonly openAt: (pressureDrop: number) => ValvePoint | undefined;
  /** Flow [m³/s] at a pressure drop that has risen to its value [Pa], with the sign of the drop; none in the shut direction. */
  readonly flow: (pressureDrop: number) => number;
  /** The same where the drop has fallen to its value: a preloaded valve stays open longer than it stayed shut. */
  readonly fallingFlow: (pressureDrop: number) => number;
}

/** Lift from which on the open valve's pressure drop rises [m]: the join to the seat may fall, and where it does the first balances too. */
function leastOpenLift(evaluate: (lift: number) => ValvePoint, first: number, largest: number): number {
  if (evaluate(first * 0.5).dropSlope > 0 && evaluate(first).dropSlope > 0) return 0;
  let low = first;
  while (low < largest && evaluate(low * 1.0001).dropSlope <= 0) low *= 1.05;
  return low;
}

/** Looks from which a start is taken. */
const startLooks = 12;

/** The opening at about a pressure drop: straight between a few looks in logarithms. */
function openingByDrop(evaluate: (opening: number) => ValvePoint, first: number, last: number) {
  const factor = Math.max(last / first, 1.01) ** (1 / startLooks);
  const openings = Array.from({ length: startLooks + 1 }, (_, index) => first * factor ** index);
  const drops = openings.map((opening) => evaluate(opening).drop);
  const stride = Math.log(factor);
  return (drop: number): number => {
    let index = 1;
    while (index < startLooks && drops[index]! < drop) index++;
    const [low, high] = [drops[index - 1]!, drops[index]!];
    // Beyond the looks as between the last of them.
    const part = high > low ? Math.log(drop / low) / Math.log(high / low) : 0;
    return openings[index - 1]! * Math.exp(stride * Math.min(part, 8));
  };
}

/** Binds a disc, once it is asked for anything open, to the holes it covers and to a fluid. */
export function valvePath(
  valve: DiscValve,
  holes: readonly HolePath[],
  disc: BoundDisc,
  fluid: FluidState,
): ValvePath {
  const opens = valve.face === 'shaft-side' ? 1 : -1;
  const { openingPressure, curve, liftUnit, viscousFlowUnit } = disc;
  const largest = curve.largestLift * liftUnit;
  const film = filmPoint(disc, fluid);
  const underDisc = holesUnderDisc(holes, opens);
  const dropAndSlope = new Float64Array(2);
  const point = { pressure: 0, pressureSlope: 0, flow: 0, flowSlope: 0 };
  const evaluate = (opening: number): ValvePoint => {
    film(opening, point);
    const { pressure, pressureSlope, flow, flowSlope } = point;
    underDisc(flow, dropAndSlope);
    return {
      opening,
      lift: Math.min(opening, largest),
      drop: pressure + dropAndSlope[0]!,
      dropSlope: pressureSlope + dropAndSlope[1]! * flowSlope,
      pressureUnderDisc: pressure,
      flow,
      flowSlope,
    };
  };
  const flowUnit = viscousFlowUnit / (fluid.density * fluid.kinematicViscosity);
  const least = leastOpenLift(evaluate, curve.firstLift * liftUnit, curve.lastLift * liftUnit);
  const leastOpenDrop = least === 0 ? openingPressure : evaluate(least).drop;
  if (!(leastOpenDrop <= openingPressure)) {
    refuse(
      valve.preload,
      'valve.preload',
      'm',
      `smaller, since only ${(openingPressure / 1e5).toFixed(0)} bar lift this disc and how far it opens then is not known, in`,
    );
  }
  const nearDrop = openingByDrop(
    evaluate,
    Math.max(curve.firstLift * liftUnit, least),
    curve.lastLift * liftUnit,
  );
  const openingNear = (drop: number, flowing: number) =>
    Math.max(Math.min(nearDrop(drop), curve.liftNear(flowing / flowUnit) * liftUnit), least);
  const openAt = (drop: number): ValvePoint | undefined => {
    if (drop < leastOpenDrop || drop <= 0) return undefined;
    if (drop === leastOpenDrop) return least === 0 ? undefined : evaluate(least);
    // Logarithms, in which the curve is nearly straight.
    const excess = (opening: number) => {
      const { drop: at, dropSlope } = evaluate(opening);
      return { value: Math.log(at / drop), slope: dropSlope / (at * opening) };
    };
    const start = Math.max(nearDrop(drop), least * (1 + 1e-6));
    const { root } = monotoneRoot(excess, start, least, Number.POSITIVE_INFINITY, 'lift of a disc valve');
    return evaluate(root);
  };
  const flow = (from: number) => (drop: number) => {
    const opening = opens * drop;
    return opening > from ? opens * (openAt(opening)?.flow ?? 0) : 0;
  };
  return {
    valve,
    holes,
    opens,
    openingPressure,
    leastOpenDrop,
    leastOpenLift: least,
    evaluate,
    openingNear,
    openAt,
    flow: flow(openingPressure),
    fallingFlow: flow(leastOpenDrop),
  };
}
