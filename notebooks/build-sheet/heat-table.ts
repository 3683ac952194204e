import { standardGravity } from '../../lib/base/constants.js';
import { chamberContents, lockPosition } from '../../lib/fill/chamber/pressure-inside.js';
import type { Block } from '../../lib/page/index.js';
import { grams, makeRoom, millilitres } from '../base/bench-wording.js';
import { celsius } from '../base/wording.js';
import { hotSentence } from '../fill-and-bleed/words.js';
import { warmedTo } from './built-shock.js';
import { type Choices, pushAt, reserveShare, type SheetNumbers } from './numbers.js';

/** Push of the resting shaft at three places, cold, on the bench and hot. */
export function heatTable({ built }: SheetNumbers, choices: Choices): Block {
  const { stroke } = built.build.shock;
  const temperatures = [choices.coldest, choices.bench, choices.hottest];
  const rows = [0, 0.5, 1].map((part) => [
    part * stroke,
    ...temperatures.map((temperature) => scaleReading(pushAt(built, part * stroke, temperature))),
  ]);
  return {
    kind: 'table',
    id: 'push-over-the-day',
    title: 'Push of the gas over the day, without friction',
    table: {
      columns: [
        { label: 'Shaft in', unit: 'mm', dimension: 'length' },
        ...temperatures.map((temperature) => ({
          label: `Oil at ${celsius(temperature)}`,
          unit: 'g',
          digits: 2,
        })),
      ],
      rows,
    },
    note: `As a scale shows it. Below 0 the shaft is sucked in. Closed at ${celsius(choices.bench)}.`,
  };
}

/** Gas that is left with the shaft fully in, in words. */
function bottomOutSentence({ built }: SheetNumbers, { bench, hottest }: Choices): string {
  const { stroke } = built.build.shock;
  const left = [bench, hottest].map((temperature) => {
    const condition = warmedTo(built, temperature);
    if (lockPosition(built.shock, condition) <= stroke) return `none at ${celsius(temperature)}`;
    const { gas } = chamberContents(built.shock, stroke, condition);
    return `${millilitres(gas)} at ${celsius(temperature)}`;
  });
  return `Of ${millilitres(built.shock.gasVolume)} of gas at closing, with the shaft fully in ${left.join(' and ')} are left.`;
}

/** Grams on a scale, or that the shaft locks before. */
function scaleReading(push: number | undefined): number | string {
  return push === undefined ? 'locks' : (1e3 * push) / standardGravity;
}

/** What heat does to this build, in words. */
export function heatSentences(numbers: SheetNumbers, choices: Choices): readonly string[] {
  const { locksFrom, coldestFill, pushAtEnd } = numbers;
  const lock =
    locksFrom === undefined
      ? 'It does not lock below 150 °C.'
      : `With the shaft fully in it locks from ${celsius(locksFrom)} on.`;
  const reserve = `${Math.round(100 * reserveShare)} %`;
  const fill =
    coldestFill === undefined
      ? `Even filled at ${celsius(choices.hottest)} it keeps less than ${reserve} of its gas at the stop on oil of ${celsius(choices.hottest)}: ${makeRoom(numbers.built.closing.position, numbers.built.build.shock.stroke, 'use a larger compensator')}.`
      : coldestFill <= choices.coldest
        ? `Filled at any temperature from ${celsius(choices.coldest)} it keeps ${reserve} of its gas at the stop on oil of ${celsius(choices.hottest)}.`
        : `Fill at ${celsius(coldestFill)} or warmer, so that ${reserve} of its gas is left at the stop on oil of ${celsius(choices.hottest)}.`;
  const locksHot = hotSentence(numbers.built, choices.hottest);
  const ends = [pushAtEnd.coldest, pushAtEnd.hottest];
  const [cold, hot] = ends.map((push) => (push === undefined ? 'a lock' : grams(push)));
  return [
    bottomOutSentence(numbers, choices),
    `At the stop the gas pushes with ${cold} at ${celsius(choices.coldest)} and ${hot} at ${celsius(choices.hottest)}.`,
    lock,
    ...(locksHot === undefined ? [] : [locksHot]),
    fill,
  ];
}
