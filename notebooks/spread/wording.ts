import type { ToleranceShare } from '../../lib/decisions/spread/force-spread.js';
import type { ToleranceName } from '../../lib/decisions/spread/toleranced-build.js';
import type { Block } from '../../lib/page/blocks/block.js';
import { capital } from '../../lib/page/blocks/capital.js';
import { finePercent, percent, shaftSpeed } from '../base/wording.js';
import { halfWidth, largestCause, type TwoSpreads } from './two-spreads.js';

const names: Readonly<Record<ToleranceName, string>> = {
  holeDiameter: 'the hole diameter',
  holeTaper: 'the taper of the holes',
  thickness: 'the piston thickness',
  bore: 'the bore',
  gap: 'the gap around the piston',
  viscosity: 'the oil label',
  temperature: 'the oil temperature',
  gasVolume: 'the air left in the fill',
};

const howToMeasure: Readonly<Record<ToleranceName, string>> = {
  holeDiameter: 'try pin gauges or drill shanks of known size in every hole, from both faces',
  holeTaper: 'try the same pin from both faces: one that enters from one side only shows a taper',
  thickness: 'use a micrometer where the holes are',
  bore: 'use a small-hole gauge and a micrometer, at both ends of the body',
  gap: 'subtract the piston diameter, by micrometer, from the bore, and halve it',
  viscosity: 'time a ball falling through the oil next to an oil you know, at one temperature',
  temperature: 'hold a thermometer to the shock body after a run',
  gasVolume: 'fill by syringe and close the cap at the same shaft position every time',
};

/** `the hole diameter` */
export const plainName = (name: ToleranceName): string => names[name];

/** `rebound at 300 mm/s` */
export const motionText = (speed: number): string =>
  `${speed < 0 ? 'rebound' : 'compression'} at ${shaftSpeed(Math.abs(speed))}`;

/** Place of the speed of the answer among the three. */
export const answerPlace = 1;

/** Left against right first, then all four against the plan. */
export function answerOf({ own, shared, pairs }: TwoSpreads, speeds: readonly number[]): string {
  const pair = pairs[answerPlace];
  const top = largestCause(own, answerPlace);
  const common = largestCause(shared, answerPlace);
  const motion = motionText(speeds[answerPlace] ?? 0);
  const sides =
    pair === undefined || top === undefined
      ? `In ${motion} left and right are alike, since no size that differs between them may be off.`
      : `In ${motion} left and right of one drawing differ by up to ${finePercent(pair.high)} in nine of ten pairs; ${plainName(top.name)} causes ${percent(Math.min(1, top.total))} of that, so measure it first.`;
  const ofShared = shared?.spreads()[answerPlace];
  if (ofShared === undefined || common === undefined)
    return `${sides} Nothing that all shocks of the car share may be off.`;
  return `${sides} All shocks together may be ${finePercent(halfWidth(ofShared))} harder or softer than you meant, mostly by ${plainName(common.name)}, and that no pairing shows.`;
}

/** What to measure, in the order of what it brings to a pair. */
export function measureFirst(shares: readonly ToleranceShare[]): readonly Block[] {
  const worth = shares.filter(({ total }) => total >= 0.03).sort((a, b) => b.total - a.total);
  if (worth.length === 0) return [];
  return [
    { kind: 'heading', text: 'Measure in this order to make left and right alike' },
    {
      kind: 'text',
      text: 'Shares add up as squares do: take away what causes three quarters of the spread, and half of its width is left.',
    },
    {
      kind: 'list',
      items: worth.map(
        ({ name, first }) =>
          `${capital(plainName(name))}: ${howToMeasure[name]}. Knowing it narrows the spread by ${percent(1 - Math.sqrt(Math.max(0, 1 - first)))}.`,
      ),
    },
  ];
}
