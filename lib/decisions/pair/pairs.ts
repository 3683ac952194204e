import { requireFinite, requirePositive } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { listOf, requireShape } from '../../base/shape.js';
import { normalProbability } from '../../numeric/normal-distribution.js';
import { type MeasuredShock, measuredShockShape, requireMeasuredShock } from './measured-shock.js';

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
 * Two shocks compared: the logarithm of their ratio is taken as normally distributed.
 *
 * @param first - a shock
 * @param second - another
 * @param limit - largest difference that is no matter, above 0; 0.05 stands for 5 %
 * @throws InputError for an input outside its range
 * @public
 */
export function comparedShocks(first: MeasuredShock, second: MeasuredShock, limit: number): ShockPair {
  requireShape({ first, second }, { first: measuredShockShape, second: measuredShockShape });
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
  requireShape({ shocks, limit }, { shocks: listOf(measuredShockShape), limit: '' });
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
  requireShape({ shocks, limit }, { shocks: listOf(measuredShockShape), limit: '' });
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
