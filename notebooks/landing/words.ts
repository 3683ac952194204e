import { millimetres } from '../base/bench-wording.js';
import type { Landed } from '../base/landed.js';
import { oilAtTheShaft } from '../base/oil-at-the-shaft.js';
import { roundedFast } from '../base/shaft-speeds.js';
import { celsius, newtons, shaftSpeed } from '../base/wording.js';

/** `6.3 g` would be grams: times the weight of the car. */
export const weights = (gravities: number): string => `${gravities.toFixed(1)} times gravity`;

/** A range of two numbers that print alike is one. */
export function between(low: string, high: string, unit: string): string {
  return low === high ? `${low} ${unit}` : `${low} to ${high} ${unit}`;
}

/** What a landing did, in words for a sentence or a table. */
export interface LandedWords {
  readonly travel: string;
  readonly push: string;
  readonly stop: string;
  readonly felt: string;
}

/** A landing with the band that air leaves open. */
export function landedWords(own: Landed, ends: readonly Landed[]): LandedWords {
  const all = [own, ...ends];
  const range = (of: (landing: Landed) => number, digits: number) => {
    const values = all.map(of);
    return [Math.min(...values).toFixed(digits), Math.max(...values).toFixed(digits)] as const;
  };
  const bottoms = all.filter((landing) => landing.bottoms).length;
  return {
    travel: between(...range(({ outcome }) => 1000 * outcome.largestTravel.value, 1), 'mm'),
    push: between(...range(({ outcome }) => outcome.largestShockForce.value, 0), 'N'),
    stop:
      bottoms === all.length
        ? 'touches its bump stop'
        : bottoms === 0
          ? 'does not touch its bump stop'
          : 'touches its bump stop or not, by what air does in its oil',
    felt: weights(own.gravities),
  };
}

/** What the landing did, as the first thing read. */
export function landingSentence(
  own: Landed,
  ends: readonly Landed[],
  dropHeight: number,
  temperature: number,
): string {
  const { travel, push, stop, felt } = landedWords(own, ends);
  const stroke = millimetres(own.moving.build.shock.stroke);
  return `Dropped ${millimetres(dropHeight)} on ${own.moving.build.oil.name} at ${celsius(temperature)}, ${own.moving.build.name} goes in ${travel} of ${stroke} and ${stop}; its shock pushes out with ${push} at most, and the body feels ${felt}.`;
}

/** From how high it bottoms. */
export function bottomingSentence(height: number | undefined): string {
  return height === undefined
    ? 'No drop up to a metre takes it to the bump stop.'
    : `From about ${Math.round(100 * height)} cm it touches the bump stop.`;
}

/** Which of several lands softest without touching the stop, or the least hard where all touch it. */
export function softestSentence(what: 'oil' | 'piston', landings: readonly Landed[]): string | undefined {
  const nameOf = ({ moving }: Landed): string => moving.build[what].name;
  if (landings.length < 2) return undefined;
  const clear = landings.filter(({ bottoms }) => !bottoms);
  const from = clear.length > 0 ? clear : landings;
  const best = from.reduce((a, b) => (b.gravities < a.gravities ? b : a));
  const condition = clear.length > 0 ? 'without touching the stop' : 'though every one touches the stop';
  return `Of the ${what}s, ${nameOf(best)} lands softest ${condition}: ${weights(best.gravities)}, ${millimetres(best.outcome.largestTravel.value)} in.`;
}

/** What pages of steady curves take as their fast speed, or should for another drop, beside that of the touch on a tyre that neither gives nor bounces [m/s]. */
function fastSentence(reached: number, touch: number, usual: number | undefined): string {
  const set = roundedFast(reached);
  const pages =
    usual !== undefined && shaftSpeed(usual) === shaftSpeed(set)
      ? `Pages with a fast speed begin at that, as ${shaftSpeed(set)}.`
      : `On pages with a fast speed set it to ${shaftSpeed(set)} for this drop.`;
  const tyre =
    reached > touch
      ? 'the tyre throws the wheel up, which makes it faster'
      : 'tyre and shock slow the wheel before, which makes it slower';
  return `${pages} On a tyre that neither gives nor bounces the touch alone would be ${shaftSpeed(touch)}; ${tyre}.`;
}

/** What came with it: cavity, lost stroke, wheel off the ground, speed; `usual` is the fast speed of the build, where the drop is the usual one. */
export function courseSentences(
  { outcome }: Landed,
  touch: number,
  usual: number | undefined,
): readonly string[] {
  const { inertia } = outcome;
  const { largestCavity, lostStroke, liftOffs, fastestCompression, fastestRebound, settlingTime } = outcome;
  return [
    `The shaft goes in with up to ${shaftSpeed(fastestCompression.value)} and comes out with up to ${shaftSpeed(-fastestRebound.value)}.`,
    fastSentence(fastestCompression.value, touch, usual),
    `Speeding up the oil in the holes, as heavy at the shaft as ${oilAtTheShaft(inertia)}, takes at most ${newtons(inertia.largestForce)}, where the shaft gathers or loses speed fastest; no force here has it in.`,
    largestCavity.value > 0
      ? `A cavity of ${(1e6 * largestCavity.value).toFixed(2)} ml opens behind the piston; until it is full again, up to ${millimetres(lostStroke)} of the way back meet no resistance.`
      : 'The oil stays whole.',
    liftOffs.length > 0
      ? `The wheel leaves the ground again after ${Math.round(1000 * (liftOffs[0] ?? 0))} ms.`
      : 'The wheel stays on the ground.',
    settlingTime === undefined
      ? 'It has not come to rest within the time shown.'
      : `It is within 5 % of where it rests after ${Math.round(1000 * settlingTime)} ms.`,
  ];
}
