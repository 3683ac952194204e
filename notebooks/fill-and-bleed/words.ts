import { lockPosition } from '../../lib/fill/chamber/pressure-inside.js';
import { staticForce } from '../../lib/fill/chamber/static-force.js';
import { formatQuantity } from '../../lib/units/index.js';
import { duration, grams, makeRoom, millilitres, millimetres } from '../base/bench-wording.js';
import { holdsAgainst, sealWords } from '../base/seal-words.js';
import { celsius, shaftSpeed } from '../base/wording.js';
import { type BuiltShock, warmedTo, workingStroke } from '../build-sheet/built-shock.js';
import type { Habit } from './habits.js';
import type { BledAgain } from './later.js';

const bubbles = (volume: number): string => formatQuantity(volume, 'volume', 'ml', 2);
const bar = (pressure: number): string => formatQuantity(pressure, 'pressure', 'bar', 3);

/** Whether the shaft stays where it is put, as far as the seals are known. */
export function verdict(built: BuiltShock): string {
  const { shock, assembled, build } = built;
  const { stroke } = shock.chamber;
  const [from, to] = [workingStroke.from * stroke, workingStroke.to * stroke];
  const where = `closed with the shaft ${millimetres(built.closing.position)} in`;
  const over = `from ${millimetres(from)} to ${millimetres(to)} in`;
  const guess = assembled.known.gas ? '' : ', if the gas inside is as much as guessed';
  if (lockPosition(shock) <= to)
    return `${build.name}, ${where}, locks before ${millimetres(to)} of its stroke${guess}.`;
  const pushes = [staticForce(shock, from), staticForce(shock, to)];
  const [out, inward] = [Math.max(...pushes, 0), Math.max(...pushes.map((push) => -push), 0)];
  const force = Math.max(out, inward);
  const gas =
    out >= inward
      ? `the gas pushes out with up to ${grams(out)}`
      : `the gas sucks in with up to ${grams(inward)}`;
  const seals = sealWords(assembled.seal);
  const says = {
    holds: 'stays wherever it is put',
    gives: 'does not stay where it is put',
    unknown: 'stays where it is put or not, as its seals are',
  }[holdsAgainst(assembled.seal, force)];
  return `${build.name}, ${where}, ${says}: ${over} ${gas}${guess}, and its seals hold ${seals}.`;
}

/** What it costs to close the shock fully in and not fully out. */
export function habitSentence(habits: readonly Habit[]): string {
  const [out, inward] = ['closed fully out', 'closed fully in'].map((name) =>
    habits.find((one) => one.name === name),
  );
  if (out?.gasOut === undefined || inward?.gasOut === undefined || inward.pushOut === undefined)
    return 'What the file says of its gas and its oil goes together with only one way to close it.';
  const pushedOrPulled = inward.built.shock.gas.layout === 'shaft-side' ? 'pulled out' : 'pushed in';
  const onsets =
    out.onset === undefined || inward.onset === undefined
      ? ''
      : `, and cavitation begins ${pushedOrPulled} at ${shaftSpeed(inward.onset.speed)} instead of ${shaftSpeed(out.onset.speed)}`;
  return `Closed fully in and not fully out, its gas stands at ${bar(inward.gasOut)} instead of ${bar(out.gasOut)} with the shaft out, the shaft there is sucked in with ${grams(Math.max(-inward.pushOut, 0))} instead of ${grams(Math.max(-(out.pushOut ?? 0), 0))}${onsets}.`;
}

/** What a further bleed changes. */
export function bleedSentence(
  { shock }: BuiltShock,
  [now, once]: readonly BledAgain[],
  wait: number,
): string {
  if (shock.gas.layout === 'emulsion')
    return 'Its gas is bubbles all through the oil: to bleed them would take the room of the shaft.';
  if (now === undefined || once === undefined || now.freeAir === 0)
    return 'No bubbles are left in its oil to bleed.';
  const travel = (lost: number): string => `${(1e3 * lost).toFixed(2)} mm`;
  const gas =
    now.gasOut === undefined || once.gasOut === undefined || Math.abs(once.gasOut - now.gasOut) < 500
      ? ''
      : `; with the shaft out the gas then stands at ${bar(once.gasOut)} instead of ${bar(now.gasOut)}`;
  return `Worked, left ${duration(wait)} upright and bled once more, ${bubbles(now.freeAir)} of bubbles become ${bubbles(once.freeAir)} and the travel lost to them ${travel(now.travelLost)} becomes ${travel(once.travelLost)}${gas}.`;
}

/** Where heat locks the shaft, said gently where nothing but bubbles makes room. */
export function hotSentence(built: BuiltShock, hottest: number): string | undefined {
  const { shock } = built;
  const { stroke } = shock.chamber;
  const lock = lockPosition(shock, warmedTo(built, hottest));
  if (lock > stroke) return undefined;
  const where =
    lock > 0 ? `stops ${millimetres(stroke - lock)} before the end of its stroke` : 'cannot go in at all';
  const hot = `On oil of ${celsius(hottest)} the shaft of this model, whose body does not give, ${where}.`;
  return shock.compensator.kind === 'none'
    ? `Nothing but the air left in the oil makes room under this cap. ${hot} Real bodies, caps and seals give more, so that it goes further in than that, and gets stiff there.`
    : `${hot} Real bodies give a little more: ${makeRoom(built.closing.position, stroke)}.`;
}

/** What makes room, in words. */
export function roomText({ shock, closing }: BuiltShock): string {
  const { chamber, shaftArea } = shock;
  const swept = millilitres(shaftArea * chamber.stroke);
  return `Over the stroke the shaft brings ${swept} into a body with ${millilitres(shock.oilVolume)} of oil, which does not give way, and ${millilitres(shock.gasVolume)} of gas, which does. Where the cap is closed there is no push: from there in it pushes out, from there out it sucks in. This one is closed ${millimetres(closing.position)} in.`;
}
