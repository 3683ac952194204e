import { requireFinite, requireNotNegative, requirePositive } from '../base/checks.js';
import { InputError } from '../base/input-error.js';
import type { Damper } from '../damper/damper.js';
import { damperModel } from '../damper/damper-model.js';
import type { FluidState } from '../fluid/fluid-state.js';
import { dampingForceAt } from './damping-mismatch.js';
import { normalProbability } from './normal-probability.js';

/**
 * A shock as measured: its damping on any scale, since only ratios matter.
 *
 * @public
 */
export interface MeasuredShock {
  readonly name: string;
  /** Damping in any unit, the same for all; above 0. A time over the stroke under a fixed weight will do. */
  readonly damping: number;
  /** Standard uncertainty of the damping over the damping, 0 or more. */
  readonly relativeUncertainty: number;
}

/**
 * Two shocks side by side.
 *
 * @public
 */
export interface ShockPair {
  readonly first: string;
  readonly second: string;
  /** Damping of the second over that of the first. */
  readonly ratio: number;
  /** Probability that the two truly differ by more than the limit, 0 to 1. */
  readonly unlikeProbability: number;
}

/**
 * All shocks in pairs.
 *
 * @public
 */
export interface Pairing {
  readonly pairs: readonly ShockPair[];
  /** A shock that is left over where their number is odd. */
  readonly left?: string;
}

/** Most shocks that are put into pairs: 10 make 945 pairings. */
const mostShocks = 10;

/**
 * A shock timed with a stopwatch: how long the shaft takes over a fixed travel under a fixed weight. In the slow flow of that test
 * the time is in proportion to the damping.
 *
 * @param name - of the shock
 * @param times - repeated times [s], each above 0, 1 or more
 * @param timingUncertainty - standard uncertainty of one time [s], above 0: hand and eye, 0.1 s to 0.2 s (common practice, no source)
 * @throws InputError for an input outside its range
 * @see Type B evaluation of the timing and mean of n: JCGM 100:2008 (GUM), 4.2.3 and 4.3
 * @public
 */
export function timedShock(name: string, times: readonly number[], timingUncertainty: number): MeasuredShock {
  requirePositive(timingUncertainty, 'timingUncertainty', 's');
  if (times.length === 0) throw new InputError({ field: 'times', value: 0, accepted: '1 or more' });
  times.forEach((time, index) => {
    requirePositive(time, `times[${index}]`, 's');
  });
  const mean = times.reduce((sum, time) => sum + time, 0) / times.length;
  const scatter =
    times.length < 2
      ? 0
      : Math.sqrt(times.reduce((sum, time) => sum + (time - mean) ** 2, 0) / (times.length - 1));
  // With two or three repeats the scatter may be small by luck, so the hand's own uncertainty is the least.
  const uncertainty = Math.max(scatter, timingUncertainty) / Math.sqrt(times.length);
  return { name, damping: mean, relativeUncertainty: uncertainty / mean };
}

/**
 * A shock whose holes were measured: its damping by the model, with the uncertainty of the diameter carried over by the slope.
 *
 * @param name - of the shock
 * @param damper - with the measured holes
 * @param fluid - oil, the same for all shocks
 * @param speed - shaft speed [m/s], not 0
 * @param diameterUncertainty - standard uncertainty of the hole diameter [m], 0 or more
 * @throws InputError for an input outside its range
 * @see law of propagation: JCGM 100:2008 (GUM), 5.1.2
 * @public
 */
export function drilledShock(
  name: string,
  damper: Damper,
  fluid: FluidState,
  speed: number,
  diameterUncertainty: number,
): MeasuredShock {
  requireNotNegative(diameterUncertainty, 'diameterUncertainty', 'm');
  requirePositive(Math.abs(speed), 'size of speed', 'm/s');
  const force = (off: number): number => {
    const holes = damper.piston.holes.map((group) => ({ ...group, diameter: group.diameter + off }));
    const model = damperModel({ ...damper, piston: { ...damper.piston, holes } }, fluid);
    return Math.abs(dampingForceAt(model, speed));
  };
  const damping = force(0);
  const change = (force(diameterUncertainty) - force(-diameterUncertainty)) / 2;
  return { name, damping, relativeUncertainty: Math.abs(change) / damping };
}

function requireMeasuredShock({ damping, relativeUncertainty }: MeasuredShock): void {
  requirePositive(damping, 'damping', '');
  requireNotNegative(relativeUncertainty, 'relativeUncertainty', '');
}

