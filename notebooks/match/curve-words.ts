import type { DampingMismatch } from '../../lib/decisions/match/damping-mismatch.js';
import type { Block } from '../../lib/page/blocks/block.js';
import { cSt, offBy, softOrHard } from '../base/decision-cases.js';
import { shaftSpeed } from '../base/wording.js';
import type { Match } from './matched.js';
import type { Mix } from './mix.js';

/** Which oil brings the curve back, and the nearest bottle. */
export function curveAnswer(
  { build, exact, singles: [nearest] }: Match,
  setting: string,
  atLimit: boolean,
  label: number,
  mix: Mix | undefined,
): string {
  if (atLimit)
    return `No oil makes ${setting} damp like ${build.name}: the holes alone decide. Another piston is needed.`;
  const bottle =
    nearest === undefined
      ? ''
      : `; the nearest bottle is ${nearest.name}, ${softOrHard(nearest.mismatch.meanRatio)}`;
  const blend = mix === undefined ? '.' : `, and ${mix.recipe} is that oil.`;
  return `For ${setting}, ${build.name} ${comesBack(exact.mismatch)} on a ${cSt(label)} silicone${bottle}${blend}`;
}

/** What no oil can mend, or what the oil of the same landing leaves of the curve. */
export function residueText({ exact, wanted }: Match, back: 'curve' | 'landing' = 'curve'): readonly Block[] {
  const ratios = wanted.weights.map(({ speed: at }, index) => ({
    at,
    ratio: exact.mismatch.ratios[index] ?? 1,
  }));
  const softest = ratios.reduce((a, b) => (b.ratio < a.ratio ? b : a));
  const hardest = ratios.reduce((a, b) => (b.ratio > a.ratio ? b : a));
  const named = ({ at, ratio }: (typeof ratios)[number]): string =>
    `${softOrHard(ratio)} at ${shaftSpeed(Math.abs(at))} in ${at > 0 ? 'compression' : 'rebound'}`;
  if (back === 'landing')
    return [
      {
        kind: 'text',
        text: `The curve on that oil: ${named(softest)}, ${named(hardest)}, of the speeds that count.`,
      },
    ];
  const text =
    hardest.ratio / softest.ratio < 1.01
      ? 'The curve has the same shape: the right oil brings back every speed.'
      : `What no oil mends, because these holes bend the curve differently: ${named(softest)}, ${named(hardest)}.`;
  return [{ kind: 'text', text }];
}

/** How well the best oil does, before its number. */
function comesBack(mismatch: DampingMismatch): string {
  return mismatch.typical < 0.1 ? 'comes back' : `comes back only to within ${offBy(mismatch)},`;
}
