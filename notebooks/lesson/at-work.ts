import type { Block } from '../../lib/page/index.js';
import { millilitres, millimetres } from '../base/bench-wording.js';
import { type DrivenAtWork, drivenAtWork } from '../base/driven-at-work.js';
import { shaftSpeed } from '../base/wording.js';
import type { Bench } from './bench.js';

/** The shock on the bench at work, drawn, and what to look for in the drawing; nothing where its gas has no room for the shaft. */
export function atWork({ build }: Bench, temperature: number, speed: number): readonly Block[] {
  const driven = drivenAtWork(build, temperature, speed);
  if (driven === undefined) return [];
  const text = `Driven in and out at ${shaftSpeed(speed)}, played slowly. The piston presses the oil before it through the holes to behind it: before it the oil is darker, at the higher pressure, and the difference is what holds the shaft back. ${cavityText(driven)}`;
  return [{ kind: 'heading', text: 'The shock at work' }, { kind: 'text', text }, driven.drawing];
}

/** Whether the oil tears, on which way, and what that takes from the way back. */
function cavityText({ stroke: { cycles, largestCavity, lostStroke } }: DrivenAtWork): string {
  const [cycle] = cycles;
  if (largestCavity.value <= 0 || cycle === undefined)
    return 'The oil stays whole: the gas presses enough of it after the piston both ways.';
  const inward = largestCavity.time <= (cycle.from + cycle.to) / 2 + 1e-9;
  const [way, back] = inward ? ['in', 'out'] : ['out', 'in'];
  const slow = `On the way ${way} the gas cannot press it through as fast as the piston goes`;
  return largestCavity.value < smallestSeen
    ? `${slow}, but nearly so: the cavity behind the piston is too small to be seen.`
    : `${slow}: behind the piston a cavity of up to ${millilitres(largestCavity.value)} opens. Until it is full again, up to ${millimetres(lostStroke)} of the way ${back} meet no resistance.`;
}

/** Cavities below this are told without their size [m³]. */
const smallestSeen = 0.01e-6;
