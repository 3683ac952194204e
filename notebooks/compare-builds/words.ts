import { millimetres } from '../base/bench-wording.js';
import { finePercent, newtons, shaftSpeed } from '../base/wording.js';
import { landedWords } from '../landing/words.js';
import { type Conditions, dampingAt, type Side } from './sides.js';

type Two = readonly [Side, Side];

/** `12 % more than`, `as much as`: the first against the second. */
export function against(first: number, second: number): string {
  const part = first / second - 1;
  if (Math.abs(part) < 0.005) return 'as much as';
  return `${finePercent(Math.abs(part))} ${part > 0 ? 'more' : 'less'} than`;
}

/** Rebound at the middle speed of both, how they stand and how they land. */
export function answerOf(two: Two, at: Conditions): string {
  return [heldBackSentence(two, at), collarSentence(two), frequencySentence(two), landingSentenceOfBoth(two)]
    .filter((text) => text !== '')
    .join(' ');
}

function heldBackSentence([first, second]: Two, { middle }: Conditions): string {
  const [one, other] = [first, second].map((side) => dampingAt(side, -middle).typical) as [number, number];
  return `In rebound at ${shaftSpeed(middle)} ${first.build.name} damps with ${newtons(one)}, ${against(one, other)} ${second.build.name} with ${newtons(other)}.`;
}

function collarSentence(two: Two): string {
  const known = two.filter(({ riding }) => riding !== undefined && !riding.guessed);
  if (known.length === 0) return '';
  const each = known.map(({ build, place, riding }) => {
    const collar = riding?.collar.typical ?? 0;
    const how =
      collar >= 0
        ? `pressed ${millimetres(collar)}`
        : `backed off so that its spring is ${millimetres(-collar)} loose`;
    return `${build.name} rests ${millimetres(place)} in with its collar ${how}`;
  });
  return `${each.join(', ')}.`;
}

function frequencySentence([first, second]: Two): string {
  const [one, other] = [first.riding, second.riding];
  if (one === undefined || other === undefined || one.guessed || other.guessed) return '';
  const ratio = other.frequency.typical / one.frequency.typical;
  if (Math.abs(ratio - 1) < 0.005) return 'Both swing equally fast.';
  return `${second.build.name} swings ${finePercent(Math.abs(ratio - 1))} ${ratio > 1 ? 'faster' : 'slower'} than ${first.build.name}.`;
}

function landingSentenceOfBoth(two: Two): string {
  const landed = two.filter((side) => side.landed !== undefined);
  if (landed.length < 2) return '';
  const each = landed.map(({ build, landed: one }) => {
    if (one === undefined) return '';
    const { travel, push, stop } = landedWords(one.own, one.ends);
    return `${build.name} goes in ${travel}, ${stop} and pushes with ${push} at most`;
  });
  return `Dropped alike, ${each.join('; ')}.`;
}

/** What the file does not say of the two, and the line that says it. */
export function toAdd(two: Two): readonly string[] {
  const missing = two.flatMap(({ build, built, cost }) => [
    ...(build.spring === undefined
      ? [
          `${build.name}: "spring", named in the build, with its rate in the list springs, for example { name: soft, rate: 0.60 N/mm, free-length: 42 mm }. Without it there is no sag, no frequency and no landing.`,
        ]
      : []),
    ...(build.corner === undefined
      ? [
          `${build.name}: "corner", for example corner: { mass: 340 g, motion-ratio: 0.72 }. Until then its sag, frequency and damping ratio are intervals, and its landing rests on a guess.`,
        ]
      : []),
    ...(cost === undefined
      ? [`${build.oil.name}: its "bottle", for example bottle: { volume: 60 ml, price: 7.90 EUR }.`]
      : []),
    ...(built.assembled.known.gas
      ? []
      : [
          `${build.shock.name}: its "compensator" with a volume, or "inside" and "oil-volume". Its gas is a guess.`,
        ]),
    ...(build.shock.lengths === undefined
      ? [`${build.shock.name}: its "lengths", for the length from eyelet to eyelet.`]
      : []),
  ]);
  return [...new Set(missing)];
}
