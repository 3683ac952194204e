import { lockPosition } from '../../lib/fill/chamber/pressure-inside.js';
import { usualUncertainty } from '../../lib/measure/reading/reading.js';
import { duration, grams, millilitres, millimetres } from '../base/bench-wording.js';
import { fillAssumptions } from '../base/fill-basis.js';
import { celsius } from '../base/wording.js';
import { bubbleRadii, drawnInShare, type SheetNumbers } from './numbers.js';

/** The sentence that answers the question of the page. */
export function answer(numbers: SheetNumbers, bench: number, weight: number): string {
  const { built, oil, wait, pushAtEnd, hung } = numbers;
  const push =
    pushAtEnd.bench === undefined
      ? `the shaft then locks ${millimetres(lockPosition(built.shock))} in`
      : `at the stop the gas then pushes with ${grams(pushAtEnd.bench)}`;
  const time =
    typeof hung === 'string'
      ? ''
      : `, and ${Math.round(1e3 * weight)} g pull the shaft out in ${duration(hung.typical)} (${duration(hung.low)} to ${duration(hung.high)})`;
  return `${built.build.name}: pour ${millilitres(oil.poured)} at ${celsius(bench)}, wait ${duration(wait)}, close with the shaft ${millimetres(built.closing.position)} in; ${push}${time}.`;
}

/** What the numbers of the page rest on. */
export function assumptions({ built, bleeds }: SheetNumbers): readonly string[] {
  const { smallest, largest } = bubbleRadii;
  return [
    ...built.assembled.assumptions,
    ...built.oil.assumptions,
    `Bleeding: air after filling as set above, in bubbles from ${2e3 * smallest} to ${2e3 * largest} mm across, spread evenly over the logarithm of size; each opening draws in ${Math.round(100 * drawnInShare)} % of the first air again; bleed ${Math.max(bleeds, 1)} is the last that wins back 0.1 mm of travel.`,
    `The interval of a time comes from the tolerances of holes and thermometer, and from the oil where its label is an interval. ${built.assembled.seal.measured ? 'Friction is taken as the parts file has it.' : 'Friction is the typical one of a guess: the parts file does not say it, and the times are no better than that guess.'} One time by hand is off by ${usualUncertainty.stopwatch} s as a standard uncertainty, by less than ${2 * usualUncertainty.stopwatch} s 19 times of 20 (common practice, no source).`,
    ...fillAssumptions,
  ];
}
