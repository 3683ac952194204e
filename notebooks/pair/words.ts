import type { Pairing, ShockPair } from '../../lib/decisions/pair/pairs.js';
import { formatQuantity } from '../../lib/units/index.js';
import { finePercent, listed, percent } from '../base/wording.js';
import { sealSpread, type TimedGroup, type Timing, timesDiffer } from './groups.js';

/** Likelihood, in words where it is next to nothing or next to all. */
export function likely(probability: number): string {
  if (probability < 0.005) return 'under 1 %';
  if (probability > 0.995) return 'over 99 %';
  return percent(probability);
}

/** What to do with the shocks of one build. */
export function groupSentence({ build, pairing, shocks }: TimedGroup, limit: number): string {
  if (pairing === undefined)
    return `${shocks[0]?.name} is the only one of ${build.name} that was timed: nothing to pair.`;
  const pairs = pairing.pairs.map((pair) => `${pair.first} with ${pair.second} (${timesText(pair)})`);
  const rest = pairing.left === undefined ? '' : `; ${pairing.left} is left over`;
  return `Of ${build.name}, pair ${listed(pairs)}${rest}: ${verdict(pairing, limit)}.`;
}

function timesText(pair: ShockPair): string {
  const differ = timesDiffer(pair);
  return differ === 0 ? 'times alike' : `times differ by ${finePercent(differ)}`;
}

function verdict({ pairs }: Pairing, limit: number): string {
  const worst = Math.max(...pairs.map(({ unlikeProbability }) => unlikeProbability));
  const chance = `the ${pairs.length === 1 ? 'pair' : 'worse pair'} is ${likely(worst)} likely to damp more than ${percent(limit)} apart`;
  if (worst < 0.05) return `${chance}, so trust it`;
  if (worst < 0.5) return `${chance}; more repeats would make it surer`;
  return `${chance}, so it is no pair until one of them is changed`;
}

/** Whether the shocks as listed two by two are the pairs, and what to swap where they are not. */
export function swapSentence({ pairing, pairs, shocks }: TimedGroup, limit: number): string | undefined {
  const [first, second] = shocks;
  if (pairing === undefined || first === undefined || second === undefined || shocks.length < 3)
    return undefined;
  const partnerOf = (name: string): string | undefined => {
    const pair = pairing.pairs.find((one) => one.first === name || one.second === name);
    return pair?.first === name ? pair.second : pair?.first;
  };
  if (partnerOf(first.name) === second.name)
    return `${first.name} and ${second.name}, as listed, belong together: nothing to swap.`;
  const asListed = pairs.find(
    (pair) =>
      [pair.first, pair.second].includes(first.name) && [pair.first, pair.second].includes(second.name),
  );
  const likelihood = `${likely(asListed?.unlikeProbability ?? 1)} likely to damp more than ${percent(limit)} apart`;
  const partner = partnerOf(first.name);
  const instead =
    partner === undefined
      ? `leave ${first.name} out, and put ${second.name} with ${partnerOf(second.name)}`
      : `put ${partner} with ${first.name} instead of ${second.name}`;
  return `As listed, ${first.name} with ${second.name}, they are ${likelihood}: ${instead}.`;
}

/** What friction alone does to the times of one build. */
export function frictionSentence({ build, frictionDoubt }: TimedGroup, { weight }: Timing): string {
  const { measured, typical } = build.shock.seal;
  const friction = formatQuantity(typical.kineticForce, 'force', 'N', 2);
  const known = measured ? `${friction} in the file` : `not given, ${friction} is a guess`;
  const grams = formatQuantity(weight, 'mass', 'g', 3);
  if (frictionDoubt === undefined)
    return `${build.name}: ${grams} hardly pulls harder than the seals hold (moving friction ${known}), so that these times say little of the oil. Hang a heavier weight.`;
  return `${build.name}: with moving friction (${known}) ${percent(sealSpread)} higher, a guess for seals of one make, a time is ${finePercent(frictionDoubt)} longer under ${grams}. That doubt is in the likelihoods; a heavier weight lessens it.`;
}

/** How many repeats would tell a difference at the limit. */
export function repeatsSentence(groups: readonly TimedGroup[], { hand, limit }: Timing): string {
  const quickest = Math.min(...groups.flatMap(({ shocks }) => shocks.map(({ damping }) => damping)));
  // Two equal shocks look unlike in 5 % of cases where the limit is two standard deviations of their difference.
  const needed = Math.max(1, Math.ceil(2 * (hand / quickest / (limit / 2)) ** 2));
  return `To tell a difference of ${percent(limit)} with this stopwatch, time each shock ${needed} ${needed === 1 ? 'time' : 'times'} or more; with twice the travel a quarter of the repeats will do.`;
}
