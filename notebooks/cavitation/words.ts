import { damperForce } from '../../lib/damper/damper-force.js';
import { gasPressure } from '../../lib/gas/gas-state.js';
import { formatQuantity } from '../../lib/units/index.js';
import { strokeForces, strokeOf } from '../base/after-onset.js';
import { newtons, percent, shaftSpeed } from '../base/wording.js';
import {
  type ClosedBuild,
  type Direction,
  earliestRelease,
  type Onset,
  onsetOf,
  releasingAt,
} from './cases.js';
import type { Change } from './what-moves-it.js';

const bar = (pressure: number): string => formatQuantity(pressure, 'pressure', 'bar', 3);
const damps = (force: number): string => newtons(Math.abs(force));

/** `Pushed in from fully out` and where the stroke ends. */
export const strokeWords = {
  compression: { begins: 'Pushed in from fully out', sign: 1 },
  rebound: { begins: 'Let out from all the way in', sign: -1 },
} as const;

/** The answer of a shock that can cavitate. */
export function onsetAnswer(closed: ClosedBuild, direction: Direction, speed: number): string {
  const { build, shock, model } = closed;
  const { begins, sign } = strokeWords[direction];
  const onset = onsetOf(model, direction, 0);
  const guess = gasIsKnown(shock) ? '' : ', if the gas inside is as much as guessed';
  const fully = direction === 'compression' ? '' : ', as it reaches fully out,';
  if (onset.speed === 0)
    return `${begins}, ${build.name} cavitates at any speed${guess}: with the shaft fully out its gas is weaker than the pressure at which air leaves the oil.`;
  const where = `at ${shaftSpeed(onset.speed)}${labelRange(closed, direction)}, where its oil damps with ${newtons(onset.damping)}${guess}`;
  if (onset.speed >= speed)
    return `${begins}, ${build.name} stays free of cavitation up to ${shaftSpeed(speed)}: that begins${fully} ${where}.`;
  const { start, afterTravel, end } = strokeForces(model, sign * speed);
  const { travel } = strokeOf(model, sign * speed);
  const along = `held at ${shaftSpeed(speed)}, the damping is ${damps(start.dampingForce)} at the start, ${damps(afterTravel.dampingForce)} after ${formatQuantity(travel, 'length', 'mm', 2)} and ${damps(end.dampingForce)} at the end of the stroke`;
  return `${begins}, ${build.name} begins to cavitate${fully} ${where}; ${along}.`;
}

/** ` (198 mm/s to 280 mm/s by its label)` of an oil that is sold by an interval. */
function labelRange({ bounds }: ClosedBuild, direction: Direction): string {
  if (bounds === undefined) return '';
  const speeds = bounds.map((model) => onsetOf(model, direction, 0).speed).sort((one, other) => one - other);
  return ` (${speeds.map(shaftSpeed).join(' to ')} by what the label of the oil leaves open)`;
}

/** The answer of a shock whose gas is mixed through its oil. */
export function emulsionAnswer({ build, shock, model }: ClosedBuild, speed: number): string {
  const { lowestPressure, gasPressure: gas, dampingForce } = damperForce(model, { speed, position: 0 });
  const tends = gas / 2 ** model.gas.polytropicExponent;
  const guess = gasIsKnown(shock) ? '' : ', if it holds as much air as guessed';
  return `In ${build.name} the gas is mixed through the oil, so that cavitation has no onset: pushed in at ${shaftSpeed(speed)} from fully out the oil damps with ${damps(dampingForce)}, and the pressure behind the piston falls from ${bar(gas)} to ${bar(lowestPressure)}${guess}; the faster, the nearer to ${bar(tends)}.`;
}

/** Whether the file says how much gas there is: of a cap with nothing under it the bubbles left in the oil are all the gas. */
function gasIsKnown({ known, closed, assumptions }: ClosedBuild['shock']): boolean {
  const bubblesGuessed = assumptions.some((text) => text.startsWith('Air left in the oil as bubbles'));
  return known.gas && !(bubblesGuessed && closed.closing.freeAir > 0.2 * closed.gasVolume);
}

/** What position and air in the oil do to the onset. */
export function onsetSentences({ build, model }: ClosedBuild, direction: Direction): readonly string[] {
  const { stroke } = build.shock;
  const out = onsetOf(model, direction, 0);
  const gas = (position: number): string => bar(gasPressure(model.gas, model.shaftArea * position));
  const sentences = [`With the shaft fully out the gas is at ${gas(0)} absolute, the weakest of the stroke.`];
  if (model.shaftArea * (stroke / 2) < model.gas.capacity) {
    const half = onsetOf(model, direction, stroke / 2);
    sentences.push(
      `Half way in it is at ${gas(stroke / 2)}, and cavitation begins at ${shaftSpeed(half.speed)} and ${newtons(half.damping)}.`,
    );
  }
  if (build.shock.compensator?.airReleasePressure === undefined && out.speed > 0) {
    const early = onsetOf(releasingAt(model, earliestRelease), direction, 0);
    sentences.push(
      `That is for oil that holds its air to the last. Oil that stood in air may let it go as early as ${bar(earliestRelease)} (common practice, no source): then it begins at ${early.speed === 0 ? 'any speed' : `${shaftSpeed(early.speed)} and ${newtons(early.damping)}`}.`,
    );
  }
  return sentences;
}

/** What a habit of closing costs, from the shock closed fully out and the one closed fully in. */
export function habitSentence(closed: readonly Change[], direction: Direction): string {
  const begins = (name: string): Onset | undefined => {
    const found = closed.find((one) => one.name === name);
    return found && onsetOf(found.model, direction, 0);
  };
  const [out, inward] = [begins('closed fully out'), begins('closed fully in')];
  if (out === undefined || inward === undefined)
    return 'What the file says of its gas and its oil goes together with no other way to close it.';
  if (Math.abs(1 - inward.damping / out.damping) < 0.005)
    return 'How far in the shaft is as the cap goes on makes no difference here.';
  const [less, than] = [
    `${shaftSpeed(inward.speed)} and ${newtons(inward.damping)}`,
    `${shaftSpeed(out.speed)} and ${newtons(out.damping)}`,
  ];
  return `Closed with the shaft fully in, the gas is stretched as the shaft comes out, and cavitation begins at ${less} instead of the ${than} of a shock closed fully out: ${percent(1 - inward.damping / out.damping)} less force.`;
}