/**
 * Two shocks compared: the logarithm of their ratio is taken as normally distributed.
 *
 * @param first - a shock
 * @param second - another
 * @param limit - largest difference that is no matter, above 0; 0.05 stands for 5 %
 * @throws InputError for an input outside its range
 * @public
 */
export function comparedShocks(first: MeasuredShock, second: MeasuredShock, limit: number): ShockPair {
  requireMeasuredShock(first);
  requireMeasuredShock(second);
  requirePositive(limit, 'limit', '');
  const ratio = second.damping / first.damping;
  const centre = Math.log(ratio);
  const width = Math.hypot(first.relativeUncertainty, second.relativeUncertainty);
  const edge = Math.log1p(limit);
  return { first: first.name, second: second.name, ratio, unlikeProbability: beyond(centre, width, edge) };
}

/** Probability that a normal variable lies outside −edge to edge. */
function beyond(centre: number, width: number, edge: number): number {
  requireFinite(centre, 'centre', '');
  if (width === 0) return Math.abs(centre) > edge ? 1 : 0;
  return normalProbability((-edge - centre) / width) + normalProbability((centre - edge) / width);
}

/**
 * Every two of the shocks, the most likely alike first.
 *
 * @param shocks - 2 or more
 * @param limit - largest difference that is no matter, above 0
 * @throws InputError for an input outside its range
 * @public
 */
export function rankedPairs(shocks: readonly MeasuredShock[], limit: number): readonly ShockPair[] {
  requireShocks(shocks);
  return shocks
    .flatMap((first, place) => shocks.slice(place + 1).map((second) => comparedShocks(first, second, limit)))
    .sort(
      (a, b) =>
        a.unlikeProbability - b.unlikeProbability ||
        Math.abs(Math.log(a.ratio)) - Math.abs(Math.log(b.ratio)),
    );
}

function requireShocks(shocks: readonly MeasuredShock[]): void {
  if (shocks.length < 2 || shocks.length > mostShocks)
    throw new InputError({ field: 'shocks', value: shocks.length, accepted: `2 to ${mostShocks}` });
  const repeated = shocks.find(({ name }, place) =>
    shocks.some((other, at) => at < place && other.name === name),
  );
  if (repeated !== undefined)
    throw new InputError({ field: 'shocks', value: repeated.name, accepted: 'shocks of different names' });
}

/**
 * The pairing of all shocks whose worst pair is the least likely to be unlike; of those that are equal the one with the smallest sum. Every
 * pairing is looked at.
 *
 * @param shocks - 2 to 10; of an odd number one is left over
 * @param limit - largest difference that is no matter, above 0
 * @throws InputError for an input outside its range
 * @public
 */
export function bestPairing(shocks: readonly MeasuredShock[], limit: number): Pairing {
  requireShocks(shocks);
  let best: Pairing | undefined;
  for (const pairing of pairings(shocks, limit)) {
    if (best === undefined || compared(pairing, best) < 0) best = pairing;
  }
  return best ?? { pairs: [] };
}

/** Rounded so that probabilities that are 0 for all purposes do not decide before the ratios do. */
function compared(a: Pairing, b: Pairing): number {
  const worst = ({ pairs }: Pairing): number =>
    Math.max(...pairs.map(({ unlikeProbability }) => unlikeProbability));
  const apart = ({ pairs }: Pairing): number =>
    pairs.reduce((sum, { ratio }) => sum + Math.log(ratio) ** 2, 0);
  const difference = worst(a) - worst(b);
  return Math.abs(difference) > 1e-9 ? difference : apart(a) - apart(b);
}

function* pairings(shocks: readonly MeasuredShock[], limit: number): Generator<Pairing> {
  const [first, ...others] = shocks;
  if (first === undefined) {
    yield { pairs: [] };
    return;
  }
  if (shocks.length % 2 === 1) {
    for (const left of shocks) {
      for (const pairing of pairings(
        shocks.filter((shock) => shock !== left),
        limit,
      ))
        yield { ...pairing, left: left.name };
    }
    return;
  }
  for (const second of others) {
    const pair = comparedShocks(first, second, limit);
    for (const { pairs } of pairings(
      others.filter((shock) => shock !== second),
      limit,
    ))
      yield { pairs: [pair, ...pairs] };
  }
}
